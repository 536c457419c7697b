// Machines as solids, drawn from the values of a shop file alone: x forward from the line, y along it, z up.
import type { Brake, FormerBlock, HandSeamer, Horns, Press, Shop, Vise } from '@tinwright/shop';
import type { ManifoldToplevel } from 'manifold-3d';
import { piecesOf, type Ring } from './outline.js';
import { type Move, raise, STAY, shift, type V3 } from './rigid.js';
import { moved, prism, type Solid } from './solid.js';
import type { Span, WrittenStep } from './step.js';

export interface Tool {
  readonly id: string;
  readonly solids: readonly Solid[];
}

/** A machine at one moment of a stroke. */
export interface Moment {
  readonly tools: readonly Tool[];
  /** What the two sides of the line have done since they lay flat on the machine. */
  readonly held: Move;
  readonly free: Move;
}

/** A bend on a machine: the sheet's inside radius, its flat metal and angle once bent. mm, radians */
export interface BendStroke {
  readonly thickness: number;
  readonly radius: number;
  readonly zone: number;
  readonly angle: number;
}

const FAR = 3000; // mm
export const EVERYWHERE: Span = [-FAR, FAR];

/** Larger (or smaller) sections as solids along y. */
export type Draw = (id: string, section: Ring, spans: readonly Span[], band?: Span) => Tool;

/** @param grow mm that every tool is larger all round; negative for smaller */
export function drawing(library: ManifoldToplevel, grow: number): Draw {
  const known = new Map<string, readonly Ring[]>();
  return (id, section, spans, band) => {
    const key = JSON.stringify([section, band?.map(String)]);
    const pieces = known.get(key) ?? piecesOf(library, section, grow, band);
    known.set(key, pieces);
    return { id, solids: spans.flatMap((s) => pieces.map((p) => bar(p, s))) };
  };
}

const bar = (section: Ring, [y0, y1]: Span): Solid =>
  prism(
    section.map(([x, z]): V3 => [x, y0, z]),
    [0, y1 - y0, 0],
  );

export const box = (x0: number, z0: number, x1: number, z1: number): Ring => [
  [x0, z0],
  [x1, z0],
  [x1, z1],
  [x0, z1],
];

export const lifted = (tool: Tool, by: Move): Tool => ({
  id: tool.id,
  solids: tool.solids.map((s) => moved(s, by)),
});

/** How far the free side slides out while it turns: outer faces meet at the hinge whatever the angle. */
function slideOut({ thickness, radius, zone, angle }: BendStroke, turn: number): number {
  return 2 * Math.tan(turn / 2) * (radius + thickness) - zone * Math.min(1, turn / angle);
}

/** The free side turned about the hinge. */
export const turnedOver = (stroke: BendStroke, turn: number): Move => {
  const m = raise(turn);
  const by = slideOut(stroke, turn);
  return m.map((v, i) => (i % 4 === 3 ? (m[i - 3] as number) * by : v));
};

/** Every leaf brake of a shop. */
export const brakesIn = ({ brake, brakes }: Pick<Shop, 'brake' | 'brakes'>): readonly Brake[] =>
  brake === null ? brakes : [brake, ...brakes];

/** The one of that name. */
export const brakeCalled = (shop: Pick<Shop, 'brake' | 'brakes'>, name: string | null): Brake | null =>
  brakesIn(shop).find((b) => b.name === name) ?? null;

export interface LeafTools {
  readonly bed: Tool;
  readonly leaf: Tool;
  readonly beam: Tool;
  readonly fingers: Tool;
}

const BEAM = 400; // mm a beam is taken to be deep: what stands up further back is behind the machine; judgement
const LEAF = 40; // mm the leaf is taken to be deep under its face; judgement

/** A leaf brake round a sheet, its fingers' tips `setBack` behind the hinge. @param over what lies under the jaw, mm */
export function leafTools(
  draw: Draw,
  brake: Brake,
  over: number,
  setBack: number,
  fingers: readonly Span[],
): LeafTools {
  const { foot, upright, noseAngle } = brake.finger;
  const rise = Math.min(upright * Math.tan((noseAngle * Math.PI) / 180), brake.clearHeight);
  const [tip, front, heel, top] = [-setBack, -setBack - upright, -setBack - foot, over + brake.clearHeight];
  const finger: Ring = [
    [heel, over],
    [tip, over],
    [front, over + rise],
    [front, top],
    [heel, top],
  ];
  return {
    bed: draw('bed', box(-brake.bed, -FAR, 0, 0), [EVERYWHERE]),
    leaf: draw('leaf', box(0, -LEAF, brake.leaf.width, 0), [EVERYWHERE]),
    beam: draw('beam', box(-setBack - brake.beam - BEAM, top, -setBack - brake.beam, top + FAR), [
      EVERYWHERE,
    ]),
    fingers: draw('fingers', finger, fingers),
  };
}

