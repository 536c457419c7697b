import type { Box, Point } from '@tinwright/core';
import type { BendStep } from '@tinwright/shop';
import { type ToldBend, tellStep } from '@tinwright/words';
import { bendPrint } from '../bend-print.js';
import { letter, lines } from '../page/letter.js';
import { type Block, type Item, moved, type Page } from '../page/page.js';
import { PATTERN_SCALES } from '../page/paper.js';
import { notesFlow, tableFlow } from '../page/table.js';
import { detailFigure } from './detail-figure.js';
import { type FigureSetting, keyed } from './labelled.js';
import { lyingFigure } from './lying-figure.js';
import { rollStages } from './roll-figure.js';
import type { Scene } from './scene.js';
import { sectionFigure } from './section-figure.js';
import { sectionFrame } from './section-frame.js';
import type { StepSetting } from './setting.js';
import { toolRowFigure } from './tool-row-figure.js';

/** Two of them fit on a sheet of A4 or letter paper. mm */
const SIZE = { width: 190, height: 129 } as const;
const MARGIN = 3;
const GAP = 3;
const TITLE = 4; // mm, capitals
const TOP = 51; // mm, height of the pictures of the cross-section
const TABLE = 80; // mm wide
const HEIGHTS = [2.3, 2.1, 1.9, 1.7];

/** The page of one operation. */
export function stepPage(scene: Scene, own: StepSetting): Page {
  const setting = keyed(own);
  const { words, dims, face, height } = setting;
  const { step } = scene;
  const [left, right] = [MARGIN, SIZE.width - MARGIN];
  const title = words.title(scene.part.name, scene.index + 1, scene.of);
  const told = tellStep(step, words.language, bendPrint(scene.part, dims, scene.shop.units));
  const what = told.action;
  const base = SIZE.height - MARGIN - TITLE;
  const small = letter(face, title, [right, base], { height: height, align: 'end' });
  const big = titleHeight(what, right - left - small.width - 6, setting);
  const said = lines(face, [...told.how, ...told.after].join(' '), right - left, height + 0.2);
  const head: readonly Item[] = [
    letter(face, what[0]?.toUpperCase() + what.slice(1), [left, base], { height: big, bold: true }),
    small,
    ...said.map((t, i) => letter(face, t, [left, base - 5 - 4 * i], { height: height + 0.2 })),
  ];
  const top = base - 3.5 - 4 * said.length;
  const bottom = top - TOP;
  const low: Box = { min: [left, MARGIN], max: [right - TABLE - GAP, bottom - 5] };
  const row = toolRow(scene, low, setting);
  const pictures = sections(scene, { min: [left, bottom], max: [right, top] }, setting);
  const lie = (min: number): Box => ({ ...low, min: [left, min] });
  // the key stands between how it lies and its tools, and is known when all is drawn
  const free = lying(scene, lie(row.top), setting);
  const key = keyAt([left, row.top], low.max[0] - left, setting);
  const lies = key.items.length === 0 ? free : lying(scene, lie(key.top), setting);
  return {
    title: `${title}: ${what}`,
    width: SIZE.width,
    height: SIZE.height,
    blocks: [
      { alt: null, items: head },
      { alt: words.alt(title), items: [...pictures, ...lies, ...key.items, ...row.items] },
      {
        alt: null,
        items: table(told, step, { min: [right - TABLE, MARGIN], max: [right, bottom - 1.5] }, setting),
      },
    ] satisfies readonly Block[],
  };
}

function titleHeight(text: string, width: number, { face }: StepSetting): number {
  return Math.min(TITLE, width / face.width(text, 'bold'));
}

/** Before, after, and enlarged what is set at the line. */
function sections(scene: Scene, box: Box, setting: FigureSetting): readonly Item[] {
  const { words, face, height } = setting;
  const boxes = (count: number): readonly Box[] => {
    const width = (box.max[0] - box.min[0] - (count - 1) * GAP) / count;
    return Array.from({ length: count }, (_, i): Box => {
      const x = box.min[0] + i * (width + GAP);
      return { min: [x, box.min[1]], max: [x + width, box.max[1] - 2 * height] };
    });
  };
  const third = boxes(3);
  const caption = (text: string, b: Box) =>
    letter(face, text, [b.min[0], b.max[1] + 0.6 * height], { height, bold: true });
  if (scene.step.action === 'roll')
    return rollStages(scene, setting).flatMap((stage, i) => {
      const b = third[i] as Box;
      return [caption(stage.caption(b), b), ...stage.draw(b)];
    });
  const detail = detailFigure(scene, third[2] as Box, setting);
  const [first, second] = (detail === null ? boxes(2) : third) as [Box, Box];
  const frame = sectionFrame(scene, first);
  const scale = PATTERN_SCALES.find((s) => s.ratio === frame.ratio)?.text ?? '';
  return [
    caption(words.before + words.seen(scale), first),
    ...sectionFigure(scene, 'before', frame, setting),
    caption(words.after + words.seen(scale), second),
    ...sectionFigure(scene, 'after', { ...frame, box: second }, setting),
    ...(detail === null ? [] : [caption(words.detail(detail.scale), third[2] as Box), ...detail.items]),
  ];
}

/** Where tools stand along the line, at the foot of a box, and how far up it reaches. */
function toolRow(scene: Scene, { min, max }: Box, setting: StepSetting) {
  const { face } = setting;
  const height = HEIGHTS[2] as number;
  const row = toolRowFigure(scene, max[0] - min[0], { ...setting, height });
  if (row === null) return { top: min[1], items: [] };
  const top = min[1] + row.height;
  const caption = letter(face, row.caption, [min[0], top + 0.6 * height], { height, bold: true });
  return { top: top + 2.2 * height, items: [caption, ...moved(row.items, [min[0], top])] };
}

/** What numbers in the pictures stand for, its lowest line over a point, and how far up it reaches. */
function keyAt([x, y]: Point, width: number, { face, height, key }: FigureSetting) {
  const text = key.text();
  const told = text === '' ? [] : lines(face, text, width, height);
  const items = told
    .toReversed()
    .map((t, i) => letter(face, t, [x, y + height * (0.5 + 1.6 * i)], { height }));
  return { top: y + (told.length === 0 ? 0 : height * (1.6 * told.length + 0.5)), items };
}

function lying(scene: Scene, box: Box, setting: FigureSetting): readonly Item[] {
  const { words, face, height } = setting;
  return [
    letter(face, words.lying, [box.min[0], box.max[1] + 0.6 * height], { height, bold: true }),
    ...lyingFigure(scene, box, setting),
  ];
}

/** What to set, and the caution, as large as there is room for. */
function table({ settings }: ToldBend, step: BendStep, box: Box, setting: StepSetting): readonly Item[] {
  const { words } = setting;
  const rows = settings.map(({ label, text }) => [label, text]);
  const width = box.max[0] - box.min[0];
  const room = box.max[1] - box.min[1];
  for (const height of HEIGHTS) {
    const set = { face: setting.face, height };
    const columns = [{ title: '' }, { title: '', grows: true }];
    const own = tableFlow({ heading: '', columns, rows }, set)(width);
    const note = notesFlow(null, [words.caution[step.machine]], set)(width);
    const strips = [...own.rows, { height: height / 2, items: [] }, ...note.rows];
    const needed = strips.reduce((sum, s) => sum + s.height, 0);
    if (needed > room && height !== HEIGHTS.at(-1)) continue;
    let y = box.max[1];
    return strips.flatMap((s) => {
      const items = moved(s.items, [box.min[0], y]);
      y -= s.height;
      return items;
    });
  }
  return [];
}
