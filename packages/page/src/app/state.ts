import { batch, type ReadonlySignal } from '@preact/signals';
import type { PageContent } from '../content.js';
import type { JobPath } from '../protocol.js';
import { asking } from './asking.js';
import type { Engine } from './engine.js';
import { faultIn, type Held, heldFrom } from './held.js';
import { historyFrom } from './history.js';
import { readText, withChange } from './job-text.js';
import { lockBroken } from './locks.js';
import { staging } from './staging.js';

/** What the page holds, and what can be done with it. */
export interface State extends Held {
  readonly engine: Engine;
  readonly content: PageContent;
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

/** The page's state with its actions. */
export function pageState(engine: Engine, content: PageContent): State {
  const history = historyFrom(content.text);
  const held = heldFrom(content, history.text);
  const { text, touched, chosen, language, words, said } = held;
  const { changed, settle } = asking(engine, held, content);
  const made = readText(content.text).data;
  const moved = (move: () => boolean): void => {
    const did = batch(() => {
      if (!move()) return false;
      forgetOrder(held);
      held.prints.value = [];
      said.value = '';
      return true;
    });
    if (did) changed();
  };
  const write = (next: string, about: string | null = null): void => {
    if (next === text.value) return;
    const broken = content.locked.length === 0 ? null : lockBroken(content, made, readText(next).data);
    if (broken !== null) said.value = words.value.lockedPlace(broken);
    else
      moved(() => {
        history.add(next, about);
        return true;
      });
  };
  const catalogue = (): void => {
    const asked = language.value;
    void engine.ask('catalogue', { language: asked }).then((found) => {
      if (asked === language.value) held.catalogue.value = found;
    }, faultIn(held));
  };
  catalogue();
  changed();
  return {
    ...held,
    engine,
    content,
    canUndo: history.canUndo,
    canRedo: history.canRedo,
    write,
    change: (path, value) => {
      touched.value = path;
      write(withChange(text.value, path, value), path.join('.'));
    },
    undo: () => moved(() => history.step(-1)),
    redo: () => moved(() => history.step(1)),
    choose: (name) => {
      batch(() => {
        chosen.value = name;
        held.quick.value = null;
        held.lit.value = null;
        forgetOrder(held);
      });
      settle();
    },
    fold: staging(engine, held),
    speak: (to) => {
      language.value = to;
      held.order.value = null;
      held.prints.value = [];
      catalogue();
      changed();
    },
  };
}

function forgetOrder({ order, at, stage }: Held): void {
  order.value = null;
  at.value = null;
  stage.value = null;
}
