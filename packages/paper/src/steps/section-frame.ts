import type { Box, Point } from '@tinwright/core';
import { PATTERN_SCALES } from '../page/paper.js';
import { frameAround, type SceneFrame } from './frame.js';
import type { Scene } from './scene.js';

const REACH = { brake: 80, press: 45, hand: 80, vise: 45 }; // mm from the bend line that a picture goes at most
const AROUND = 5; // mm
const LEAST = { behind: 30, under: 16, over: 24, before: 15 }; // mm seen of what is round the line
const BARS = 45; // mm to either side of a vise's bars

/** One frame for before and after: what lies near the line, at the largest of the recommended scales that fits. */
export function sectionFrame(scene: Scene, box: Box): SceneFrame {
  const [least, most] = scene.step.machine === 'vise' ? upright(scene) : lying(scene);
  const size = ([0, 1] as const).map((k) => box.max[k] - box.min[k]) as [number, number];
  const fits = (ratio: number) =>
    (most[0] - least[0]) * ratio <= size[0] && (most[1] - least[1]) * ratio <= size[1];
  const { ratio } = PATTERN_SCALES.find((s) => s.ratio <= 1 && fits(s.ratio)) ?? { ratio: 1 / 5 };
  return frameAround(box, [(least[0] + most[0]) / 2, (least[1] + most[1]) / 2], ratio);
}

/** Least and greatest corner of cut metal near the line. */
function near({ step, cuts }: Scene): readonly [Point, Point] {
  const reach = REACH[step.machine];
  const points = [...cuts.before, ...cuts.after].flatMap((c) => c.outline);
  const clamped = (k: 0 | 1) => points.map((p) => Math.max(-reach, Math.min(reach, p[k])));
  const [xs, zs] = [clamped(0), clamped(1)];
  return [
    [Math.min(...xs), Math.min(...zs)],
    [Math.max(...xs), Math.max(...zs)],
  ];
}

function upright(scene: Scene): readonly [Point, Point] {
  const [least, most] = near(scene);
  return [
    [Math.min(least[0], -BARS) - AROUND, Math.min(least[1], -LEAST.behind) - AROUND],
    [Math.max(most[0], BARS) + AROUND, Math.max(most[1], LEAST.over) + AROUND],
  ];
}

/** Tools are seen as far back as they clamp; what comes down on a hem is seen before it does. */
function lying(scene: Scene): readonly [Point, Point] {
  const [least, most] = near(scene);
  const tools = (scene.machine?.before ?? []).filter((t) =>
    ['fingers', 'punch', 'bar', 'mallet'].includes(t.name),
  );
  const heel = Math.min(-LEAST.behind, ...tools.flatMap((t) => t.outline.map((p) => p[0])));
  const under =
    scene.step.action === 'close' ? tools.map((t) => Math.min(...t.outline.map((p) => p[1]))) : [];
  return [
    [Math.min(Math.max(heel, least[0]) - AROUND, -LEAST.behind), Math.min(least[1] - AROUND, -LEAST.under)],
    [
      Math.max(most[0], LEAST.before) + AROUND,
      Math.max(most[1], ...under.map((z) => z + 2 * AROUND), LEAST.over) + AROUND,
    ],
  ];
}
