import type { Box } from '@tinwright/core';
import type { Strip } from '../page/flow.js';
import { fitted, letter, lines } from '../page/letter.js';
import { moved } from '../page/page.js';
import { PATTERN_SCALES } from '../page/paper.js';
import { type FigureSetting, keyed } from './labelled.js';
import { lyingFigure } from './lying-figure.js';
import { type RollStage, rollStages } from './roll-figure.js';
import type { Scene } from './scene.js';
import { sectionFigure } from './section-figure.js';
import { sectionFrame } from './section-frame.js';
import type { StepSetting } from './setting.js';

const HIGH = 15; // of a figure, in heights of text
const LEAST = 15; // of a figure's width, in heights of text
const BETWEEN = 3; // mm

/** A figure of a row: what is drawn in a box of the page. */
type Drawn = RollStage;

/**
 * The figures of a step beside each other, in as many rows as their letters ask for: the cross-section before and after
 * or the stages of a rolled edge, and how the part lies in the machine. Where its tools stand is in the words beside them.
 */
export function stepRow(scene: Scene, alt: string, width: number, own: StepSetting): Strip {
  const setting = keyed(own);
  const { face, height } = setting;
  const drawn = figuresOf(scene, setting);
  const most = Math.max(1, Math.floor((width + BETWEEN) / (LEAST * height + BETWEEN)));
  const each = Math.ceil(drawn.length / Math.ceil(drawn.length / most));
  const wide = (width - BETWEEN * (each - 1)) / each;
  const high = HIGH * height;
  const row = high + 2.4 * height;
  const items = drawn.flatMap(({ caption, draw }, i) => {
    const x = (i % each) * (wide + BETWEEN);
    const top = -row * Math.floor(i / each) - 1.9 * height;
    const box: Box = { min: [x, top - high], max: [x + wide, top] };
    const text = fitted(face, caption(box), wide, { height, bold: true });
    return [letter(face, text, [x, top + 0.5 * height], { height, bold: true }), ...draw(box)];
  });
  const told = keyStrip(setting, width);
  const foot = row * Math.ceil(drawn.length / each);
  if (told === null) return { height: foot, items, alt };
  return { height: foot + told.height, items: [...items, ...moved(told.items, [0, -foot])], alt };
}

/** What numbers in the figures stand for; null where there are none. */
function keyStrip({ face, height, key }: FigureSetting, width: number): Strip | null {
  const text = key.text();
  if (text === '') return null;
  const told = lines(face, text, width, height);
  return {
    height: 1.6 * height * told.length,
    items: told.map((t, i) => letter(face, t, [0, -height * (1.2 + 1.6 * i)], { height })),
  };
}

function figuresOf(scene: Scene, setting: FigureSetting): readonly Drawn[] {
  const { words } = setting;
  const scaleOf = (box: Box) =>
    PATTERN_SCALES.find((s) => s.ratio === sectionFrame(scene, box).ratio)?.text ?? '';
  const section = (when: 'before' | 'after'): Drawn => ({
    caption: (box) => `${words[when]} ${scaleOf(box)}`,
    draw: (box) => sectionFigure(scene, when, sectionFrame(scene, box), setting),
  });
  const sections =
    scene.step.action === 'roll' ? rollStages(scene, setting) : [section('before'), section('after')];
  return [...sections, { caption: () => words.lies, draw: (box) => lyingFigure(scene, box, setting) }];
}
