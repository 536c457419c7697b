import type { Box3, Formed, Point, Vec3 } from '@tinwright/core';
import type { Asked } from '@tinwright/core/family';
import { measuredBox } from '@tinwright/core/internal';
import type { Shape } from '../drawing.js';
import { CHARACTER } from './page.js';
import { see, type View } from './view.js';

/** Dimension lines and their texts on the page, mm of the page. */
export interface Dimensions {
  readonly lines: readonly Shape[];
  readonly texts: readonly Shape[];
}

const STEP = 7; // between stacked dimension lines on the page, mm
const FIRST = 6; // from the part to the first
const TEXT = 2.4;
const ARROW = 1.8;
type Axis = Asked['axis'];
const INDEX = { x: 0, y: 1, z: 2 } as const;

interface Measure {
  readonly name: string;
  readonly axis: Axis;
  readonly from: number;
  readonly to: number;
  /** On the far side of a flat part, where the near side would cross it. */
  readonly back: boolean;
  /** From the part, on the page, mm. */
  readonly out: number;
}

/**
 * Dimension lines for the sizes asked of a part, drawn in its view: x along the lower left side, y along the
 * lower right side, z at the left corner; the shortest nearest to the part. `scale` is page over part.
 */
export function dimensions(formed: Formed, asked: readonly Asked[], view: View, scale: number): Dimensions {
  const measures = stacked(
    asked.map((a) => measure(formed, a)),
    scale,
  );
  const drawn = measures.map((m) => draw(formed.box, m, view, scale));
  return { lines: drawn.flatMap((d) => d.lines), texts: drawn.flatMap((d) => d.texts) };
}

function measure(formed: Formed, { name, axis, over }: Asked): Measure {
  const box = measuredBox(formed, over);
  const k = INDEX[axis];
  const flat = formed.size[2] < 4 * formed.thickness;
  const middle = (b: Box3, i: 0 | 1) => (b.min[i] + b.max[i]) / 2;
  const back = flat && axis === 'x' && middle(box, 1) > middle(formed.box, 1) + 1;
  return { name, axis, from: box.min[k], to: box.max[k], back, out: FIRST };
}

/** Move every measure out until neither line nor text of its side overlaps it; short ones stay nearest. */
function stacked(measures: readonly Measure[], scale: number): readonly Measure[] {
  const placed: Measure[] = [];
  for (const m of measures.toSorted((a, b) => a.to - a.from - (b.to - b.from))) {
    const rivals = placed.filter((p) => p.axis === m.axis && p.back === m.back && crowd(p, m, scale));
    placed.push({ ...m, out: Math.max(FIRST, ...rivals.map((p) => p.out + room(p))) });
  }
  return placed;
}

const textWidth = (name: string) => CHARACTER * TEXT * name.length;

/** What a dimension takes up across its line: upright ones have their text lying beside them. */
const room = ({ axis, name }: Measure) => (axis === 'z' ? textWidth(name) + STEP / 2 : STEP);

/** True when the stretches two dimensions take up, texts included, overlap. */
function crowd(a: Measure, b: Measure, scale: number): boolean {
  const [a0, a1] = stretch(a, scale);
  const [b0, b1] = stretch(b, scale);
  return a0 < b1 && b0 < a1;
}

function stretch({ name, axis, from, to }: Measure, scale: number): readonly [number, number] {
  const text = (axis === 'z' ? 2 * TEXT : textWidth(name)) / scale;
  const half = Math.max(to - from, text) / 2;
  return [(from + to) / 2 - half, (from + to) / 2 + half];
}

function draw(box: Box3, m: Measure, view: View, scale: number): Dimensions {
  const off = m.out / scale;
  const at = (v: number, out: number): Vec3 => {
    if (m.axis === 'x') return m.back ? [v, box.max[1] + out, box.min[2]] : [v, box.min[1] - out, box.min[2]];
    if (m.axis === 'y') return [box.max[0] + out, v, box.min[2]];
    return [box.min[0] - out, box.min[1] - out, v];
  };
  // a step along both x and y moves further across the page
  const out = m.axis === 'z' ? off / (2 * Math.cos(Math.PI / 6)) : off;
  const page = (p: Vec3): Point => {
    const [x, y] = see(view, p).at;
    return [x * scale, y * scale];
  };
  const [a, b] = [page(at(m.from, out)), page(at(m.to, out))];
  const past = out + 1.5 / scale;
  const extensions = [m.from, m.to].map(
    (v): Shape => ({ kind: 'line', from: page(at(v, 1 / scale)), to: page(at(v, past)) }),
  );
  return { lines: [...extensions, ...arrows(a, b)], texts: [text(m, a, b)] };
}

function arrows(a: Point, b: Point): readonly Shape[] {
  const angle = Math.atan2(b[1] - a[1], b[0] - a[0]);
  const length = Math.hypot(b[0] - a[0], b[1] - a[1]);
  const head = (tip: Point, heading: number): readonly Shape[] =>
    [0.3, -0.3].map((spread) => ({
      kind: 'line',
      from: tip,
      to: [tip[0] + ARROW * Math.cos(heading + spread), tip[1] + ARROW * Math.sin(heading + spread)],
    }));
  // on a short dimension the arrows stand outside and point in
  const turn = length < 3 * ARROW ? Math.PI : 0;
  return [{ kind: 'line', from: a, to: b }, ...head(a, angle + turn), ...head(b, angle + Math.PI + turn)];
}

/** Along its line on the side away from the part; beside an upright line, to its left. */
function text({ name, axis, back }: Measure, a: Point, b: Point): Shape {
  const middle: Point = [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
  const base = { kind: 'text', height: TEXT, text: name, centred: true } as const;
  if (axis === 'z') return { ...base, at: [middle[0] - textWidth(name) / 2 - 1, middle[1] - TEXT / 2] };
  const rotation = axis === 'x' ? -30 : 30;
  const away = back ? 1 : -1 - TEXT;
  const r = (rotation * Math.PI) / 180;
  return { ...base, at: [middle[0] - away * Math.sin(r), middle[1] + away * Math.cos(r)], rotation };
}
