import type { Point } from '@tinwright/core';
import { convexPieces } from '@tinwright/core/internal';
import { inLines, type Label } from '../figure/labels.js';
import { roomIn } from '../figure/room.js';
import type { Item } from '../page/page.js';
import { edgesBeyond } from './beyond.js';
import { areaIn, frameLine, lineIn, type SceneFrame } from './frame.js';
import { joined } from './joined.js';
import { type FigureSetting, labelled } from './labelled.js';
import { moves, type Scene } from './scene.js';
import type { Cut } from './section.js';
import { stroke } from './stroke.js';
import type { Tool } from './tools/tool.js';

/** The part and the machine cut across the bend line. */
export function sectionFigure(
  scene: Scene,
  when: 'before' | 'after',
  frame: SceneFrame,
  setting: FigureSetting,
): readonly Item[] {
  const tools = scene.machine?.[when] ?? [];
  const cuts = scene.cuts[when];
  const solid = [...tools.flatMap((t) => convexPieces(t.outline)), ...cuts.map((c) => c.outline)];
  const beyond = edgesBeyond(scene.state[when], scene.y, solid).flatMap((l) =>
    lineIn(frame, [l.from, l.to], false, 'narrow'),
  );
  const drawn = [
    frameLine(frame),
    ...beyond,
    ...tools.flatMap((t) => toolItems(t, frame)),
    ...sheet(scene, cuts, frame),
    ...stroke(scene, when, frame),
  ];
  const room = roomIn(frame.box);
  room.add(drawn);
  return [...drawn, ...labelled(labelsOf(scene, when, frame, tools, setting), room, setting)];
}

function toolItems({ outline }: Tool, frame: SceneFrame): readonly Item[] {
  const area = areaIn(frame, outline);
  if (area.length === 0) return [];
  return [{ kind: 'fill', tone: 'grey', points: area }, ...lineIn(frame, outline, true, 'wide')];
}

/** Cut sheet is black, thin where it is held or rests, thick where it turns. */
function sheet(scene: Scene, cuts: readonly Cut[], frame: SceneFrame): readonly Item[] {
  return [false, true].flatMap((thick) => {
    const own = cuts.filter((c) => moves(scene, c.kind, c.id) === thick);
    return joined(own.map((c) => c.outline)).flatMap((outline): readonly Item[] => {
      const area = areaIn(frame, outline);
      if (area.length < 3) return [];
      return [{ kind: 'fill', points: area }, ...lineIn(frame, outline, true, thick ? 'bold' : 'narrow')];
    });
  });
}

function labelsOf(
  scene: Scene,
  when: 'before' | 'after',
  frame: SceneFrame,
  tools: readonly Tool[],
  { words }: FigureSetting,
): readonly Label[] {
  const { step, drawn } = scene;
  const spots = (keep: (c: Cut) => boolean): readonly Point[] =>
    scene.cuts[when].filter(keep).flatMap((c) => {
      const area = areaIn(frame, c.outline);
      if (area.length === 0) return [];
      const [x, z] = area.reduce((s, p) => [s[0] + p[0] / area.length, s[1] + p[1] / area.length], [0, 0]);
      // its middle first, then towards its ends
      return [0, 0.45, 0.8].flatMap((k) => area.map((p): Point => [x + k * (p[0] - x), z + k * (p[1] - z)]));
    });
  const at = (text: string, points: readonly Point[], radius: number): readonly Label[] =>
    points.length === 0 ? [] : [{ texts: inLines(text), of: { kind: 'points', at: points, radius } }];
  const gripped = scene.cuts[when].find((c) => c.kind === 'panel' && drawn.gripped.includes(c.id))?.id;
  const held = spots((c) => c.kind === 'panel' && c.id === gripped);
  const turning = spots((c) => c.kind === 'panel' && scene.state.moving.has(c.id));
  const names = [
    ...new Set(
      scene.cuts[when].filter((c) => c.kind === 'panel' && scene.state.moving.has(c.id)).map((c) => c.id),
    ),
  ];
  return [
    ...at(words.held(gripped ?? drawn.held, step), held, 0.3),
    ...(when === 'after' || step.machine === 'hand'
      ? at(words.turns(names[0] ?? '', step), turning, 0.5)
      : []),
    ...tools.flatMap((t): readonly Label[] => {
      const corners = areaIn(frame, t.outline);
      const text = words.tools[t.name];
      return corners.length < 3 ? [] : [{ texts: [text], of: { kind: 'area', corners } }];
    }),
  ];
}
