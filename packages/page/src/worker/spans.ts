import type { FlatBend, FlatPanel, FlatPattern, Point } from '@tinwright/core';
import type { SpanView } from '../protocol.js';

const NEAR = 1e-6;

/**
 * Sizes of a panel across its bends: what is marked out between their lines, and the outside size it is the rest of. A
 * bend line lies half a deduction from the mould lines of both its panels. mm
 */
export function spansOf(flat: FlatPattern, { id, shape }: FlatPanel): readonly SpanView[] {
  const own = flat.bends.filter((b) => b.id === id || b.parent === id);
  const ways = own
    .map(across)
    .filter((n, i, all) => all.findIndex((o) => Math.abs(o[0] * n[0] + o[1] * n[1]) > 1 - NEAR) === i);
  return ways.map((way): SpanView => {
    const along = (p: Point) => p[0] * way[0] + p[1] * way[1];
    const [least, most] = [Math.min(...shape.map(along)), Math.max(...shape.map(along))];
    const at = (b: FlatBend) => along(b.line[0]);
    const crossed = own.filter((b) => Math.abs(at(b) - along(b.line[1])) < NEAR);
    const low = crossed.filter((b) => at(b) < (least + most) / 2).toSorted((a, b) => at(a) - at(b))[0];
    const high = crossed.filter((b) => at(b) > (least + most) / 2).toSorted((a, b) => at(b) - at(a))[0];
    const bends = [low, high].filter((b) => b !== undefined);
    const marked = (high === undefined ? most : at(high)) - (low === undefined ? least : at(low));
    const taken = bends.reduce((sum, b) => sum + b.terms.deduction / 2, 0);
    return { marked, taken, outside: marked + taken, bends: bends.map((b) => b.id) };
  });
}

/** Unit vector across a bend's line. */
function across({ line: [[ax, ay], [bx, by]] }: FlatBend): Point {
  const length = Math.hypot(bx - ax, by - ay);
  return [(by - ay) / length, (ax - bx) / length];
}
