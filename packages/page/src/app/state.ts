import { batch, computed, type ReadonlySignal, type Signal, signal } from '@preact/signals';
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
import type { Engine } from './engine.js';
import { readText, withChange } from './job-text.js';
import { lockBroken } from './locks.js';

/** What the page holds; everything it shows follows from it. */
export interface State {
  readonly engine: Engine;
  readonly content: PageContent;
  readonly text: ReadonlySignal<string>;
  readonly data: ReadonlySignal<unknown>;
  readonly textProblem: ReadonlySignal<{ readonly line: number; readonly message: string } | null>;
  readonly catalogue: Signal<Catalogue | null>;
  /** The last job that could be. */
  readonly job: Signal<JobView | null>;
  readonly problems: Signal<readonly ProblemView[]>;
  /** Values that would do, by the path of the problem. */
  readonly mends: Signal<ReadonlyMap<string, Answers['mend'] | 'looking'>>;
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
  readonly canUndo: ReadonlySignal<boolean>;
  readonly canRedo: ReadonlySignal<boolean>;
  /** Take a text as the job; `about` joins it to the last change about the same. */
  readonly write: (text: string, about?: string | null) => void;
  readonly change: (path: JobPath, value: unknown) => void;
  readonly undo: () => void;
  readonly redo: () => void;
  readonly choose: (part: string) => void;
  readonly fold: (at: number | null) => void;
  readonly speak: (language: 'en' | 'de') => void;
}

/** Texts of the job one after the other, and what the last was about. */
interface History {
  readonly texts: readonly string[];
  readonly now: number;
  readonly about: string | null;
}

const MOST_UNDO = 200;
const MOST_MENDS = 3; // places a size that works is looked for at
const SETTLED = 250; // ms without a change before what takes long is begun

