import type { Box } from '@tinwright/core';
import { radians } from '@tinwright/core/internal';
import { dimension } from '../figure/dimension.js';
import type { Label } from '../figure/labels.js';
import { roomIn } from '../figure/room.js';
import { letter, lines } from '../page/letter.js';
import type { Item } from '../page/page.js';
import { areaIn, frameAround, frameLine, lineIn, onPage, type SceneFrame } from './frame.js';
import { joined } from './joined.js';
import { type FigureSetting, labelled } from './labelled.js';
import type { Scene } from './scene.js';

/** What is set at the line, enlarged, with the scale it is drawn at; null where there is nothing to set. */
export interface SettingDetail {
  readonly scale: string;
  readonly items: readonly Item[];
}

const UP = 3; // mm, so that the punch is seen over the sheet

/** Nose and hinge of a leaf brake, or the V of a die, before the stroke. */
export function detailFigure(scene: Scene, box: Box, setting: FigureSetting): SettingDetail | null {
  const { step } = scene;
  if (step.action === 'close' || (step.machine !== 'brake' && step.machine !== 'press')) return null;
  const opening = step.press?.opening ?? 0;
  const wide = step.machine === 'press' ? 2.2 * opening : 5 * (step.setBack ?? 1);
  const found = [
    { text: '5:1', ratio: 5 },
    { text: '2:1', ratio: 2 },
    { text: '1:1', ratio: 1 },
  ];
  const { text, ratio } =
    found.find((s) => wide * s.ratio <= box.max[0] - box.min[0]) ?? (found[2] as (typeof found)[number]);
  const middle = step.machine === 'press' ? 0 : (step.setBack ?? 0) / 2;
  const frame = frameAround(
    box,
    [middle, step.machine === 'press' ? UP : 0.5 * scene.part.flat.thickness],
    ratio,
  );
  const tools = scene.machine?.before ?? [];
  const sheet = joined(scene.cuts.before.map((c) => c.outline)).filter((o) => areaIn(frame, o).length > 2);
  const drawn: readonly Item[] = [
    frameLine(frame),
    ...tools.flatMap((t): readonly Item[] => {
      const area = areaIn(frame, t.outline);
      return area.length < 3
        ? []
        : [{ kind: 'fill', tone: 'grey', points: area }, ...lineIn(frame, t.outline, true, 'wide')];
    }),
    ...sheet.flatMap((outline): readonly Item[] => [
      { kind: 'fill', tone: 'white', points: areaIn(frame, outline) },
      ...lineIn(frame, outline, true, 'wide'),
    ]),
  ];
  const sized =
    step.machine === 'press' ? vOpening(opening, frame, scene, setting) : setBack(frame, scene, setting);
  const room = roomIn(box);
  room.add([...drawn, ...sized]);
  const labels = labelled(labelsOf(scene, frame, setting), room, setting);
  return { scale: text, items: [...drawn, ...sized, ...labels] };
}

function setBack(
  frame: SceneFrame,
  { step, part }: Scene,
  { words, dims, face, height }: FigureSetting,
): readonly Item[] {
  const [x0] = onPage(frame, [-(step.setBack ?? 0), 0]);
  const [x1, z] = onPage(frame, [0, 0]);
  const up = part.flat.thickness * frame.ratio;
  const value = step.setBack ?? 0;
  const text = words.setBackHere(`${dims.text(value)} ${dims.unit}`);
  // the edge of the nose goes on up to the words that tell what lies under it
  const over = z + up + 9 + 3 * height;
  return [
    ...dimension(
      { axis: 0, from: x0, to: x1, edge: z + up, off: 9, text, value, beside: 'after' },
      face,
      height,
    ),
    {
      kind: 'stroke',
      pen: 'narrow',
      points: [
        [x0, z + up + 9],
        [x0, over + height],
      ],
    },
    // from the line to its right, as many lines as that takes
    ...lines(face, words.sightHere, frame.box.max[0] - x0 - 1.6, height)
      .toReversed()
      .map((t, i) => letter(face, t, [x0 + 0.8, over + 1.5 * height * i], { height })),
  ];
}

function vOpening(
  opening: number,
  frame: SceneFrame,
  { part, shop, step }: Scene,
  { words, dims, face, height }: FigureSetting,
): readonly Item[] {
  const die = shop.press?.dies.find((d) => d.name === step.press?.die);
  const deep = (frame.ratio * opening) / 2 / Math.tan(radians(die?.angle ?? 90) / 2) + 4;
  const [x0] = onPage(frame, [-opening / 2, 0]);
  const [x1, z] = onPage(frame, [opening / 2, -part.flat.thickness]);
  const text = words.openingHere(`${dims.text(opening)} ${dims.unit}`);
  // a deep V goes on past the edge of the picture: its size stands over the sheet
  const off = z - deep > frame.box.min[1] ? -deep : part.flat.thickness * frame.ratio + 3 * height;
  return dimension({ axis: 0, from: x0, to: x1, edge: z, off, text, value: opening }, face, height);
}

function labelsOf({ machine }: Scene, frame: SceneFrame, { words }: FigureSetting): readonly Label[] {
  const tools = (machine?.before ?? []).flatMap((t): readonly Label[] => {
    const corners = areaIn(frame, t.outline);
    return corners.length < 3 ? [] : [{ texts: [words.tools[t.name]], of: { kind: 'area', corners } }];
  });
  return tools;
}
