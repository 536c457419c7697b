import type { Finding, PartPlan } from '@tinwright/core';
import { RIVET_SIZES, type RivetSize } from '@tinwright/core/internal';
import type { BendWork, HoleWork, JointWork, Operation, Shop } from '@tinwright/shop';
import { type SettingName, tellBend } from '@tinwright/words';
import { derivedWords, type JointFacts, type OperationText, parameterWords } from '@tinwright/words/internal';
import { bendPrint } from '../bend-print.js';
import { isTold } from './cautions.js';
import { finishedSizes } from './finished-sizes.js';
import { type PacketKit, thicknessText } from './kit.js';

/** What operations refer to. */
export interface OperationsAbout {
  readonly findings: readonly Finding[];
  readonly shop: Pick<Shop, 'units'>;
  /** There is an inspection sheet with the sizes of every part. */
  readonly inspection: boolean;
}

/** An operation in words. */
export function stepWords(o: Operation, kit: PacketKit, about: OperationsAbout): OperationText {
  const { dims, words, plan, plans, sets, shear } = kit;
  const w = words.operations;
  const { unit, text } = dims;
  const part = plan.parts.find((p) => p.name === o.part);
  const bent = (part?.flat.bends.length ?? 0) > 0;
  const purpose = (kind: string | null) => (kind === null ? '' : plans.fastener(kind));
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
        shear,
      );
    case 'deburr':
      return w.deburr(o.part);
    case 'mark':
      return w.mark(
        o.part,
        about.findings.some((f) => f.part === o.part && isTold(f)),
      );
    case 'cut-out':
      return w.cutOut(o.part, o.openings);
    case 'drill':
      return w.drill(
        o.part,
        o.holes.map((h) => ({
          ...h,
          diameter: dims.fine(h.diameter),
          purpose: purpose(h.purpose),
          drill: dims.own(drillFor(h)),
        })),
        unit,
      );
    case 'bend':
      return bendText(part as PartPlan, o.bend, kit, about);
    case 'form':
      return w.form(o.part, { ...o, height: dims.fine(o.height), angle: Math.round(o.angle) }, unit);
    case 'check':
      return w.check(o.part, bent, about.inspection || part === undefined ? null : sizesOf(part, kit), unit);
    case 'measure':
      return w.measure(o.part, measureFacts(o, kit), unit);
    case 'trial-joint':
      return w.trialJoint(o.fastener);
    case 'place':
      return w.place(
        o.joints.map((j) => jointFacts(j, kit)),
        o.fastener,
        unit,
      );
    case 'fit':
      return w.fit({ ...o, what: kit.plans.fastener(o.type) });
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

/** How the part lies for a bend that is done as one before it. */
export function placeOf(
  { part, bend }: Operation & { readonly kind: 'bend' },
  { plan, dims, language }: PacketKit,
): readonly string[] {
  const own = plan.parts.find((p) => p.name === part) as PartPlan;
  const { settings } = tellBend(bend, language, bendPrint(own, dims));
  return settings
    .filter((s) => s.name === 'towards' || s.name === 'upright')
    .map((s) => `${s.label[0]?.toUpperCase()}${s.label.slice(1)}: ${s.text}.`);
}

/** The drill that makers of rivets name for a hole; '' where the hole is told by its own size. */
function drillFor({ purpose, diameter }: HoleWork): string {
  if (purpose !== 'blind-rivet') return '';
  const off = ({ hole: [least, most] }: RivetSize) => Math.abs((least + most) / 2 - diameter);
  const [nearest] = RIVET_SIZES.toSorted((a, b) => off(a) - off(b));
  return nearest === undefined || off(nearest) > 1e-6 ? '' : nearest.drill;
}

/** Sizes to measure on a part, in words. */
const sizesOf = (part: PartPlan, { words, plans, dims }: PacketKit): readonly string[] =>
  finishedSizes(part, plans).map(({ what, value, side }) => {
    const how = words.inspection.sides[side];
    return `${what} ${dims.text(value)}${how === '' ? '' : ` ${how}`}`;
  });

/** Told by what hands do, and by the title. */
const TOLD: Readonly<Record<BendWork['action'], readonly SettingName[]>> = {
  bend: ['held', 'jaws', 'angle'],
  fold: ['held', 'jaws', 'angle'],
  close: [],
  roll: [],
};

function bendText(part: PartPlan, work: BendWork, kit: PacketKit, { shop }: OperationsAbout): OperationText {
  const { language, dims } = kit;
  const { action, how, settings, after } = tellBend(work, language, bendPrint(part, dims, shop.units));
  const told = settings.filter((s) => !TOLD[work.action].includes(s.name));
  const set = told.map((s) => `${s.label}: ${s.text}`).join('; ');
  return {
    title: `${part.name}: ${action}`,
    lines: [...how, ...(set === '' ? [] : [`${set[0]?.toUpperCase()}${set.slice(1)}.`]), ...after],
  };
}

/** A trial of the first part's commonest bend. */
function trialWords({ plan, dims, words }: PacketKit): OperationText {
  const part = plan.parts.find((p) => p.flat.bends.length > 0) as PartPlan;
  const square = part.flat.bends.find((b) => b.hem === null && Math.abs(b.angle - 90) < 1e-6) ?? null;
  const inches = dims.unit === 'in';
  const { rule, thickness } = part.sheet;
  const taken = ({ insideRadius, angle, terms }: PartPlan['flat']['bends'][number]) =>
    rule.forms?.({ thickness, insideRadius, angle }).deduction ?? terms.deduction;
  return words.operations.trialBend(
    {
      thickness: thicknessText(part.sheet.thickness, dims),
      radius: dims.fine(square?.insideRadius ?? part.sheet.insideRadius),
      length: inches ? '4' : '100',
      width: inches ? '1 1/2' : '40',
      deduction: square === null ? null : dims.fine(taken(square)),
      laidOut: rule.compensates ? 'compensated' : 'nominal',
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

/** What is measured before a part is cut: where it follows a size of another part, that size in words. */
function measureFacts(o: Operation & { readonly kind: 'measure' }, { plan, dims, plans }: PacketKit) {
  const { size, play, planned } = o;
  const at = size?.indexOf('.') ?? -1;
  const host = plan.parts.find((p) => p.name === size?.slice(0, at));
  const name = size?.slice(at + 1) ?? '';
  const known = host?.family.derived(host.params, host.sheet).find((d) => d.name === name);
  const what =
    host === undefined
      ? ''
      : known === undefined
        ? parameterWords(host.family, name, plans.language)
        : derivedWords(known, plans.language);
  const follows = play === null || host === undefined ? null : { part: host.name, what: what || name };
  return { ...o, planned: dims.text(planned), follows, over: play !== null && play <= 0 };
}
