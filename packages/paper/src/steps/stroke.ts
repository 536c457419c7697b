import type { Point } from '@tinwright/core';
import { radians } from '@tinwright/core/internal';
import { bentTo } from '@tinwright/shop/internal';
import type { Item } from '../page/page.js';
import { onPage, type SceneFrame } from './frame.js';
import type { Scene } from './scene.js';

const HEAD = 2.6; // mm, length of an arrowhead

/** How the free side or the tool moves: a curved arrow before the stroke. */
export function stroke(scene: Scene, when: 'before' | 'after', frame: SceneFrame): readonly Item[] {
  const { step, machine } = scene;
  if (when === 'after' || machine === null) return [];
  if (step.machine === 'press' || step.action === 'close') return pushed(scene, frame);
  const vise = step.machine === 'vise';
  const centre = onPage(frame, [0, 0]);
  const free = scene.cuts.before
    .filter((c) => scene.state.moving.has(c.id))
    .flatMap((c) => c.outline.map((p) => Math.hypot(p[0], p[1])));
  const room = vise
    ? Math.min(frame.box.max[1] - centre[1], centre[0] - frame.box.min[0])
    : Math.min(frame.box.max[0] - centre[0], frame.box.max[1] - centre[1]);
  const radius = Math.max(6, Math.min(0.75 * Math.max(...free) * frame.ratio, 0.85 * room));
  const start = vise ? 90 : 0;
  const to = bentTo(step);
  const first = start + Math.min(12, to / 4);
  const last = start + to - Math.min(6, to / 8);
  return arcArrow(centre, radius, radians(first), radians(last));
}

function arcArrow([cx, cy]: Point, radius: number, from: number, to: number): readonly Item[] {
  const count = 24;
  const at = (turn: number, r = radius): Point => [cx + r * Math.cos(turn), cy + r * Math.sin(turn)];
  const back = to - HEAD / radius;
  return [
    {
      kind: 'stroke',
      pen: 'wide',
      points: Array.from({ length: count + 1 }, (_, i) => at(from + ((back - from) * i) / count)),
    },
    { kind: 'fill', points: [at(to), at(back, radius + HEAD / 4), at(back, radius - HEAD / 4)] },
  ];
}

/** A straight arrow beside what comes down on the sheet, or at the jaw that closes. */
function pushed({ step, machine }: Scene, frame: SceneFrame): readonly Item[] {
  const tool = machine?.before.find((t) => ['punch', 'fingers', 'mallet', 'bar', 'jaw'].includes(t.name));
  if (tool === undefined) return [];
  if (step.machine === 'vise') {
    const right = Math.min(...tool.outline.map((p) => p[0]));
    const tip = onPage(frame, [right - 1, -20]);
    return straight([tip[0] - 9, tip[1]], tip);
  }
  const [xs, zs] = [tool.outline.map((p) => p[0]), tool.outline.map((p) => p[1])];
  const [x, z] = onPage(frame, [Math.max(...xs), Math.min(...zs)]);
  const right = x + 3;
  const top = Math.min(frame.box.max[1] - 1, z + (step.machine === 'press' ? 13 : 1));
  return straight([right, top], [right, top - 9]);
}

function straight(from: Point, to: Point): readonly Item[] {
  const l = Math.hypot(to[0] - from[0], to[1] - from[1]);
  const [u, v] = [(to[0] - from[0]) / l, (to[1] - from[1]) / l];
  const neck: Point = [to[0] - HEAD * u, to[1] - HEAD * v];
  const side = (by: number): Point => [neck[0] - (by * v * HEAD) / 4, neck[1] + (by * u * HEAD) / 4];
  return [
    { kind: 'stroke', pen: 'wide', points: [from, neck] },
    { kind: 'fill', points: [to, side(1), side(-1)] },
  ];
}
