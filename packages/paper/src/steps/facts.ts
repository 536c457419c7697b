import type { FlatBend } from '@tinwright/core';
import { plainNumber } from '@tinwright/core/internal';
import type { RowName } from '@tinwright/words/internal';
import { mountedPieces } from './mounted.js';
import { parentOf, type Scene } from './scene.js';
import type { StepSetting } from './setting.js';

/** A row of the table of what to set. */
export interface Fact {
  readonly row: RowName;
  readonly text: string;
}

const TINY = 0.05; // mm that no rule shows

/** What is held, how it lies, and what is set, in words. */
export function facts(scene: Scene, { words, dims }: Pick<StepSetting, 'words' | 'dims'>): readonly Fact[] {
  const { step, previous, shop } = scene;
  const { cells } = words;
  const size = (mm: number) => `${dims.text(mm)} ${dims.unit}`;
  const fact = (row: RowName, text: string | null): readonly Fact[] => (text === null ? [] : [{ row, text }]);
  const name =
    { brake: shop.brake, press: shop.press, vise: shop.vise, hand: null }[step.machine]?.name ?? '';
  const flipped = previous !== null && previous.faceUp !== step.faceUp;
  const onBrake = step.machine === 'brake' && step.action !== 'close';
  const onPress = step.machine === 'press' && step.action !== 'close';
  return [
    ...fact('machine', cells.machine(step.machine, name)),
    ...fact('held', cells.held(step.held, step.heldSide === 'parent' ? step.bends : [parentOf(scene)])),
    ...fact('up', cells.face(step.faceUp, step.machine, flipped)),
    ...fact(step.machine === 'vise' ? 'upright' : 'towards', towards(scene, words)),
    ...(onBrake ? fact('sight', sightText(scene, words, size)) : []),
    ...(onBrake
      ? fact('stop', step.stopDistance === null ? cells.noStop : cells.stop(size(step.stopDistance)))
      : []),
    ...(onBrake && step.setBack !== null ? fact('setBack', cells.unit(size(step.setBack))) : []),
    ...(step.action === 'close' || step.machine === 'hand'
      ? []
      : fact('angle', angleText(scene, { words, dims }))),
    ...(step.machine === 'brake' ? fact('fingers', toolsText(scene, { words, dims })) : []),
    ...(onPress && step.press !== null
      ? [
          ...fact('punch', step.press.punch),
          ...fact('die', dieText(step.press, size)),
          ...fact('tools', toolsText(scene, { words, dims })),
          ...fact('force', cells.force(plainNumber(step.press.force, 1))),
          ...fact('gauge', step.press.gauge === null ? cells.noGauge : cells.gauge(size(step.press.gauge))),
        ]
      : []),
    ...(step.action === 'close' ? fact('gap', gapText(scene, words, size)) : []),
  ];
}

function bendOf({ part, step }: Scene): FlatBend {
  return part.flat.bends.find((b) => b.id === step.bends[0]) as FlatBend;
}

/** Which way the pattern lies, told by the side that turns. */
function towards(scene: Scene, words: StepSetting['words']): string {
  const { step } = scene;
  const eighth = Math.round(step.heading / 45);
  const near = words.compass[((eighth % 8) + 8) % 8] as string;
  const exact = Math.abs(step.heading - 45 * eighth) < 0.5;
  return words.cells.towards(exact ? near : words.about(near), turnedBy(scene));
}

/** Degrees the part is turned since the operation before, counter-clockwise seen from above; null for none or any other. */
function turnedBy({ step, previous }: Scene): number | null {
  if (previous?.faceUp !== step.faceUp || step.machine === 'vise' || previous.machine === 'vise') return null;
  const by = (previous.heading - step.heading) * (step.faceUp === 'marked' ? 1 : -1);
  const turn = ((Math.round(by) % 360) + 360) % 360;
  return turn === 90 ? 90 : turn === 270 ? -90 : turn === 180 ? 180 : null;
}

function angleText({ step }: Scene, { words, dims }: Pick<StepSetting, 'words' | 'dims'>): string {
  const set = dims.angle(step.setAngle ?? step.angle);
  const angle = step.action === 'fold' ? set : dims.angle(step.angle);
  // a leaf stops where it is set to; under a punch only what is left without load can be measured
  if (step.machine === 'press' && set === angle) return words.cells.unloaded(angle);
  return words.cells.angle(set, angle);
}

/** A die by its name and its opening; by that alone where it is named after it: `V 8` of 8 mm. */
function dieText(
  { die, opening }: NonNullable<Scene['step']['press']>,
  size: (mm: number) => string,
): string {
  const open = `V ${size(opening)}`;
  const bare = (text: string) => text.replaceAll(' ', '');
  const names = [
    `V${plainNumber(opening, 2)}`,
    `V${size(opening)}`,
    `V${size(opening).replace(/ \w+$/, '')}`,
  ];
  return names.map(bare).includes(bare(die)) ? open : `${die}, ${open}`;
}

function gapText(scene: Scene, words: StepSetting['words'], size: (mm: number) => string): string {
  const { hem, insideRadius } = bendOf(scene);
  return words.cells.gap(hem === 'closed' || insideRadius < TINY ? '' : size(2 * insideRadius));
}

/** How far the sight line lies from the tangent line on the held side, and to which side of it. */
function sightText(
  { step: { sightOffset, held } }: Scene,
  words: StepSetting['words'],
  size: (mm: number) => string,
): string | null {
  if (sightOffset === null) return null;
  if (Math.abs(sightOffset) < TINY) return words.cells.tangentIsSight(held);
  return words.cells.sight(size(Math.abs(sightOffset)), held, sightOffset > 0 ? 'bend' : 'held');
}

/** Pieces from the left, as the operator sees them, and where they start. */
function toolsText(scene: Scene, { words, dims }: Pick<StepSetting, 'words' | 'dims'>): string {
  const groups = mountedPieces(scene);
  if (groups === null) return words.cells.allTools;
  const left = Math.min(...scene.state.lines.map((l) => l[0]));
  return groups
    .map((pieces) => {
      const from = (pieces[0]?.from ?? 0) - left;
      const gap = pieces.length < 2 ? 0 : (pieces[1]?.from ?? 0) - (pieces[0]?.to ?? 0);
      return words.cells.tools(
        pieces.map((p) => dims.text(p.width)),
        `${dims.text(Math.abs(from))} ${dims.unit}`,
        from < 0 ? 'out' : 'in',
        gap < TINY ? '' : `${dims.text(gap)} ${dims.unit}`,
      );
    })
    .join('; ');
}
