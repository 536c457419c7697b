import type { Say } from '@tinwright/core';
import { plainNumber } from '@tinwright/core/internal';
import type { BendStep, ToolGroup } from '@tinwright/shop';

const ACTIONS = {
  bend: 'bend',
  fold: 'fold the hem as far as the leaf goes',
  close: 'close the hem flat',
  roll: 'roll round the wire',
} as const;

const FACES = { marked: 'marked face up', unmarked: 'unmarked face up' } as const;

/** One operation of a bend order in a line of words. */
export function stepNote(step: BendStep, say: Say): string {
  return [
    actionWords(step),
    `${step.held} ${step.machine === 'vise' ? 'in the jaws' : 'held'}`,
    FACES[step.faceUp],
    ...setting(step, say),
  ].join('; ');
}

const BY_HAND = {
  bench: ' by hand over the edge of the bench, under a bar clamped down at the line',
  seamer: ' with the hand seamer',
  vise: ' by hand in a vise',
  hand: ' by hand',
  brake: '',
  press: '',
} as const;

function actionWords({ action, angle, machine, clamp }: BendStep): string {
  const by = BY_HAND[clamp ?? machine];
  return action === 'bend' ? `${ACTIONS.bend} ${degrees(angle)}${by}` : `${ACTIONS[action]}${by}`;
}

function setting(step: BendStep, say: Say): readonly string[] {
  const { machine, setAngle, tools, stopDistance, setBack, hooked, press } = step;
  return [
    ...(setAngle === null ? [] : [`set to ${degrees(setAngle)}`]),
    ...(tools === null ? [] : [`${machine === 'press' ? 'tools' : 'fingers'} ${toolWords(tools, say)}`]),
    ...(setBack === null || step.action === 'close' ? [] : [`set-back ${say.size(setBack)}`]),
    ...(stopDistance === null
      ? []
      : [`rear stop ${say.size(tenth(stopDistance))} behind the nose, ${touchWords(step)}`]),
    ...(hooked ? ['hooked in under the jaw'] : []),
    ...bareWords(step, say),
    ...(press === null
      ? []
      : [
          `punch ${press.punch}, die ${press.die}`,
          `${plainNumber(press.force, 1)} kN`,
          ...(press.gauge === null
            ? []
            : [`back gauge ${say.size(tenth(press.gauge))} from the punch line, ${touchWords(step)}`]),
        ]),
  ];
}

/** What lies against the stop. */
const touchWords = ({ touches }: BendStep): string =>
  touches === null ? '' : `at the ${touches.by} of ${touches.panel}`;

const BARE = 10; // mm; more than that between a finger and the end of the line comes out round

/** Ends of the line without a finger over them. */
function bareWords({ tools }: BendStep, say: Say): readonly string[] {
  const most = Math.max(0, ...(tools ?? []).flatMap((g) => g.bare));
  return most <= BARE ? [] : [`up to ${say.size(tenth(most))} without fingers at an end: dress it by hand`];
}

/** Pieces side by side, each group with where it starts along the line. */
function toolWords(groups: readonly ToolGroup[], say: Say): string {
  return groups.map((g) => `${piecesWords(g, say)} ${startWords(g, say)}`).join(', ');
}

/** `100 + 75 + 50 mm` */
function piecesWords({ pieces }: ToolGroup, say: Say): string {
  const sizes = pieces.map((p) => say.size(p));
  return sizes.map((s, i) => (i < sizes.length - 1 ? s.replace(/ (mm|in)$/, '') : s)).join(' + ');
}

function startWords({ from }: ToolGroup, say: Say): string {
  if (Math.abs(from) < 0.05) return 'from the left end';
  return from > 0
    ? `from ${say.size(tenth(from))} off the left end`
    : `standing out ${say.size(tenth(-from))} at the left end`;
}

const degrees = (angle: number) => `${plainNumber(angle, 1)}°`;

/** No finer than a stop is set. */
const tenth = (mm: number) => Math.round(mm * 10) / 10;
