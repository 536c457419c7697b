import { computed, type ReadonlySignal, type Signal, signal } from '@preact/signals';
import type { PageContent } from '../content.js';
import type {
  Answers,
  Catalogue,
  JobPath,
  JobView,
  OrderView,
  PartView,
  PrintView,
  ProblemView,
  Quick,
  SolidView,
} from '../protocol.js';
import { PAGE_ENGLISH } from '../words/english.js';
import { PAGE_GERMAN } from '../words/german.js';
import type { PageWords } from '../words/words.js';
import { readText } from './job-text.js';

/** What the page holds; everything it shows follows from it. */
export interface Held {
  readonly text: ReadonlySignal<string>;
  readonly data: ReadonlySignal<unknown>;
  readonly textProblem: ReadonlySignal<{ readonly line: number; readonly message: string } | null>;
  readonly catalogue: Signal<Catalogue | null>;
  /** The last job that could be. */
  readonly job: Signal<JobView | null>;
  readonly problems: Signal<readonly ProblemView[]>;
  /** Values that would do, by the path of the problem. */
  readonly mends: Signal<ReadonlyMap<string, Answers['mend'] | 'looking'>>;
  /** Where the last change was made. */
  readonly touched: Signal<JobPath | null>;
  readonly chosen: Signal<string>;
  readonly part: ReadonlySignal<PartView | null>;
  readonly quick: Signal<Quick | null>;
  readonly lit: Signal<string | null>;
  readonly order: Signal<OrderView | null>;
  /** Bends made of the order; null for the finished part. */
  readonly at: Signal<number | null>;
  readonly stage: Signal<SolidView | null>;
  /** Pages to print of the job as it now is; empty until they are written. */
  readonly prints: Signal<readonly PrintView[]>;
  /** What the sizes typed at the bench change. */
  readonly fitted: Signal<Answers['refit'] | null>;
  readonly language: Signal<'en' | 'de'>;
  readonly words: ReadonlySignal<PageWords>;
  readonly said: Signal<string>;
}

/** A page that was just opened. @param text the job as it now is written */
export function heldFrom({ language: first }: PageContent, text: ReadonlySignal<string>): Held {
  const read = computed(() => readText(text.value));
  const job = signal<JobView | null>(null);
  const chosen = signal('');
  const language = signal(first);
  return {
    text,
    data: computed(() => read.value.data),
    textProblem: computed(() => read.value.problem),
    catalogue: signal<Catalogue | null>(null),
    job,
    problems: signal<readonly ProblemView[]>([]),
    mends: signal<ReadonlyMap<string, Answers['mend'] | 'looking'>>(new Map()),
    touched: signal<JobPath | null>(null),
    chosen,
    part: computed(() => job.value?.parts.find((p) => p.name === chosen.value) ?? null),
    quick: signal<Quick | null>(null),
    lit: signal<string | null>(null),
    order: signal<OrderView | null>(null),
    at: signal<number | null>(null),
    stage: signal<SolidView | null>(null),
    prints: signal<readonly PrintView[]>([]),
    fitted: signal<Answers['refit'] | null>(null),
    language,
    words: computed(() => PAGE[language.value]),
    said: signal(''),
  };
}

/** Tell a fault of the program. */
export const faultIn =
  ({ said, words }: Held) =>
  (fault: unknown): void => {
    said.value = `${words.value.fault} ${fault instanceof Error ? fault.message : fault}`;
  };

const PAGE = { en: PAGE_ENGLISH, de: PAGE_GERMAN } as const;
