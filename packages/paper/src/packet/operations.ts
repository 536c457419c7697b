import type { PartPlan } from '@tinwright/core';
import type { BendWork, Operation, Sequence } from '@tinwright/shop';
import { toolsOf } from '@tinwright/shop/internal';
import { mendWords, reasonWords } from '@tinwright/words';
import { fewMends, type Has, type OperationText, sayOf } from '@tinwright/words/internal';
import { figureRows } from '../page/figure-rows.js';
import type { Flowing, Strip } from '../page/flow.js';
import { headingStrip, notesFlow } from '../page/table.js';
import { readingNotes } from '../plan/plan-passages.js';
import { type Scene, sceneAt } from '../steps/scene.js';
import { stepRow } from '../steps/step-row.js';
import { directionsFigure } from './directions-figure.js';
import type { PacketKit } from './kit.js';
import type { Making } from './making.js';
import { settingFigures } from './setting-figures.js';
import { ruled, stepStrip, type ToldOperation } from './step-strip.js';
import { placeOf, stepWords } from './step-words.js';
import { strokeKey } from './stroke-key.js';

/**
 * The operations sheet: tools to lay out, how pictures are read, then everything to do in order, each with its reason,
 * and a bend with its picture: of strokes that are the same one.
 * @param has sections that are in the packet: what helps to read plans is told here
 */
export function operationFlows(kit: PacketKit, making: Making, has: Has): readonly Flowing[] {
  const { words, setting, dims, steps } = kit;
  const w = words.operations;
  const tools = toolsOf(making.operations.list).map((t) => w.toolNames[t]);
  const told = toldOnce(kit, making, has);
  const scenes = told.flatMap((t) => t.scene ?? []);
  const figures = [directionsFigure(kit), ...settingFigures(scenes, kit)];
  const reading = scenes.length === 0 ? [] : [w.pictures];
  // without an order bends are told as on a leaf brake
  const leaf = making.operations.list.some((o) => o.kind === 'bend' && onLeaf(o.bend)) ? [w.leafTerms] : [];
  const drawing = { words: steps, dims, ...setting };
  return [
    notesFlow(null, intro(kit, making), setting),
    notesFlow(w.tools, [`${tools.join(', ')}.`, [...leaf, w.glossary, ...reading].join(' ')], setting),
    ...(has('plans') ? [notesFlow(w.plans, plansNotes(kit), setting)] : []),
    (width) => ({
      alt: figures.map((f) => f.alt).join('; '),
      heading: null,
      head: null,
      rows: figureRows(figures, width),
    }),
    (width) => ({
      alt: null,
      heading: headingStrip(w.heading, setting),
      head: null,
      rows: told.flatMap(({ scene, ...t }, i): readonly Strip[] => {
        const text = stepStrip(t, i + 1, width, kit);
        if (scene === null) return [ruled(text, width)];
        const title = steps.title(scene.part.name, scene.index + 1, scene.of);
        return [{ ...text, withNext: true }, ruled(stepRow(scene, steps.alt(title), width, drawing), width)];
      }),
    }),
  ];
}

const onLeaf = ({ step }: BendWork): boolean => step === null || step.machine === 'brake';

/** What helps to read the plans, each told once. */
function plansNotes({ plan, plans }: PacketKit): readonly string[] {
  const all = plan.parts.flatMap((p) => readingNotes(p, plans, 'program'));
  return [[...new Set(all)].join(' ')];
}

/** Whose machines, and where the order of bends comes from. */
function intro(
  { plan, language, words, dims }: PacketKit,
  { operations, shop, assumed, sequences }: Making,
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
    ...impossible.map((name) => {
      const { reasons, mends } = sequences.get(name) as Sequence;
      const say = sayOf(dims.unit, language);
      const helps = fewMends(mends).map((m) => mendWords(m, say, language));
      return w.impossible(name, reasons.map((r) => reasonWords(r, say, language)).join('; '), helps);
    }),
  ];
}

/** An operation as it is printed; a bend with its picture. */
interface Told extends ToldOperation {
  readonly scene: Scene | null;
}

/** An operation with all that is said of it. */
interface Whole extends OperationText {
  readonly o: Operation;
}

/** Every operation; what was said of one before it is not said again, nor a reason or the tools of a kind of work. */
function toldOnce(kit: PacketKit, making: Making, has: Has): readonly Told[] {
  const { list } = making.operations;
  const w = kit.words.operations;
  const about = { findings: making.findings, shop: making.shop, inspection: has('inspection') };
  const told = list.map((o): Whole => ({ o, ...stepWords(o, kit, about) }));
  const twins = twinBends(list, kit.plan.parts);
  return told.map(({ o, title, lines }, i): Told => {
    const before = told.slice(0, i);
    const twin = twins[i] ?? null;
    if (twin !== null) {
      const turned = o.kind === 'bend' ? placeOf(o, kit) : [];
      return { title, lines: [w.asBefore(twin + 1), ...turned], reasons: [], tools: [], scene: null };
    }
    const again = twins.flatMap((t, k) => (t === i ? [k + 1] : []));
    const known = before.filter((b) => b.o.kind === o.kind);
    return {
      title,
      lines: [...lessKnown({ o, title, lines }, before, w), ...(again.length === 0 ? [] : [w.again(again)])],
      reasons: o.reasons.filter((r) => !before.some((b) => b.o.reasons.includes(r))),
      tools: known.some((b) => o.tools.every((t) => b.o.tools.includes(t))) ? [] : o.tools,
      scene: sceneOf(o, kit.plan.parts, making),
    };
  });
}

/** For each operation the first that is the same stroke of bending; null where there is none. */
function twinBends(list: readonly Operation[], parts: readonly PartPlan[]): readonly (number | null)[] {
  const keys = list.map((o) => {
    const part = o.kind === 'bend' ? parts.find((p) => p.name === o.part) : undefined;
    return o.kind !== 'bend' || o.bend.step === null || part === undefined
      ? null
      : strokeKey(part, o.bend.step);
  });
  return keys.map((key, i) => {
    const first = key === null ? i : keys.indexOf(key);
    return first === i ? null : first;
  });
}

/** Lines of an operation, less those that the same work on a part before it has too: it refers to that. */
function lessKnown(
  { o, lines }: Whole,
  before: readonly Whole[],
  w: PacketKit['words']['operations'],
): readonly string[] {
  if (o.kind === 'bend') return lines;
  const bare = (text: string, part: string | null) => (part === null ? text : text.split(part).join(''));
  const own = lines.map((l) => bare(l, o.part));
  const shared = before.map((b) =>
    b.o.kind === o.kind ? own.map((l) => b.lines.some((k) => bare(k, b.o.part) === l)) : [],
  );
  const counts = shared.map((s) => s.filter(Boolean).length);
  const most = Math.max(0, ...counts);
  if (most === 0) return lines;
  const at = counts.indexOf(most);
  return [w.asBefore(at + 1), ...lines.filter((_, i) => shared[at]?.[i] !== true)];
}

function sceneOf(o: Operation, parts: readonly PartPlan[], { sequences, shop }: Making): Scene | null {
  if (o.kind !== 'bend' || o.bend.step === null) return null;
  const part = parts.find((p) => p.name === o.part);
  const sequence = sequences.get(o.part);
  return part === undefined || sequence === undefined ? null : sceneAt(part, sequence, o.bend.index, shop);
}
