import type { Point } from '@tinwright/core';
import type { Surface } from '@tinwright/files/internal';
import { REAR_STOP_WIDTH } from '@tinwright/shop/internal';
import type { Pen } from '../page/page.js';
import { cutOff } from './cut-off.js';
import { mountedPieces } from './mounted.js';
import type { Scene } from './scene.js';
import { barSurface } from './tool-surface.js';
import type { Tool } from './tools/tool.js';

const PAST = 25; // mm tools are drawn past the ends of the bend
const HIGH = 15; // mm of tools are drawn

/** A surface with the pen its lines are drawn with. */
export interface DrawnSurface {
  readonly pen: Pen;
  readonly surface: Surface;
  /** Its lines are drawn, not only its faces in the way. */
  readonly kinds: readonly ('edge' | 'bend' | 'mark')[];
}

/** What holds the part or comes down on it: cut off a little over the sheet and past the ends of the line. */
export function toolsDrawn(scene: Scene): readonly DrawnSurface[] {
  const [from, to] = alongOf(scene);
  const pieces = mountedPieces(scene)?.flat() ?? [{ from, to }];
  const all = scene.machine?.before ?? [];
  const shown = all.filter((t) => ['fingers', 'punch', 'bar', 'jaw', 'block'].includes(t.name));
  const held = shown.flatMap((t): readonly DrawnSurface[] => {
    const section = low(t);
    const own = t.mounted ? pieces : [{ from, to }];
    return own.flatMap((p): readonly DrawnSurface[] => {
      const [a, b] = [Math.max(p.from, from), Math.min(p.to, to)];
      return b - a < 1 ? [] : [{ pen: 'narrow', surface: barSurface(section, [a, b]), kinds: ['edge'] }];
    });
  });
  const stop = stopDrawn(scene);
  return stop === null ? held : [...held, { pen: 'narrow', surface: stop.surface, kinds: ['edge'] }];
}

/** What an edge lies against behind the line, its front; null where nothing does. */
export function stopDrawn({
  state: { lines },
  step: { touches, machine },
  shop,
  machine: drawn,
}: Scene): { readonly name: Tool['name']; readonly surface: Surface } | null {
  const stop = drawn?.before.find((t) => t.name === 'gauge' || t.name === 'stop');
  if (stop === undefined || touches === null) return null;
  const half = (machine === 'press' ? (shop.press?.backGauge.finger.width ?? 0) : REAR_STOP_WIDTH) / 2;
  const middle = Math.min(...lines.map((l) => l[0])) + touches.at;
  return { name: stop.name, surface: barSurface(stop.outline, [middle - half, middle + half]) };
}

/** Where tools stand that are not in pieces: past both ends of the line, a block as long as it; pliers in its middle. */
function alongOf({ state: { lines }, step, shop }: Scene): readonly [number, number] {
  const [a, b] = [Math.min(...lines.map((l) => l[0])), Math.max(...lines.map((l) => l[1]))];
  // a block stands between walls at the ends of the line
  const past = step.clamp === 'former' ? 0 : PAST;
  const half = step.clamp === 'seamer' ? (shop.handSeamer?.width ?? 0) / 2 : (b - a) / 2 + past;
  return [(a + b) / 2 - half, (a + b) / 2 + half];
}

/** The lower part of a tool that stands on the sheet, the upper part of one that stands beside it. */
function low({ name, outline }: Tool): readonly Point[] {
  const zs = outline.map((p) => p[1]);
  const [least, most] = [Math.min(...zs), Math.max(...zs)];
  const above = name !== 'jaw' && (name !== 'bar' || most > 100 || least >= 0);
  const [from, to] = above ? [least, least + HIGH] : [Math.max(least, most - HIGH), most];
  return cutOff(cutOff(outline, [0, 1], from), [0, -1], -to);
}
