// Reads the CUT layer of a DXF file back, with nothing from the writers.
import type { SimplePolygon } from 'manifold-3d';

type Tag = readonly [code: number, value: string];
const SAGITTA = 0.001; // mm, or what is asked for
const JOINED = 2e-5; // between the ends of two strokes that are one

interface Corner {
  readonly x: number;
  readonly y: number;
  readonly bulge: number;
}

/** Closed loops on CUT as fine polygons, in the unit of the file; R2000 and R12, polylines or lines and arcs. */
export function cutLoops(dxf: string, sagitta = SAGITTA): SimplePolygon[] {
  const entities = entityList(dxf).filter(
    (e) => text(e, 8) === 'CUT' || ['VERTEX', 'SEQEND'].includes(e.kind),
  );
  const loops: SimplePolygon[] = [];
  entities.forEach((e, i) => {
    if (e.kind === 'CIRCLE') loops.push(circle(number(e, 10), number(e, 20), number(e, 40), sagitta));
    if (e.kind === 'LWPOLYLINE') loops.push(flatten(lightCorners(e.tags), sagitta));
    if (e.kind === 'POLYLINE') {
      const end = entities.findIndex((x, j) => j > i && x.kind === 'SEQEND');
      loops.push(
        flatten(
          entities
            .slice(i + 1, end)
            .map((v) => ({ x: number(v, 10), y: number(v, 20), bulge: number(v, 42) })),
          sagitta,
        ),
      );
    }
  });
  loops.push(
    ...chained(entities.filter((e) => e.kind === 'LINE' || e.kind === 'ARC').map((e) => stroke(e, sagitta))),
  );
  if (loops.length === 0) throw new Error('no loops on CUT');
  return loops;
}

type Stroke = readonly [number, number][];

function stroke(e: Entity, sagitta: number): Stroke {
  const [x, y, r] = [number(e, 10), number(e, 20), number(e, 40)];
  if (e.kind === 'LINE')
    return [
      [x, y],
      [number(e, 11), number(e, 21)],
    ];
  const [from, to] = [50, 51].map((code) => (number(e, code) * Math.PI) / 180) as [number, number];
  const turn = to > from ? to - from : to - from + 2 * Math.PI;
  const n = Math.max(2, Math.ceil(turn / (2 * Math.acos(1 - Math.min(1, sagitta / r)))));
  return Array.from({ length: n + 1 }, (_, i) => [
    x + r * Math.cos(from + (turn * i) / n),
    y + r * Math.sin(from + (turn * i) / n),
  ]);
}

/** Lines and arcs that follow each other in the file, each from where the last ended, put together to loops. */
function chained(strokes: readonly Stroke[]): SimplePolygon[] {
  const loops: SimplePolygon[] = [];
  let open: [number, number][] = [];
  for (const given of strokes) {
    const on = (p: readonly number[] | undefined, q: readonly number[] | undefined) =>
      p !== undefined &&
      q !== undefined &&
      Math.hypot(...[0, 1].map((k) => (p[k] ?? 0) - (q[k] ?? 0))) < JOINED;
    if (open.length === 0) open = [...given];
    else if (on(open.at(-1), given[0])) open.push(...given.slice(1));
    else if (on(open.at(-1), given.at(-1))) open.push(...given.toReversed().slice(1));
    else if (on(open[0], given[0])) open = [...open.toReversed(), ...given.slice(1)];
    else if (on(open[0], given.at(-1))) open = [...open.toReversed(), ...given.toReversed().slice(1)];
    else throw new Error(`a cut starts at ${given[0]} that the last does not lead to`);
    if (open.length > 2 && on(open[0], open.at(-1))) {
      loops.push(open.slice(0, -1));
      open = [];
    }
  }
  if (open.length > 0) throw new Error(`cuts do not close at ${open.at(-1)}`);
  return loops;
}

interface Entity {
  readonly kind: string;
  readonly tags: readonly Tag[];
}

function entityList(dxf: string): readonly Entity[] {
  const lines = dxf.split(/\r?\n/);
  const tags: Tag[] = [];
  for (let i = 0; i + 1 < lines.length; i += 2) tags.push([Number(lines[i]), (lines[i + 1] ?? '').trim()]);
  const start = tags.findIndex(([c, v]) => c === 2 && v === 'ENTITIES');
  const end = tags.findIndex(([c, v], i) => i > start && c === 0 && v === 'ENDSEC');
  const found: { kind: string; tags: Tag[] }[] = [];
  for (const tag of tags.slice(start + 1, end)) {
    if (tag[0] === 0) found.push({ kind: tag[1], tags: [] });
    else found.at(-1)?.tags.push(tag);
  }
  return found;
}

const text = (e: Entity, code: number) => e.tags.find(([c]) => c === code)?.[1];
const number = (e: Entity, code: number) => Number(text(e, code) ?? 0);

function lightCorners(tags: readonly Tag[]): readonly Corner[] {
  const corners: { x: number; y: number; bulge: number }[] = [];
  for (const [code, value] of tags) {
    if (code === 10) corners.push({ x: Number(value), y: 0, bulge: 0 });
    const last = corners.at(-1);
    if (last !== undefined && code === 20) last.y = Number(value);
    if (last !== undefined && code === 42) last.bulge = Number(value);
  }
  return corners;
}

function circle(x: number, y: number, r: number, sagitta: number): SimplePolygon {
  const n = Math.ceil(Math.PI / Math.acos(1 - sagitta / r));
  return Array.from({ length: n }, (_, i) => [
    x + r * Math.cos((2 * Math.PI * i) / n),
    y + r * Math.sin((2 * Math.PI * i) / n),
  ]);
}

/** Bulges to chords: half the sagitta of an arc is bulge × half chord. */
function flatten(corners: readonly Corner[], sagitta: number): SimplePolygon {
  return corners.flatMap((p, i) => {
    const q = corners[(i + 1) % corners.length] as Corner;
    return [[p.x, p.y] as [number, number], ...arcPoints(p, q, sagitta)];
  });
}

/** Points between p and q on the arc, by halving it: the middle lies bulge × half chord to the right of the chord. */
function arcPoints(p: Corner, q: Corner, sagitta: number): [number, number][] {
  const [dx, dy] = [q.x - p.x, q.y - p.y];
  if (Math.abs(p.bulge) * Math.hypot(dx, dy) < 2 * sagitta) return [];
  const middle = { x: (p.x + q.x) / 2 + (p.bulge * dy) / 2, y: (p.y + q.y) / 2 - (p.bulge * dx) / 2 };
  const half = Math.tan(Math.atan(p.bulge) / 2);
  return [
    ...arcPoints({ ...p, bulge: half }, { ...middle, bulge: 0 }, sagitta),
    [middle.x, middle.y],
    ...arcPoints({ ...middle, bulge: half }, q, sagitta),
  ];
}
