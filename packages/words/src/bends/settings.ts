import { plainNumber } from '@tinwright/core/internal';
import type { BendStep, BendStroke, BendWork, PressSetting } from '@tinwright/shop';
import { type ToolRow, toolRows } from './tool-rows.js';
import type { BendPrint, BendWords, SettingName, ToldSetting } from './words.js';

const TINY = 0.05; // mm that no rule shows

/** What is set for a stroke, in the order it is told. */
export function settingsOf(
  work: Pick<BendWork, keyof BendStroke | 'step'>,
  words: BendWords,
  print: BendPrint,
): readonly ToldSetting[] {
  const { action, hem, insideRadius, step } = work;
  const told = (name: SettingName, text: string | null): readonly ToldSetting[] =>
    text === null ? [] : [{ name, label: words.labels[name], text }];
  return [
    ...(step === null ? [] : stepSettings(step, words, print).flatMap(([name, text]) => told(name, text))),
    ...(action === 'close' ? told('hem', words.values.hem(hem, print.size(2 * insideRadius))) : []),
    ...(action === 'bend' ? told('radius', radiusText(work, words, print)) : []),
  ];
}

const NEAR = 0.1; // mm between the radius drawn and the one made that nobody feels; judgement

/** The radius drawn; where the machine makes another, that one too. */
function radiusText(
  { insideRadius, step }: Pick<BendWork, 'insideRadius' | 'step'>,
  { values }: BendWords,
  { fine }: BendPrint,
): string {
  const made = step?.madeRadius ?? insideRadius;
  return Math.abs(made - insideRadius) < NEAR
    ? fine(insideRadius)
    : values.radius(fine(made), fine(insideRadius));
}

type Row = readonly [SettingName, string | null];

function stepSettings(step: BendStep, words: BendWords, print: BendPrint): readonly Row[] {
  const { values: v } = words;
  const { action, machine, clamp, towards, handling } = step;
  const upright = machine === 'vise' ? 'upright' : 'lying';
  const onBrake = machine === 'brake' && action !== 'close';
  const side = v.towards(words.sides[towards.side], towards.roughly ? 'roughly' : 'exactly', handling.round);
  return [
    ['machine', step.machineName],
    [clamp === 'seamer' ? 'jaws' : 'held', v.held(step.gripped, step.beside)],
    ['face', v.face(step.faceUp, upright, handling)],
    // with pliers one stands wherever they reach
    ...(clamp === 'seamer' ? [] : ([[upright === 'upright' ? 'upright' : 'towards', side]] as const)),
    ...(onBrake ? brakeSettings(step, words, print) : []),
    ['block', clamp === 'former' ? v.block(print.size(step.length)) : null],
    ['bars', barred(step) ? v.bars(print.size(step.length)) : null],
    ['angle', angleText(step, words, print)],
    ...(machine === 'brake' ? ([['fingers', toolsText(step, words, print)]] as const) : []),
    ...(step.press === null || action === 'close' ? [] : pressSettings(step, step.press, words, print)),
  ];
}

/** Bars of a vise, or one at the edge of the bench, hold the sheet. */
const barred = ({ action, machine, clamp }: BendStep): boolean =>
  (action === 'bend' || action === 'fold') && (machine === 'vise' || clamp === 'bench');

function brakeSettings(
  { noseOffset, held, stopDistance, touches, setBack }: BendStep,
  { values: v }: BendWords,
  { size }: BendPrint,
): readonly Row[] {
  const off = noseOffset === null || Math.abs(noseOffset) < TINY ? null : size(Math.abs(noseOffset));
  return [
    ['sight', noseOffset === null ? null : v.sight(off, noseOffset > 0 ? 'towards' : 'away', held)],
    [
      'stop',
      stopDistance === null || touches === null
        ? null
        : v.stop(size(stopDistance), touches.panel, touches.by),
    ],
    ['setBack', setBack === null ? null : size(setBack)],
  ];
}

function pressSettings(
  step: BendStep,
  { punch, hollow, horns, die, opening, force, gauge, offMiddle }: PressSetting,
  words: BendWords,
  print: BendPrint,
): readonly Row[] {
  const { values: v } = words;
  const { touches } = step;
  return [
    ['punch', v.punch(punch, hollow, horns)],
    ['die', dieText(die, opening, print)],
    ['tools', toolsText(step, words, print)],
    ['force', v.force(plainNumber(force, 1))],
    ['middle', offText(offMiddle, words, print)],
    [
      'gauge',
      gauge === null || touches === null ? v.byLine : v.gauge(print.size(gauge), touches.panel, touches.by),
    ],
  ];
}

const OFF = 10; // mm that a bend may stand off the middle before it is told; judgement

const offText = (off: number, { values: v }: BendWords, { size }: BendPrint): string | null =>
  Math.abs(off) < OFF ? null : v.middle(size(Math.abs(off)), off > 0 ? 'right' : 'left');

/** A leaf stops where it is set to; under a punch only what is left without load can be measured. */
function angleText(
  { action, machine, angle, setAngle }: BendStep,
  { values: v }: BendWords,
  print: BendPrint,
) {
  if (action === 'close' || action === 'roll' || machine === 'hand' || machine === 'vise') return null;
  const set = print.angle(setAngle ?? angle);
  const left = action === 'fold' ? set : print.angle(angle);
  return machine === 'press' && set === left ? v.unloaded(left) : v.angle(set, left);
}

/** A die by its name and its opening; by that alone where it is named after it: `V 8` of 8 mm. */
function dieText(die: string, opening: number, { size }: BendPrint): string {
  const open = `V ${size(opening)}`;
  const bare = (text: string) => text.replaceAll(' ', '');
  const names = [`V${plainNumber(opening, 2)}`, open, open.replace(/ \w+$/, '')];
  return names.map(bare).includes(bare(die)) ? open : `${die}, ${open}`;
}

/** Pieces from the left, as the operator sees them, and where their row stands. */
function toolsText(step: BendStep, { values: v }: BendWords, { size, piece = size }: BendPrint): string {
  const { tools, press } = step;
  if (tools === null) return v.allTools;
  const last = tools.length - 1;
  const named = (pieces: readonly string[], group: number) =>
    press?.horns == null
      ? pieces
      : pieces.map((p, i) => {
          const end = (group === 0 && i === 0) || (group === last && i === pieces.length - 1);
          return end ? v.horn(p) : p;
        });
  const text = ({ pieces, gap, inside, from, onward }: ToolRow, group: number) =>
    v.tools(
      named(bareUnits(pieces.map(piece)), group),
      {
        from,
        onward,
        by: size(Math.abs(inside)),
        end: Math.abs(inside) < TINY ? 'at' : inside > 0 ? 'inside' : 'past',
      },
      pieces.length < 2 || gap < TINY ? null : size(gap),
    );
  return toolRows(step).map(text).join('; ');
}

/** `100 + 75 + 50 mm`: the unit once. */
const bareUnits = (sizes: readonly string[]): readonly string[] =>
  sizes.map((s, i) => (i < sizes.length - 1 ? s.replace(/ (mm|in)$/, '') : s));
