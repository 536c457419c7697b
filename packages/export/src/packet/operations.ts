import { type Finding, inWords, type PartPlan, sayIn, type Unit } from '@tinwright/core';
import type { JointWork, Operation, Operations, Sequence, Shop } from '@tinwright/shop';
import { toolsOf } from '@tinwright/shop';
import type { Flowing, Strip } from '../page/flow.js';
import { letter, lines, type Stand } from '../page/letter.js';
import type { Item } from '../page/page.js';
import { headingStrip, notesFlow } from '../page/table.js';
import { bendFacts } from './bend-facts.js';
import { isTold } from './cautions.js';
import { type PacketKit, thicknessText } from './kit.js';
import type { JointFacts, StepWords } from './words.js';

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

const BOX = 3.5; // mm, side of the box to tick
const INDENT = 9; // mm from the number to the text
const LEAD = 1.6;

/** The operations sheet: tools to lay out, then everything to do in order, each with its reason. */
export function operationFlows(kit: PacketKit, ask: OperationsAsk): readonly Flowing[] {
  const { words, setting } = kit;
  const w = words.operations;
  const tools = toolsOf(ask.operations.list).map((t) => w.toolNames[t]);
  return [
    notesFlow(null, intro(kit, ask), setting),
    notesFlow(w.tools, [`${tools.join(', ')}.`, w.glossary], setting),
    (width) => ({
      alt: null,
      heading: headingStrip(w.heading, setting),
      head: null,
      rows: ask.operations.list.map((o, i) => {
        const picture = pictureOf(o, kit, ask);
        return stepStrip(stepWords(o, picture !== null, kit, ask), picture, o, i + 1, width, kit);
      }),
    }),
  ];
}

/** Whose machines, and where the order of bends comes from. */
function intro(
  { plan, words }: PacketKit,
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
    ...impossible.map((name) => w.impossible(name, reasonsOf(sequences.get(name), plan.job.units))),
  ];
}

/** Why the planner found no order, in the words it has for it. */
function reasonsOf(sequence: Sequence | undefined, units: Unit): string {
  const say = sayIn(units);
  return (sequence?.reasons ?? []).map((r) => inWords(r.message, say)).join('; ');
}

/** An operation in words. */
function stepWords(o: Operation, pictured: boolean, kit: PacketKit, ask: OperationsAsk): StepWords {
  const { dims, words, plan, plans, sets } = kit;
  const w = words.operations;
  const { unit, text } = dims;
  const part = plan.parts.find((p) => p.name === o.part);
  const bent = (part?.flat.bends.length ?? 0) > 0;
  const purpose = (kind: string | null) => (kind === null ? '' : (plans.fasteners[kind] ?? kind));
  switch (o.kind) {
    case 'trial-bend':
      return trialWords(kit);
    case 'shear':
      return w.shear(
        o.part,
        o.quantity * sets,
        text(o.size[0]),
        text(o.size[1]),
        text(Math.hypot(...o.size)),
        unit,
      );
    case 'deburr':
      return w.deburr(o.part);
    case 'mark':
      return w.mark(
        o.part,
        bent,
        ask.findings.some((f) => f.part === o.part && isTold(f)),
      );
    case 'cut-out':
      return w.cutOut(o.part);
    case 'drill':
      return w.drill(
        o.part,
        o.holes.map((h) => ({ ...h, diameter: dims.fine(h.diameter), purpose: purpose(h.purpose) })),
        unit,
      );
    case 'bend':
      return w.bend(bendFacts(part as PartPlan, o.bend, pictured, kit), unit);
    case 'check':
      return w.check(
        o.part,
        bent,
        (part?.part.asked ?? []).map(({ name, value }) => `${name} ${text(value)}`),
        unit,
      );
    case 'measure':
      return w.measure(o.part, { ...o, planned: text(o.planned) }, unit);
    case 'trial-joint':
      return w.trialJoint(o.fastener);
    case 'place':
      return w.place(
        o.joints.map((j) => jointFacts(j, kit)),
        o.fastener,
        unit,
      );
    case 'fasten-first':
      return w.first(
        o.fastener,
        o.joints.map((j) => jointFacts(j, kit)),
      );
    case 'fasten-rest':
      return w.rest(
        o.fastener,
        o.joints.map((j) => jointFacts(j, kit)),
      );
    case 'finish':
      return w.finish;
    case 'inspect':
      return w.inspect;
  }
}

/** A trial of the first part's commonest bend. */
function trialWords({ plan, dims, words }: PacketKit): StepWords {
  const part = plan.parts.find((p) => p.flat.bends.length > 0) as PartPlan;
  const square = part.flat.bends.find((b) => b.hem === null && Math.abs(b.angle - 90) < 1e-6) ?? null;
  const inches = dims.unit === 'in';
  return words.operations.trialBend(
    {
      thickness: thicknessText(part.sheet.thickness, dims),
      radius: dims.fine(square?.insideRadius ?? part.sheet.insideRadius),
      length: inches ? '4' : '100',
      width: inches ? '1 1/2' : '40',
      deduction: square === null ? null : dims.fine(square.terms.deduction),
    },
    dims.unit,
  );
}

const jointFacts = (j: JointWork, { dims }: PacketKit): JointFacts => ({
  joint: j.name,
  from: j.from,
  to: j.to,
  count: j.fasteners,
  clearance: dims.fine(j.clearance),
});

/** Number, title, box to tick, what to do, why and with what. */
function stepStrip(
  { title, lines: said }: StepWords,
  picture: Picture | null,
  { reasons, tools }: Operation,
  number: number,
  width: number,
  { words, setting: { face, height } }: PacketKit,
): Strip {
  const w = words.operations;
  const room = width - INDENT - BOX - 3;
  const items: Item[] = [];
  let y = -1.3 * height;
  const add = (text: string, more: Pick<Stand, 'bold' | 'link'> = {}) => {
    for (const line of lines(face, text, room, height, more.bold ? 'bold' : 'regular')) {
      items.push(letter(face, line, [INDENT, y], { height, ...more }));
      y -= LEAD * height;
    }
  };
  items.push(letter(face, String(number), [INDENT - 2.5, y], { height, bold: true, align: 'end' }));
  add(title, { bold: true });
  for (const text of said) add(text);
  if (picture !== null) add(picture.text, { link: picture.link });
  if (reasons.length > 0) add(w.why(reasons.map((r) => w.reasons[r]).join('; ')));
  if (tools.length > 0) add(w.with(tools.map((t) => w.toolNames[t]).join(', ')));
  const [x, top] = [width - BOX - 1, -0.4 * height];
  const box: Item = {
    kind: 'stroke',
    pen: 'narrow',
    closed: true,
    points: [
      [x, top],
      [x + BOX, top],
      [x + BOX, top - BOX],
      [x, top - BOX],
    ],
  };
  const bottom = y + (LEAD - 0.7) * height;
  const rule: Item = {
    kind: 'stroke',
    pen: 'faint',
    points: [
      [0, bottom],
      [width, bottom],
    ],
  };
  return { height: -bottom, items: [...items, box, rule] };
}

interface Picture {
  readonly text: string;
  readonly link: string;
}

/** Where the picture of a step of bending is found; null where there is none. */
function pictureOf(o: Operation, { words }: PacketKit, { pictures }: OperationsAsk): Picture | null {
  const own = o.kind === 'bend' ? pictures.get(o.part) : undefined;
  if (o.kind !== 'bend' || own === undefined || o.bend.index >= own.count) return null;
  return { text: words.operations.picture(o.part, o.bend.index + 1, own.count), link: own.link };
}
