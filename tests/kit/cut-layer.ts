// Reads the CUT layer of a DXF file back, with nothing from the writers.
import type { SimplePolygon } from 'manifold-3d';

type Tag = readonly [code: number, value: string];
const SAGITTA = 0.001; // mm

interface Corner {
  readonly x: number;
  readonly y: number;
  readonly bulge: number;
}

/** Closed loops on CUT as fine polygons, mm; R2000 and R12. */
export function cutLoops(dxf: string): SimplePolygon[] {
  const entities = entityList(dxf).filter(
    (e) => text(e, 8) === 'CUT' || ['VERTEX', 'SEQEND'].includes(e.kind),
  );
  const loops: SimplePolygon[] = [];
  entities.forEach((e, i) => {
    if (e.kind === 'CIRCLE') loops.push(circle(number(e, 10), number(e, 20), number(e, 40)));
    if (e.kind === 'LWPOLYLINE') loops.push(flatten(lightCorners(e.tags)));
    if (e.kind === 'POLYLINE') {
      const end = entities.findIndex((x, j) => j > i && x.kind === 'SEQEND');
      loops.push(
        flatten(
          entities
            .slice(i + 1, end)
            .map((v) => ({ x: number(v, 10), y: number(v, 20), bulge: number(v, 42) })),
        ),
      );
    }
  });
  if (loops.length === 0) throw new Error('no loops on CUT');
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

function circle(x: number, y: number, r: number): SimplePolygon {
  const n = Math.ceil(Math.PI / Math.acos(1 - SAGITTA / r));
  return Array.from({ length: n }, (_, i) => [
    x + r * Math.cos((2 * Math.PI * i) / n),
    y + r * Math.sin((2 * Math.PI * i) / n),
  ]);
}

/** Bulges to chords: half the sagitta of an arc is bulge × half chord. */
function flatten(corners: readonly Corner[]): SimplePolygon {
  return corners.flatMap((p, i) => {
    const q = corners[(i + 1) % corners.length] as Corner;
    return [[p.x, p.y] as [number, number], ...arcPoints(p, q)];
  });
}

/** Points between p and q on the arc, by halving it: the middle lies bulge × half chord to the right of the chord. */
function arcPoints(p: Corner, q: Corner): [number, number][] {
  const [dx, dy] = [q.x - p.x, q.y - p.y];
  if (Math.abs(p.bulge) * Math.hypot(dx, dy) < 2 * SAGITTA) return [];
  const middle = { x: (p.x + q.x) / 2 + (p.bulge * dy) / 2, y: (p.y + q.y) / 2 - (p.bulge * dx) / 2 };
  const half = Math.tan(Math.atan(p.bulge) / 2);
  return [
    ...arcPoints({ ...p, bulge: half }, { ...middle, bulge: 0 }),
    [middle.x, middle.y],
    ...arcPoints({ ...middle, bulge: half }, q),
  ];
}