/** The page's state with its actions. */
export function pageState(engine: Engine, content: PageContent): State {
  const history = signal<History>({ texts: [content.text], now: 0, about: null });
  const text = computed(() => history.value.texts[history.value.now] ?? '');
  const read = computed(() => readText(text.value));
  const data = computed(() => read.value.data);
  const catalogue = signal<Catalogue | null>(null);
  const job = signal<JobView | null>(null);
  const problems = signal<readonly ProblemView[]>([]);
  const mends = signal<ReadonlyMap<string, Answers['mend'] | 'looking'>>(new Map());
  const chosen = signal('');
  const part = computed(() => job.value?.parts.find((p) => p.name === chosen.value) ?? null);
  const quick = signal<Quick | null>(null);
  const lit = signal<string | null>(null);
  const order = signal<OrderView | null>(null);
  const at = signal<number | null>(null);
  const stage = signal<SolidView | null>(null);
  const prints = signal<readonly PrintView[]>([]);
  const fitted = signal<Answers['refit'] | null>(null);
  const language = signal(content.language);
  const said = signal('');
  const made = readText(content.text).data;
  let asking = false;
  let touched: JobPath | null = null;
  let later: ReturnType<typeof setTimeout> | undefined;
  const failed = (fault: unknown) => {
    said.value = `${PAGE[language.value].fault} ${fault instanceof Error ? fault.message : fault}`;
  };

  /** Ask for the job as it now is; changes that come meanwhile are asked for together, after it. */
  const ask = async (): Promise<void> => {
    asking = true;
    let asked: unknown;
    let lang = '';
    while (asked !== data.value || lang !== language.value) {
      asked = data.value;
      lang = language.value;
      if (asked === null) break;
      const name = chosen.value;
      const first = await engine.ask('quick', { data: asked, part: name });
      if (first !== null && asked === data.value) quick.value = first;
      const answer = await engine.ask('job', { data: asked, language: language.value });
      if (asked !== data.value) continue;
      if ('problems' in answer) problems.value = answer.problems;
      else
        batch(() => {
          job.value = answer;
          problems.value = [];
          quick.value = null;
          if (!answer.parts.some((p) => p.name === chosen.value)) chosen.value = answer.parts[0]?.name ?? '';
        });
    }
  };
  /** What takes long, once the job has stood for a moment. */
  const settle = (): void => {
    clearTimeout(later);
    engine.dropLong();
    later = setTimeout(() => void askLong().catch(failed), SETTLED);
  };
  const askLong = (): Promise<void> => (problems.value.length > 0 ? askMends() : askOrder());
  const askMends = async (): Promise<void> => {
    const now = data.value;
    // first where the change was made: most would rather go back a little than change something else
    const paths = [...(touched === null ? [] : [touched]), ...problems.value.map((p) => p.path)];
    for (const path of paths.slice(0, MOST_MENDS)) {
      const key = path.join('.');
      if (mends.value.has(key)) continue;
      mends.value = new Map([...mends.value, [key, 'looking']]);
      const found = await engine.askLong('mend', { data: now, path });
      if (now !== data.value) return;
      mends.value = new Map([...mends.value, [key, found]]);
    }
  };
  const askOrder = async (): Promise<void> => {
    const [now, part, lang] = [data.value, chosen.value, language.value];
    const findings = await engine.askLong('findings', { data: now, language: lang });
    if (findings === null || now !== data.value || lang !== language.value) return;
    if (job.value !== null) job.value = { ...job.value, findings };
    const found = await engine.askLong('order', { data: now, part, language: lang });
    if (now !== data.value || part !== chosen.value || lang !== language.value) return;
    if (found !== null) order.value = found;
    const { worksheet } = content;
    const pages = await engine.askLong('prints', { data: now, language: lang, worksheet });
    if (pages !== null && now === data.value && lang === language.value) prints.value = pages;
  };
  const changed = (): void => {
    mends.value = new Map();
    if (asking) return;
    void ask()
      .finally(() => {
        asking = false;
      })
      .then(settle, failed);
  };
  const goTo = (now: number): void => {
    if (now < 0 || now >= history.value.texts.length) return;
    batch(() => {
      history.value = {
        ...history.value,
        now,
        about: now === history.value.now ? history.value.about : null,
      };
      order.value = null;
      at.value = null;
      stage.value = null;
      prints.value = [];
      said.value = '';
    });
    changed();
  };
  const write = (next: string, about: string | null = null): void => {
    const { texts, now, about: last } = history.value;
    if (next === texts[now]) return;
    const broken = content.locked.length === 0 ? null : lockBroken(content, made, readText(next).data);
    if (broken !== null) {
      said.value = PAGE[language.value].lockedPlace(broken);
      return;
    }
    // typing on in one field is one change
    const upTo = about !== null && about === last && now > 0 ? now : now + 1;
    const kept = texts.slice(Math.max(0, upTo + 1 - MOST_UNDO), upTo);
    history.value = { texts: [...kept, next], now: kept.length, about };
    goTo(kept.length);
  };
  const choose = (name: string): void => {
    batch(() => {
      chosen.value = name;
      quick.value = null;
      order.value = null;
      at.value = null;
      stage.value = null;
      lit.value = null;
    });
    settle();
  };
  let staging = false;
  /** Stages one after the other; those passed over while one is made are never asked for. */
  const stageOn = async (): Promise<void> => {
    staging = true;
    let shown: number | null = null;
    while (at.value !== null && at.value !== shown && order.value !== null) {
      shown = at.value;
      const { steps } = order.value;
      const solid = await engine.ask('stage', { data: data.value, part: chosen.value, steps, at: shown });
      if (at.value !== null && order.value?.steps === steps) stage.value = solid;
    }
  };
  const fold = (to: number | null): void => {
    at.value = to;
    if (to === null) stage.value = null;
    else if (!staging)
      void stageOn()
        .catch(failed)
        .finally(() => {
          staging = false;
        });
  };
  const askCatalogue = (asked: 'en' | 'de'): void => {
    void engine.ask('catalogue', { language: asked }).then((found) => {
      if (asked === language.value) catalogue.value = found;
    }, failed);
  };
  askCatalogue(content.language);
  changed();
  return {
    engine,
    content,
    text,
    data,
    textProblem: computed(() => read.value.problem),
    catalogue,
    job,
    problems,
    mends,
    chosen,
    part,
    quick,
    lit,
    order,
    at,
    stage,
    prints,
    fitted,
    language,
    words: computed(() => PAGE[language.value]),
    said,
    canUndo: computed(() => history.value.now > 0),
    canRedo: computed(() => history.value.now < history.value.texts.length - 1),
    write,
    change: (path, value) => {
      touched = path;
      write(withChange(text.value, path, value), path.join('.'));
    },
    undo: () => goTo(history.value.now - 1),
    redo: () => goTo(history.value.now + 1),
    choose,
    fold,
    speak: (to) => {
      language.value = to;
      order.value = null;
      askCatalogue(to);
      prints.value = [];
      changed();
    },
  };
}

const PAGE = { en: PAGE_ENGLISH, de: PAGE_GERMAN } as const;
