import {
  cite,
  type Fastener,
  type Finding,
  type JobPlan,
  type Placed,
  type Point,
  type Remark,
  type Seated,
} from '@tinwright/core';
import { frozen, place, place3, reachTo, turn3 } from '@tinwright/core/internal';
import type { Riveter, Shop, SpotWelder } from '../machines/shop.js';
import { remark } from './check-findings.js';
import { panelOf } from './geometry/panels.js';

/** A joint with its fasteners as a rule sees it. */
export interface JointSubject {
  readonly seated: Seated;
  readonly fasteners: readonly Fastener[];
  readonly plan: JobPlan;
}

/** A rule of joining: looks at one joint as a shop would make it. Core has what needs no shop. */
export type JointCheck = (subject: JointSubject, shop: Shop) => readonly Remark[];

const SAME = 0.06; // mm between a rivet's diameter and that of a nosepiece

const spotWelds: JointCheck = (subject, { spotWelder }) => {
  const { joint, from, to } = subject.seated;
  if (joint.by?.kind.facts.tools.includes('spot-welder') !== true) return [];
  if (spotWelder === null) return [remark('welder-missing', 'warning', MISSING)];
  const sheets = [from, to].map((p) => p.part.formed.thickness);
  return [...tooThick(sheets, spotWelder), ...tooFar(subject, spotWelder)];
};

function tooThick(
  sheets: readonly number[],
  { name, thickness: [least, most] }: SpotWelder,
): readonly Remark[] {
  const outside = sheets.find((t) => t < least - 1e-9 || t > most + 1e-9);
  if (outside === undefined) return [];
  return [
    remark('welder-sheet', 'warning', {
      value: outside,
      limit: outside < least ? least : most,
      unit: 'mm',
      values: { machine: name, least, most },
      source: [cite('shop-file')],
    }),
  ];
}

/** A throat given with the joint is the job's own; core holds the weld against that. */
function tooFar({ seated, fasteners, plan }: JointSubject, { name, throat }: SpotWelder): readonly Remark[] {
  const { joint, from, to } = seated;
  const given = (joint.by?.ask as { throat?: number | null } | undefined)?.throat ?? null;
  if (given !== null) return [];
  const far = fasteners
    .filter((f) => surelyEnds(f, [from, to]) > throat)
    .map((fastener) => ({ fastener, reach: reachTo(fastener.at, across(fastener, [from, to]), [from, to]) }))
    .toSorted((a, b) => b.reach - a.reach)[0];
  if (far === undefined || far.reach <= throat) return [];
  return [
    remark('welder-throat', 'warning', {
      where: { at: onFlat(far.fastener, from, plan) },
      value: far.reach,
      limit: throat,
      unit: 'mm',
      values: { machine: name },
      source: [cite('shop-file'), cite(null, { basis: 'memory' })],
    }),
  ];
}

/** The pieces end along an axis of the assembly at most this far from a fastener: a quick look before the exact one. mm */
function surelyEnds(fastener: Fastener, pieces: readonly Placed[]): number {
  const out = across(fastener, pieces);
  const corners = pieces.flatMap(({ part: { formed }, pose }) =>
    [0, 1, 2, 3, 4, 5, 6, 7].map((i) =>
      place3(pose, [
        formed.box[i & 1 ? 'max' : 'min'][0],
        formed.box[i & 2 ? 'max' : 'min'][1],
        formed.box[i & 4 ? 'max' : 'min'][2],
      ]),
    ),
  );
  if (Math.max(...out.map(Math.abs)) < 1 - 1e-9) return Infinity; // looks askew: no axis lies in its face
  const ends = ([0, 1, 2] as const).flatMap((k) => {
    if (Math.abs(out[k]) > 0.5) return [];
    const along = corners.map((c) => c[k] - fastener.at[k]);
    return [Math.max(...along), -Math.min(...along)];
  });
  return Math.min(...ends);
}

/** Out of the face a fastener goes through. */
function across({ on }: Fastener, pieces: readonly Placed[]) {
  const [end] = on as readonly [Fastener['on'][number]];
  const piece = pieces.find((p) => p.piece === end.piece) as Placed;
  const panel = piece.part.formed.panels.find((p) => p.id === end.panel);
  return turn3(piece.pose, (panel as NonNullable<typeof panel>).pose.z);
}

/** Where a fastener goes through the first part, on its flat. */
function onFlat({ on }: Fastener, { piece, part }: Placed, { parts }: JobPlan): Point {
  const end = on.find((e) => e.piece === piece) as Fastener['on'][number];
  const { flat } = parts.find((p) => p.name === part.name) as JobPlan['parts'][number];
  return place(panelOf(flat, end.panel).frame, end.at);
}

const blindRivets: JointCheck = ({ seated: { joint } }, { riveter }) => {
  if (joint.by?.kind.facts.tools.includes('rivet-gun') !== true) return [];
  if (riveter === null) return [remark('riveter-missing', 'warning', MISSING)];
  const { diameter } = joint.by.ask as { diameter?: number };
  if (diameter === undefined || riveter.diameters.some((d) => Math.abs(d - diameter) <= SAME)) return [];
  return [
    remark('riveter-size', 'warning', {
      value: diameter,
      limit: nearest(riveter, diameter),
      unit: 'mm',
      values: { machine: riveter.name, sets: riveter.diameters },
      source: [cite('shop-file')],
    }),
  ];
};

const nearest = ({ diameters }: Riveter, diameter: number): number =>
  diameters.reduce((a, b) => (Math.abs(b - diameter) < Math.abs(a - diameter) ? b : a));

const MISSING = { values: {}, source: [cite('shop-file')] };

/** Every rule of joining. A new one is a line here. */
export const JOINT_CHECKS: readonly JointCheck[] = frozen([spotWelds, blindRivets]);

/** What to know about the joints of a job before they are made in a shop; what several joints share is said once. */
export function joiningFindings(plan: JobPlan, shop: Shop): readonly Finding[] {
  const { assembly } = plan;
  if (assembly === null) return [];
  const all = assembly.seated.flatMap((seated) => {
    const fasteners = assembly.fasteners.filter((f) => f.joint === seated.joint.name);
    const part = seated.from.part.name;
    return JOINT_CHECKS.flatMap((check) => check({ seated, fasteners, plan }, shop)).map((r) => ({
      joint: seated.joint.name,
      part,
      remark: r,
    }));
  });
  const worse = ({ value, limit }: Remark) => Math.abs((value ?? 0) - (limit ?? 0));
  return [...new Set(all.map((a) => a.remark.code))].map((code) => {
    const group = all.filter((a) => a.remark.code === code);
    const { remark: worst, part } = group.reduce((a, b) => (worse(b.remark) > worse(a.remark) ? b : a));
    return {
      ...worst,
      where: { ...worst.where, joints: group.map((g) => g.joint) },
      part: group.every((g) => g.part === part) ? part : null,
    };
  });
}
