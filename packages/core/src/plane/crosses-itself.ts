import { boxOf, isArc, type Loop, reach, type Segment, segments } from './loop.js';
import { meetings } from './meet.js';

/** Does a loop touch or cross itself anywhere but at its corners? */
export function crossesItself(loop: Loop): boolean {
  const sides = segments(loop).map((side, i) => ({
    side,
    i,
    box: boxOf(isArc(side) ? reach(side) : [side.from, side.to]),
  }));
  const byWest = sides.toSorted((a, b) => a.box.min[0] - b.box.min[0]);
  return byWest.some((a, k) => {
    for (let j = k + 1; j < byWest.length; j++) {
      const b = byWest[j] as (typeof byWest)[number];
      if (b.box.min[0] > a.box.max[0]) return false;
      if (b.box.min[1] > a.box.max[1] || a.box.min[1] > b.box.max[1]) continue;
      const apart = Math.abs(a.i - b.i);
      const neighbours = apart === 1 || apart === loop.length - 1;
      if (meet(a.side, b.side, neighbours ? 'neighbours' : 'apart', loop.length)) return true;
    }
    return false;
  });
}

function meet(a: Segment, b: Segment, as: 'neighbours' | 'apart', sides: number): boolean {
  if (as === 'neighbours' && !isArc(a) && !isArc(b)) return false; // they share a corner and no more
  if (as === 'apart' && !isArc(a) && !isArc(b)) return linesMeet(a, b);
  const shared = as === 'apart' ? 0 : sides === 2 ? 2 : 1;
  return meetings(a, b).length > shared;
}

function linesMeet(a: Segment, b: Segment): boolean {
  const side = (s: Segment, [x, y]: readonly [number, number]) =>
    Math.sign((s.to[0] - s.from[0]) * (y - s.from[1]) - (s.to[1] - s.from[1]) * (x - s.from[0]));
  return side(a, b.from) * side(a, b.to) <= 0 && side(b, a.from) * side(b, a.to) <= 0;
}
