import { type Assembly, type JobPlan, linearTolerance, revivePlan, type Seated } from '@tinwright/core';
import type { KnownFastener } from '@tinwright/core/family';
import type { Sequence } from '../sequence/answer/plan.js';
import type { JointWork, Operation, Operations } from './operation.js';
import { partOperations } from './part-operations.js';
import { placingOrder, springsIn } from './placing-order.js';
import { type StageMeasure, stagesOf } from './stages.js';

/**
 * Everything to do for a job from stock to finished object, in order, each with its tools and reasons.
 * @param sequences bend orders found for a shop, by the name of the part; the trade's usual order where there is none
 */
export function jobOperations(plan: JobPlan, sequences: ReadonlyMap<string, Sequence>): Operations {
  const { parts, assembly } = revivePlan(plan);
  const bent = parts.some((p) => p.flat.bends.length > 0);
  const stages = stagesOf(parts, assembly);
  const joints = stages.flatMap((s) => s.joints);
  const list: readonly Operation[] = [
    ...(bent ? [trialOf(parts.flatMap((p) => sequences.get(p.name) ?? []))] : []),
    ...stages.flatMap((stage) => [
      ...stage.parts.flatMap((p) => [
        ...(stage.measures[p.name] ?? []).map(
          (m): Operation => ({
            kind: 'measure',
            ...m,
            part: p.name,
            tools: ['rule', 'caliper'],
            reasons: isSmall(m) ? ['bends-vary', 'play-small'] : ['bends-vary'],
          }),
        ),
        ...partOperations(p, assembly, sequences.get(p.name) ?? null),
      ]),
      ...groupsOf(stage.joints.filter(fastened)).flatMap((g) => fastening(g, assembly, isFirst(g, joints))),
    ]),
    ...fitting(assembly),
    ...placingOrder(groupsOf(joints.filter((j) => !fastened(j) && !isHinged(j, assembly))), assembly).map(
      (g) => placing(g, assembly),
    ),
    { kind: 'finish', part: null, tools: ['file', 'gloves'], reasons: ['hands-and-cloth'] },
    { kind: 'inspect', part: null, tools: ['rule', 'caliper', 'square'], reasons: ['measured-is-known'] },
  ];
  const orders = parts
    .filter((p) => p.flat.bends.length > 0)
    .map((p) => {
      const sequence = sequences.get(p.name);
      return [
        p.name,
        sequence !== undefined && sequence.status !== 'infeasible' ? 'found' : 'usual',
      ] as const;
    });
  return { list, orders: Object.fromEntries(orders) };
}

/** True where a part has less play than what it goes into may be off. ISO 2768-1 class m */
const isSmall = ({ play, planned }: StageMeasure): boolean =>
  play !== null && play !== 0 && Math.abs(play) < (linearTolerance(planned, 'm') ?? 0);

/** A strip is bent with what makes the first bend of the orders; a brake where there is none. */
function trialOf(sequences: readonly Sequence[]): Operation {
  const steps = sequences.flatMap((s) => (s.status === 'infeasible' ? [] : s.steps));
  const machine = steps.find((s) => s.action === 'bend')?.machine ?? 'brake';
  const bending = { brake: ['brake'], press: ['press'], vise: ['vise', 'mallet'], hand: ['mallet'] } as const;
  return {
    kind: 'trial-bend',
    part: null,
    tools: ['rule', 'caliper', ...bending[machine], 'protractor', 'square'],
    reasons: ['metal-differs'],
  };
}

const fastened = ({ joint }: Seated): boolean => joint.by !== null;
const kindOf = ({ joint }: Seated): string => joint.by?.kind.name ?? '';

/** The fastener of a joint without its code, since an operation is data; null for a joint without one. */
const knownOf = ({ joint: { by } }: Seated): KnownFastener | null =>
  by === null ? null : { name: by.kind.name, facts: by.kind.facts };

/** Joints between the same parts by the same fastener, which are done together. */
function groupsOf(joints: readonly Seated[]): readonly (readonly Seated[])[] {
  const groups = new Map<string, Seated[]>();
  for (const s of joints) {
    const key = [s.from.part.name, s.to.part.name, kindOf(s)].join('\n');
    groups.set(key, [...(groups.get(key) ?? []), s]);
  }
  return [...groups.values()];
}

/** True for the group whose fastener is used for the first time. */
const isFirst = (group: readonly Seated[], joints: readonly Seated[]): boolean => {
  const kind = kindOf(group[0] as Seated);
  return joints.find((j) => kindOf(j) === kind)?.joint.name === group[0]?.joint.name;
};

/** Pieces set in place. */
function placing(group: readonly Seated[], assembly: Assembly | null): Operation {
  const joints = group.map((s) => jointWork(s, assembly));
  const [first] = group as [Seated];
  const base = { kind: 'place', part: null, joints } as const;
  const fastener = knownOf(first);
  const sprung = springsIn(group, assembly) ? (['spring-in'] as const) : [];
  return fastener !== null
    ? { ...base, fastener, tools: ['clamps', 'square', 'gloves'], reasons: [...sprung, 'seat-square'] }
    : { ...base, fastener, tools: ['gloves'], reasons: sprung };
}

/** Pieces in place, one fastener, a look, the others; first a trial of a fastener that is new. */
function fastening(
  group: readonly Seated[],
  assembly: Assembly | null,
  isNew: boolean,
): readonly Operation[] {
  const fastener = knownOf(group[0] as Seated);
  if (fastener === null) return [];
  const joints = group.map((s) => jointWork(s, assembly));
  const { tools } = fastener.facts;
  const of = (kind: 'fasten-first' | 'fasten-rest', reasons: Operation['reasons']): Operation => ({
    kind,
    part: null,
    fastener,
    joints,
    tools: kind === 'fasten-first' ? [...tools, 'square'] : tools,
    reasons,
  });
  const trying: Operation = { kind: 'trial-joint', part: null, fastener, tools, reasons: ['metal-differs'] };
  return [
    ...(isNew ? [trying] : []),
    placing(group, assembly),
    of('fasten-first', ['first-can-be-undone']),
    ...(joints.some((w) => w.fasteners > 1) ? [of('fasten-rest', ['middle-outwards'])] : []),
  ];
}

/** True for a joint between two pieces that bought parts join: it is made with them. */
const isHinged = ({ from, to }: Seated, assembly: Assembly | null): boolean =>
  (assembly?.bought ?? []).some((b) => [from, to].every((p) => b.holds.some((h) => h.piece === p.piece)));

/** Bought parts, those on one piece before those that join two: what is empty still opens. */
function fitting(assembly: Assembly | null): readonly Operation[] {
  const rows = [...new Map((assembly?.bought ?? []).map((b) => [b.spec.name, b])).values()];
  return rows
    .toSorted((a, b) => a.holds.length - b.holds.length)
    .map(({ spec: { name, params, by, at }, holds }): Operation => {
      const fastener = by === null ? null : { name: by.kind.name, facts: by.kind.facts };
      return {
        kind: 'fit',
        part: null,
        name,
        type: params.type,
        count: at.length,
        pieces: holds.map((h) => h.piece),
        fastener,
        opens: params.type === 'hinge' ? params.opens : null,
        tools: fastener?.facts.tools ?? ['screwdriver', 'eyes'],
        reasons: [],
      };
    });
}

function jointWork({ joint, from, to }: Seated, assembly: Assembly | null): JointWork {
  const fasteners = (assembly?.fasteners ?? []).filter((f) => f.joint === joint.name).length;
  return { name: joint.name, from: from.piece, to: to.piece, fasteners, clearance: joint.clearance };
}
