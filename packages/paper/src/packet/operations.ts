import type { Finding, Unit } from '@tinwright/core';
import { sayIn } from '@tinwright/core/internal';
import type { Operation, Operations, Sequence, Shop } from '@tinwright/shop';
import { toolsOf } from '@tinwright/shop/internal';
import { type Language, reasonWords } from '@tinwright/words';
import type { Flowing } from '../page/flow.js';
import { headingStrip, notesFlow } from '../page/table.js';
import { directionsFlow } from './directions-figure.js';
import type { PacketKit } from './kit.js';
import { type Picture, stepStrip } from './step-strip.js';
import { stepWords } from './step-words.js';

/** What the operations sheet is written from. */
export interface OperationsAsk {
  readonly operations: Operations;
  readonly shop: Shop;
  /** True where no shop was given. */
  readonly assumed: boolean;
  readonly sequences: ReadonlyMap<string, Sequence>;
  readonly findings: readonly Finding[];
  /** How many pictures of its bends a part has, and the page they start on. */
  readonly pictures: ReadonlyMap<string, { readonly count: number; readonly link: string }>;
}

/** The operations sheet: tools to lay out, then everything to do in order, each with its reason. */
export function operationFlows(kit: PacketKit, ask: OperationsAsk): readonly Flowing[] {
  const { words, setting } = kit;
  const w = words.operations;
  const tools = toolsOf(ask.operations.list).map((t) => w.toolNames[t]);
  return [
    notesFlow(null, intro(kit, ask), setting),
    notesFlow(w.tools, [`${tools.join(', ')}.`, w.glossary], setting),
    directionsFlow(kit),
    (width) => ({
      alt: null,
      heading: headingStrip(w.heading, setting),
      head: null,
      rows: ask.operations.list.map((o, i) => {
        const picture = pictureOf(o, kit, ask);
        return stepStrip(stepWords(o, picture !== null, kit, ask.findings), picture, o, i + 1, width, kit);
      }),
    }),
  ];
}

/** Whose machines, and where the order of bends comes from. */
function intro(
  { plan, language, words }: PacketKit,
  { operations, shop, assumed, sequences }: OperationsAsk,
): readonly string[] {
  const w = words.operations;
  const names = (order: 'found' | 'usual') =>
    plan.parts.map((p) => p.name).filter((name) => operations.orders[name] === order);
  const [found, usual] = [names('found'), names('usual')];
  const impossible = usual.filter((name) => sequences.get(name)?.status === 'infeasible');
  const untried = usual.filter((name) => !impossible.includes(name));
  return [
    w.shop(shop.name, assumed),
    ...(found.length === 0 ? [] : [w.found(found.join(', '))]),
    ...(untried.length === 0 ? [] : [w.usual(untried.join(', '))]),
    ...impossible.map((name) => w.impossible(name, reasonsOf(sequences.get(name), plan.job.units, language))),
  ];
}

/** Why the planner found no order, in the words it has for it. */
function reasonsOf(sequence: Sequence | undefined, units: Unit, language: Language): string {
  const say = sayIn(units);
  return (sequence?.reasons ?? []).map((r) => reasonWords(r, say, language)).join('; ');
}

/** Where the picture of a step of bending is found; null where there is none. */
function pictureOf(o: Operation, { words }: PacketKit, { pictures }: OperationsAsk): Picture | null {
  const own = o.kind === 'bend' ? pictures.get(o.part) : undefined;
  if (o.kind !== 'bend' || own === undefined || o.bend.index >= own.count) return null;
  return { text: words.operations.picture(o.part, o.bend.index + 1, own.count), link: own.link };
}