export function leafMoment(tools: LeafTools, stroke: BendStroke, turn: number): Moment {
  return {
    tools: [tools.bed, lifted(tools.leaf, raise(turn)), tools.beam, tools.fingers],
    held: STAY,
    free: turnedOver(stroke, turn),
  };
}

export interface PressTools {
  readonly ram: Tool;
  readonly punch: Tool;
  readonly die: Tool;
  readonly bed: Tool;
  /** A finger of the back gauge, where one is used. */
  readonly gauge: Tool | null;
  readonly opening: number;
}

export function pressTools(
  draw: Draw,
  press: Press,
  names: { readonly punch: string; readonly die: string; readonly horns: Horns | null },
  spans: readonly Span[],
  gauge: { readonly behind: number; readonly at: number } | null = null,
): PressTools {
  const punch = press.punches.find((p) => p.name === names.punch);
  const die = press.dies.find((d) => d.name === names.die);
  if (punch === undefined || die === undefined)
    throw new Error(`no ${names.punch} or ${names.die} in the shop`);
  const { half, height } = press.ram;
  const low = Math.min(...die.section.map((p) => p[1]));
  return {
    ram: draw('ram', box(-half, height, half, height + FAR), [EVERYWHERE]),
    punch: joined(
      'punch',
      bandsOf(names.horns).flatMap(({ band, back }) =>
        [counterClockwise(punch.section), holder(punch.section, height)].map((section) =>
          draw('punch', section, shorter(spans, back), band),
        ),
      ),
    ),
    die: draw('die', counterClockwise(die.section), die.sectioned ? spans : [EVERYWHERE]),
    bed: draw('bed', box(-press.bed.half, low - FAR, press.bed.half, low), [EVERYWHERE]),
    gauge: gauge === null ? null : gaugeFinger(draw, press, die.section, gauge),
    opening: die.opening,
  };
}

/** The rear stop of a leaf brake where it is said to touch, as far as its height is known. */
export function rearStop(
  draw: Draw,
  { rearStopHeight }: Brake,
  { setBack, stopDistance, touches }: Pick<WrittenStep, 'setBack' | 'stopDistance' | 'touches'>,
  left: number,
): readonly Tool[] {
  if (rearStopHeight === null || stopDistance === null || touches === null) return [];
  const front = -(setBack ?? 0) - stopDistance - GIVES;
  const along: Span = [left + touches.at - REAR_STOP / 2, left + touches.at + REAR_STOP / 2];
  return [draw('rear stop', box(front - 400, 0, front, rearStopHeight), [along])];
}

const REAR_STOP = 30; // mm of it along the line; judgement
const GIVES = 0.8; // mm a sheet may push into a finger of the gauge, which gives; judgement

/** A finger of the back gauge with what carries it; over the die it lies on it, behind it it hangs lower. */
function gaugeFinger(
  draw: Draw,
  { backGauge: { finger } }: Press,
  die: Ring,
  { behind, at }: { readonly behind: number; readonly at: number },
): Tool {
  const { over, under, length, width } = finger;
  const low = behind < -Math.min(...die.map((p) => p[0])) ? 0 : -under;
  const own: readonly Span[] = [[at - width / 2, at + width / 2]];
  return joined('gauge', [
    draw('gauge', box(-behind - length, low, -behind - GIVES, over), own),
    draw('gauge', box(-behind - length - 400, -400, -behind - length, over), own),
  ]);
}

/** What holds a punch, as wide as its top and up to the ram. */
function holder(section: Ring, height: number): Ring {
  const top = Math.max(...section.map((p) => p[1]));
  const xs = section.filter((p) => p[1] > top - 1e-6).map((p) => p[0]);
  return box(Math.min(...xs), top - 1, Math.max(...xs), Math.max(top, height) + 1);
}

const joined = (id: string, tools: readonly Tool[]): Tool => ({ id, solids: tools.flatMap((t) => t.solids) });

/** What of a punch with horns reaches to its ends, and what stays back from them. */
export const bandsOf = (horns: Horns | null): readonly { readonly band: Span; readonly back: number }[] =>
  horns === null
    ? [{ band: [-FAR, FAR], back: 0 }]
    : [
        { band: [-FAR, horns.foot], back: 0 },
        { band: [horns.foot, horns.height], back: horns.reach },
        { band: [horns.height, FAR], back: 0 },
      ];

