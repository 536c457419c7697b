// Reads the CUT group of an SVG file back, with nothing from the writers.

/** What is cut, and a point of it that lies off the picture, if any. */
export interface SvgCuts {
  readonly count: number;
  readonly outside: string | null;
}

const NEAR = 0.001; // mm

export function svgCuts(svg: string): SvgCuts {
  const [width = 0, height = 0] = (/viewBox="0 0 ([\d.]+) ([\d.]+)"/.exec(svg)?.slice(1) ?? []).map(Number);
  const group = /<g id="CUT"[\s\S]*?<\/g>/.exec(svg)?.[0] ?? '';
  const paths = [...group.matchAll(/ d="([^"]*)"/g)].map((m) => m[1] ?? '');
  const circles = [...group.matchAll(/<circle cx="([-\d.]+)" cy="([-\d.]+)" r="([\d.]+)"/g)];
  const ends = paths.flatMap((d) =>
    d.split(/(?=[MLA])/).map((step) => step.replace('Z', '').trim().split(/\s+/).slice(-2).map(Number)),
  );
  const round = circles.flatMap(([, x, y, r]) => [
    [Number(x) - Number(r), Number(y) - Number(r)],
    [Number(x) + Number(r), Number(y) + Number(r)],
  ]);
  const off = [...ends, ...round].find(
    ([x = Number.NaN, y = Number.NaN]) =>
      !(x >= -NEAR && y >= -NEAR && x <= width + NEAR && y <= height + NEAR),
  );
  const open = paths.find((d) => !d.trim().endsWith('Z'));
  return {
    count: paths.join(' ').split('Z').length - 1 + circles.length,
    outside: open === undefined ? (off?.join(', ') ?? null) : `an open path, ${open.slice(0, 40)}`,
  };
}
