import type { Finding, Unit } from '@tinwright/core';
import { sayIn } from '@tinwright/core/internal';
import type { Operation, Operations, Sequence, Shop } from '@tinwright/shop';
import { toolsOf } from '@tinwright/shop/internal';
import { type Language, reasonWords } from '@tinwright/words';
import type { OperationText } from '@tinwright/words/internal';
import type { Flowing } from '../page/flow.js';
import { headingStrip, notesFlow } from '../page/table.js';
import { directionsFlow } from './directions-figure.js';
import type { PacketKit } from './kit.js';
import { type Picture, stepStrip } from './step-strip.js';
import { placeOf, stepWords } from './step-words.js';

/** What the operations sheet is written from. */
export interface OperationsAsk {
  readonly operations: Operations;
  readonly shop: Shop;
  /** True where no shop was given. */
  readonly assumed: boolean;
  readonly sequences: ReadonlyMap<string, Sequence>;
  readonly findings: readonly Finding[];
  /** Of the steps of a part the first that is the same, and the page their pictures start on. */
  readonly pictures: ReadonlyMap<
    string,
    { readonly twins: readonly (number | null)[]; readonly link: string }
  >;
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
      rows: toldOnce(kit, ask).map(({ text, picture, o }, i) =>
        stepStrip(text, picture, o, i + 1, width, kit),
      ),
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

/** An operation as it is printed. */
interface Told {
  readonly o: Pick<Operation, 'reasons' | 'tools'>;
  readonly text: OperationText;
  readonly picture: Picture | null;
}

/** Every operation; one that is done as another before it refers to that. */
function toldOnce(kit: PacketKit, ask: OperationsAsk): readonly Told[] {
  const { list } = ask.operations;
  const told = list.map((o) => {
    const picture = pictureOf(o, kit, ask);
    return { o, picture, text: stepWords(o, picture !== null, kit, ask.findings) };
  });
  return told.map((t, i): Told => {
    const before = told.findIndex((b, k) => k < i && isSame(b, t, ask));
    if (before < 0) return t;
    const turned = t.o.kind === 'bend' ? placeOf(t.o, kit) : [];
    const lines = [[kit.words.operations.asBefore(before + 1), ...turned].join(' ')];
    return { o: { reasons: [], tools: [] }, picture: null, text: { title: t.text.title, lines } };
  });
}

interface Whole extends Told {
  readonly o: Operation;
}

const PLAIN: readonly Operation['kind'][] = ['deburr', 'mark', 'cut-out'];

/** True for the same stroke on another line of the part, and for what is done to every part alike. */
function isSame(before: Whole, { o, text }: Whole, { pictures }: OperationsAsk): boolean {
  const b = before.o;
  if (b.kind !== o.kind) return false;
  if (o.kind === 'bend' && b.kind === 'bend')
    return o.part === b.part && pictures.get(o.part)?.twins[o.bend.index] === b.bend.index;
  if (!PLAIN.includes(o.kind) || o.part === null || b.part === null) return false;
  const less = (t: OperationText, part: string) => t.lines.map((l) => l.replaceAll(part, '')).join('\n');
  return less(before.text, b.part) === less(text, o.part);
}

/** Where the picture of a step of bending is found; null where there is none. */
function pictureOf(o: Operation, { words }: PacketKit, { pictures }: OperationsAsk): Picture | null {
  const own = o.kind === 'bend' ? pictures.get(o.part) : undefined;
  if (o.kind !== 'bend' || own === undefined || o.bend.index >= own.twins.length) return null;
  return { text: words.operations.picture(o.part, o.bend.index + 1, own.twins.length), link: own.link };
}
