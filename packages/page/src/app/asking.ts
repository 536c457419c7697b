import { batch } from '@preact/signals';
import type { PageContent } from '../content.js';
import type { Engine } from './engine.js';
import { faultIn, type Held } from './held.js';

const MOST_MENDS = 3; // places a size that works is looked for at
const SETTLED = 250; // ms without a change before what takes long is begun

/** Asks for what follows from the job. */
export interface Asking {
  /** The job is another, or is to be told in another language. */
  readonly changed: () => void;
  /** What takes long, once nothing has changed for a moment. */
  readonly settle: () => void;
}

export function asking(engine: Engine, held: Held, { worksheet }: Pick<PageContent, 'worksheet'>): Asking {
  const failed = faultIn(held);
  let busy = false;
  let later: ReturnType<typeof setTimeout> | undefined;
  const askLong = (): Promise<void> =>
    held.problems.value.length > 0 ? askMends(engine, held) : askOrder(engine, held, worksheet);
  const settle = (): void => {
    clearTimeout(later);
    engine.dropLong();
    later = setTimeout(() => void askLong().catch(failed), SETTLED);
  };
  const changed = (): void => {
    held.mends.value = new Map();
    if (busy) return;
    busy = true;
    void askJob(engine, held)
      .finally(() => {
        busy = false;
      })
      .then(settle, failed);
  };
  return { changed, settle };
}

/** Ask for the job as it now is; changes that come meanwhile are asked for together, after it. */
async function askJob(engine: Engine, held: Held): Promise<void> {
  const { data, language, chosen, quick, job, problems } = held;
  let asked: unknown;
  let lang = '';
  while (asked !== data.value || lang !== language.value) {
    asked = data.value;
    lang = language.value;
    if (asked === null) break;
    const first = await engine.ask('quick', { data: asked, part: chosen.value });
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
}

/** Sizes that work for what cannot be. */
async function askMends(engine: Engine, { data, touched, problems, mends }: Held): Promise<void> {
  const now = data.value;
  // first where the change was made: most would rather go back a little than change something else
  const last = touched.value;
  const paths = [...(last === null ? [] : [last]), ...problems.value.map((p) => p.path)];
  for (const path of paths.slice(0, MOST_MENDS)) {
    const key = path.join('.');
    if (mends.value.has(key)) continue;
    mends.value = new Map([...mends.value, [key, 'looking']]);
    const found = await engine.askLong('mend', { data: now, path });
    if (now !== data.value) return;
    mends.value = new Map([...mends.value, [key, found]]);
  }
}

/** What the shop has to say of a job that can be, the order of bends of the part that is shown, and pages to print. */
async function askOrder(engine: Engine, held: Held, worksheet: boolean): Promise<void> {
  const { data, chosen, language, job, order, prints } = held;
  const [now, part, lang] = [data.value, chosen.value, language.value];
  const findings = await engine.askLong('findings', { data: now, language: lang });
  if (findings === null || now !== data.value || lang !== language.value) return;
  if (job.value !== null) job.value = { ...job.value, findings };
  const found = await engine.askLong('order', { data: now, part, language: lang });
  if (now !== data.value || part !== chosen.value || lang !== language.value) return;
  if (found !== null) order.value = found;
  const pages = await engine.askLong('prints', { data: now, language: lang, worksheet });
  if (pages !== null && now === data.value && lang === language.value) prints.value = pages;
}
