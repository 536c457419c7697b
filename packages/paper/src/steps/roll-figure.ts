import type { Box, FlatBend, Point } from '@tinwright/core';
import type { Label } from '../figure/labels.js';
import { roomIn } from '../figure/room.js';
import type { Item } from '../page/page.js';
import { SCALES } from '../page/paper.js';
import { areaIn, frameAround, frameLine, lineIn, type SceneFrame } from './frame.js';
import { joined } from './joined.js';
import { type FigureSetting, labelled } from './labelled.js';
import { moves, type Scene } from './scene.js';

const ROUND = 32; // corners of a circle
const AROUND = 3; // mm of metal seen past what is rolled

/** A rolled edge in the frame of the scene: where the sheet begins to bend, and what is rolled of it. mm */
interface Roll {
  readonly tangent: number;
  readonly thickness: number;
  readonly radius: number;
  /** Straight metal over the first quarter turn. */
  readonly left: number;
}

/** One of the three pictures of an edge rolled by hand. */
export interface RollStage {
  readonly caption: (box: Box) => string;
  readonly draw: (box: Box) => readonly Item[];
}

/** An edge rolled by hand in three pictures: turned up square, round what it is rolled, closed. */
export function rollStages(scene: Scene, setting: FigureSetting): readonly RollStage[] {
  const { step, cuts } = scene;
  const { words } = setting;
  const told = words.rolled[step.hem === 'curl' ? 'curl' : 'wired'];
  const roll = rollOf(scene);
  const high = roll.radius + roll.thickness + roll.left;
  const middle: Point = [roll.tangent, high / 2];
  const wall = cuts.before.filter((c) => !moves(scene, c.kind, c.id)).map((c) => c.outline);
  const rolled = cuts.after.filter((c) => moves(scene, c.kind, c.id)).map((c) => c.outline);
  const core = circle([roll.tangent, roll.thickness + roll.radius], roll.radius);
  return told.stages.map((stage, i) => ({
    caption: (box) => `${stage}, ${scaleFor(roll, box).text}`,
    draw: (box) => {
      const frame = frameAround(box, middle, scaleFor(roll, box).ratio);
      const sheet = i < 2 ? [...wall, turnedUp(roll)] : [...wall, ...rolled];
      const round = i === 0 || (i === 2 && step.hem === 'curl') ? null : core;
      const drawn = [
        frameLine(frame),
        ...(round === null ? [] : coreItems(round, frame)),
        ...joined(sheet).flatMap((o): readonly Item[] => {
          const area = areaIn(frame, o);
          return area.length < 3 ? [] : [{ kind: 'fill', points: area }, ...lineIn(frame, o, true, 'narrow')];
        }),
      ];
      const room = roomIn(box);
      room.add(drawn);
      const labels: readonly Label[] =
        round === null
          ? []
          : [{ texts: [told.core], of: { kind: 'points', at: areaIn(frame, round), radius: 0.3 } }];
      return [...drawn, ...labelled(labels, room, setting)];
    },
  }));
}

function rollOf(scene: Scene): Roll {
  const { flat } = scene.part;
  const bend = flat.bends.find((b) => b.id === scene.step.bends[0]) as FlatBend;
  const xs = (side: boolean) =>
    scene.cuts.before
      .filter((c) => moves(scene, c.kind, c.id) === side)
      .flatMap((c) => c.outline.map((p) => p[0]));
  const [tangent, edge] = [Math.min(...xs(true)), Math.max(...xs(true))];
  const { thickness } = flat;
  const quarter = Math.min(1, 90 / bend.angle) * bend.zone;
  const left = Math.max(0, edge - tangent - quarter);
  return { tangent, thickness, radius: bend.insideRadius, left };
}

/** The largest scale at which what is rolled has room. */
function scaleFor({ radius, thickness, left }: Roll, { min, max }: Box): (typeof SCALES)[number] {
  const high = radius + thickness + left + 2 * AROUND;
  const wide = 6 * radius + 2 * AROUND;
  const fits = (ratio: number) => high * ratio <= max[1] - min[1] && wide * ratio <= max[0] - min[0];
  return SCALES.find((s) => fits(s.ratio)) ?? (SCALES.at(-1) as (typeof SCALES)[number]);
}

/** The edge square to its wall, the bend as wide as it will be. */
function turnedUp({ tangent, thickness: T, radius, left }: Roll): readonly Point[] {
  const middle: Point = [tangent, T + radius];
  const outer = quarter(middle, radius + T);
  const inner = quarter(middle, radius).toReversed();
  const top = T + radius + left;
  return [...outer, [tangent + radius + T, top], [tangent + radius, top], ...inner];
}

/** From straight down to the front. */
const quarter = (middle: Point, radius: number): readonly Point[] =>
  circle(middle, radius)
    .concat(circle(middle, radius).slice(0, 1))
    .slice((3 * ROUND) / 4);

const circle = ([x, z]: Point, radius: number): Point[] =>
  Array.from({ length: ROUND }, (_, i): Point => {
    const turn = (2 * Math.PI * i) / ROUND;
    return [x + radius * Math.cos(turn), z + radius * Math.sin(turn)];
  });

const coreItems = (round: readonly Point[], frame: SceneFrame): readonly Item[] => {
  const area = areaIn(frame, round);
  return area.length < 3
    ? []
    : [{ kind: 'fill', tone: 'grey', points: area }, ...lineIn(frame, round, true, 'narrow')];
};
