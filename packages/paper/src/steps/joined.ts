import type { Point } from '@tinwright/core';

const SAME = 1e-4; // mm; corners nearer than that are one

/** Outlines of pieces that meet along whole sides, all counter-clockwise: sides shared by two of them fall away. */
export function joined(pieces: readonly (readonly Point[])[]): readonly (readonly Point[])[] {
  const corners: Point[] = [];
  const cornerOf = ([x, z]: Point): number => {
    const known = corners.findIndex((c) => Math.abs(c[0] - x) < SAME && Math.abs(c[1] - z) < SAME);
    return known < 0 ? corners.push([x, z]) - 1 : known;
  };
  const next = new Map<number, number[]>();
  for (const piece of pieces) {
    const names = piece.map(cornerOf);
    names.forEach((from, i) => {
      const to = names[(i + 1) % names.length] as number;
      if (from === to || took(next.get(to), from)) return;
      next.set(from, [...(next.get(from) ?? []), to]);
    });
  }
  const found: Point[][] = [];
  for (const start of next.keys())
    for (let to = next.get(start)?.pop(); to !== undefined; to = next.get(start)?.pop()) {
      const loop = [corners[start] as Point];
      for (let at: number = to; at !== start; ) {
        loop.push(corners[at] as Point);
        const on = next.get(at)?.pop();
        if (on === undefined) return pieces; // they overlap: left as they are
        at = on;
      }
      found.push(loop);
    }
  return found;
}

/** Take a number out of a list; false when it is not there. */
function took(list: number[] | undefined, value: number): boolean {
  const at = list?.indexOf(value) ?? -1;
  if (at < 0) return false;
  list?.splice(at, 1);
  return true;
}
