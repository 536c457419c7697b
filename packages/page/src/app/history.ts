import { computed, type ReadonlySignal, signal } from '@preact/signals';

const MOST_UNDO = 200;

/** Texts of the job one after the other, and what the last was about. */
interface Texts {
  readonly texts: readonly string[];
  readonly now: number;
  readonly about: string | null;
}

/** Texts of the job, to go back and forth between. */
export interface History {
  readonly text: ReadonlySignal<string>;
  readonly canUndo: ReadonlySignal<boolean>;
  readonly canRedo: ReadonlySignal<boolean>;
  /** A text behind the present one; `about` the same as last time, it takes its place: typing on in a field is one change. */
  readonly add: (text: string, about: string | null) => void;
  /** Back (-1) or forth (1); false where there is nothing. */
  readonly step: (by: -1 | 1) => boolean;
}

export function historyFrom(first: string): History {
  const held = signal<Texts>({ texts: [first], now: 0, about: null });
  return {
    text: computed(() => held.value.texts[held.value.now] ?? ''),
    canUndo: computed(() => held.value.now > 0),
    canRedo: computed(() => held.value.now < held.value.texts.length - 1),
    add: (text, about) => {
      const { texts, now, about: last } = held.value;
      const upTo = about !== null && about === last && now > 0 ? now : now + 1;
      const kept = texts.slice(Math.max(0, upTo + 1 - MOST_UNDO), upTo);
      held.value = { texts: [...kept, text], now: kept.length, about };
    },
    step: (by) => {
      const { texts, now } = held.value;
      if (texts[now + by] === undefined) return false;
      held.value = { texts, now: now + by, about: null };
      return true;
    },
  };
}
