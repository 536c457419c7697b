/** An element of an SVG file: name, attributes, what stands inside it. */
export interface Element {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly children: readonly Element[];
  readonly text: string;
}

const TOKEN = /<\?[^>]*\?>|<\/([a-z]+)>|<([a-z]+)((?:\s+[a-zA-Z0-9-]+="[^"<]*")*)\s*(\/?)>|([^<]+)/gy;

/** The root element. @throws Error where the text is not well-formed */
export function readSvg(svg: string): Element {
  const open: { name: string; attributes: Record<string, string>; children: Element[]; text: string }[] = [
    { name: '', attributes: {}, children: [], text: '' },
  ];
  let end = 0;
  for (const m of svg.matchAll(TOKEN)) {
    end = m.index + m[0].length;
    const [, closed, name, attributes, empty, text] = m;
    const top = open.at(-1);
    if (top === undefined) break;
    if (text !== undefined) top.text += decoded(text);
    if (name !== undefined)
      open.push({ name, attributes: attributesOf(attributes ?? ''), children: [], text: '' });
    if (closed !== undefined || empty === '/') {
      const done = open.pop();
      if (done === undefined || (closed !== undefined && done.name !== closed))
        throw new Error(`</${closed}> closes nothing`);
      open.at(-1)?.children.push(done);
    }
  }
  const root = open[0]?.children[0];
  if (end !== svg.length || open.length !== 1 || root === undefined)
    throw new Error(`not well-formed at character ${end}: ${svg.slice(end, end + 40)}`);
  return root;
}

const ENTITIES: Readonly<Record<string, string>> = {
  '&amp;': '&',
  '&lt;': '<',
  '&gt;': '>',
  '&quot;': '"',
  '&#39;': "'",
};

function decoded(text: string): string {
  return text.replace(/&[^;]*;|&/g, (e) => {
    const sign = ENTITIES[e];
    if (sign === undefined) throw new Error(`entity ${e}`);
    return sign;
  });
}

function attributesOf(text: string): Record<string, string> {
  const pairs = [...text.matchAll(/([a-zA-Z0-9-]+)="([^"]*)"/g)];
  return Object.fromEntries(pairs.map(([, name, value]) => [name as string, decoded(value as string)]));
}

type Point = readonly [number, number];
const ARC_STEPS = 2000;

/** Points along path data with M, L, A and Z, arcs as many short chords; and whether it ends with Z. */
export function pathPoints(d: string): { readonly points: readonly Point[]; readonly closed: boolean } {
  const words = d.trim().split(/[\s,]+/);
  const points: Point[] = [];
  let closed = false;
  const number = () => {
    const word = words.shift() ?? '';
    if (!/^-?\d+(\.\d+)?$/.test(word)) throw new Error(`"${word}" is not a plain number`);
    return Number(word);
  };
  while (words.length > 0) {
    const command = words.shift();
    if (closed) throw new Error(`${command} after Z`);
    if (command === 'Z') closed = true;
    else if (command === 'M' || command === 'L') points.push([number(), number()]);
    else if (command === 'A') {
      const [rx, ry, , large, sweep] = [number(), number(), number(), number(), number()];
      if (rx !== ry) throw new Error(`radii ${rx} and ${ry}`);
      points.push(...arc(points.at(-1) ?? [0, 0], rx, large === 1, sweep === 1, [number(), number()]));
    } else throw new Error(`command ${command}`);
  }
  return { points, closed };
}

/**
 * Chords of a round SVG arc. Centre by SVG 1.1, appendix F.6.5 (from memory), for rx = ry: on the bisector of the
 * chord, to the side where `large` and `sweep` differ. y points down, so sweep 1 turns clockwise as seen.
 */
function arc(from: Point, r: number, large: boolean, sweep: boolean, to: Point): readonly Point[] {
  const [hx, hy] = [(from[0] - to[0]) / 2, (from[1] - to[1]) / 2];
  const half = Math.hypot(hx, hy);
  const up = Math.sqrt(Math.max(0, r * r - half * half)) / half;
  const side = large === sweep ? -1 : 1;
  const [cx, cy] = [(from[0] + to[0]) / 2 + side * up * hy, (from[1] + to[1]) / 2 - side * up * hx];
  const start = Math.atan2(from[1] - cy, from[0] - cx);
  const raw = Math.atan2(to[1] - cy, to[0] - cx) - start;
  const full = 2 * Math.PI;
  const turn = sweep ? ((raw % full) + full) % full : -(((-raw % full) + full) % full);
  if (turn !== 0 && large !== Math.abs(turn) > Math.PI)
    throw new Error('the large flag does not fit the arc');
  return Array.from({ length: ARC_STEPS }, (_, i): Point => {
    if (i === ARC_STEPS - 1) return to;
    const at = start + (turn * (i + 1)) / ARC_STEPS;
    return [cx + r * Math.cos(at), cy + r * Math.sin(at)];
  });
}

/** Signed area of a polygon in the page's own axes: y down, so counter-clockwise as seen is negative. */
export function polygonArea(points: readonly Point[]): number {
  return points.reduce((sum, [x, y], i) => {
    const [nx, ny] = points[(i + 1) % points.length] ?? [0, 0];
    return sum + (x * ny - nx * y) / 2;
  }, 0);
}

/** Length of a closed polygon. */
export function polygonLength(points: readonly Point[]): number {
  return points.reduce((sum, [x, y], i) => {
    const [nx, ny] = points[(i + 1) % points.length] ?? [0, 0];
    return sum + Math.hypot(nx - x, ny - y);
  }, 0);
}