/** Spans that begin and end so much further in, as a whole. */
function shorter(spans: readonly Span[], by: number): readonly Span[] {
  const [from, to] = [Math.min(...spans.map((s) => s[0])), Math.max(...spans.map((s) => s[1]))];
  return spans.map(([a, b]) => [a === from ? a + by : a, b === to ? b - by : b]);
}

const counterClockwise = (ring: Ring): Ring => {
  const twice = ring.reduce((s, p, i) => {
    const q = ring[(i + 1) % ring.length] as Ring[number];
    return s + p[0] * q[1] - q[0] * p[1];
  }, 0);
  return twice < 0 ? ring.toReversed() : ring;
};

/** The point of the punch stays at the origin, on the inside of the bend; the die's shoulders follow the outside. */
export function pressMoment(tools: PressTools, stroke: BendStroke, turn: number): Moment {
  const { thickness: T, radius: R, zone, angle } = stroke;
  const h = turn / 2;
  const wound = (zone * Math.min(1, turn / angle)) / 2;
  const [x, z] = [R * Math.sin(h), R - R * Math.cos(h)];
  const side = (s: 1 | -1): Move => {
    const m = raise(s * h);
    // sheet between -T and 0 first, its line's metal taken up by the arc
    const [dx, dz] = [-s * wound, -T];
    return m.map((v, i) => {
      if (i % 4 !== 3) return v;
      const turned = (m[i - 3] as number) * dx + (m[i - 1] as number) * dz;
      return turned + (i === 3 ? s * x : i === 11 ? z : 0);
    });
  };
  const v = tools.opening / 2;
  const onFlat = v >= (R + T) * Math.sin(h);
  const shoulder = onFlat
    ? z + (v - x) * Math.tan(h) - T / Math.cos(h)
    : R - Math.sqrt((R + T) ** 2 - v ** 2);
  return {
    tools: [
      tools.ram,
      tools.punch,
      ...[tools.die, tools.bed, ...(tools.gauge === null ? [] : [tools.gauge])].map((t) =>
        lifted(t, shift(0, 0, shoulder)),
      ),
    ],
    held: side(-1),
    free: side(1),
  };
}

const LEGS = 4; // mm the legs of folding bars keep the jaws off the sheet; judgement
const CLAMPS = 40; // mm past the ends of a line for what clamps a bar down; judgement
const HANDLES = 40; // mm either side of the sheet that pliers take behind their jaws; judgement

/** What grips a sheet for a bend by hand, the line's outside at the origin. */
export function jawTools(
  draw: Draw,
  by:
    | { readonly vise: Vise; readonly side: 1 | -1 }
    | { readonly bench: Vise }
    | { readonly seamer: HandSeamer }
    | { readonly former: FormerBlock },
  T: number,
  [y0, y1]: Span,
): readonly Tool[] {
  const own: readonly Span[] = [[y0, y1]];
  if ('seamer' in by) {
    const { depth, jaw } = by.seamer;
    return [
      draw('jaws', box(-depth, T, -T, T + jaw), own),
      draw('jaws', box(-depth, -jaw, 0, 0), own),
      draw('handles', box(-depth - 200, -HANDLES, -depth, T + HANDLES), own),
    ];
  }
  if ('former' in by) {
    const { width, height } = by.former;
    return [
      draw('bench', box(-FAR, -FAR, 0, 0), [EVERYWHERE]),
      draw('block', box(-width, T, -T, T + height), own),
      draw('batten', box(-width, T + height, -T, T + height + 40), [EVERYWHERE]),
    ];
  }
  if ('bench' in by) {
    const { grip, bar: thick } = by.bench;
    return [
      draw('bench', box(-FAR, -FAR, 0, 0), [EVERYWHERE]),
      draw('bar', box(-grip, T, -T, T + thick), own),
      // past its ends the bar is let down on folds that lie on the sheet
      draw('bar', box(-grip, T + LEGS, -T, T + thick), [[y0 - CLAMPS, y1 + CLAMPS]]),
    ];
  }
  const { depth, grip, bar: thick, jaw, bench } = by.vise;
  return [
    draw('bars', box(-grip, T, -T, T + thick), own),
    draw('bars', box(-grip, -thick, 0, 0), own),
    draw('jaws', box(-depth, T + LEGS, -grip, T + jaw), own),
    draw('jaws', box(-depth, -jaw, -grip, -LEGS), own),
    draw('screw', box(-FAR, -jaw, -depth, T + jaw), own),
    draw('bench', by.side === 1 ? box(-FAR, T + jaw, -bench, FAR) : box(-FAR, -FAR, -bench, -jaw), [
      EVERYWHERE,
    ]),
  ];
}
