import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import type { Field as FieldOf, JobPath } from '../protocol.js';
import type { State } from './state.js';
import { sizeText } from './units.js';

/** What a job writes at a path. */
export const written = (data: unknown, path: JobPath): unknown =>
  path.reduce<unknown>((d, step) => (d as Record<string | number, unknown> | null | undefined)?.[step], data);

/** What was typed, as a job writes it: plain numbers as numbers, everything else as text. */
export function typed(text: string): number | string | undefined {
  const plain = text.trim();
  if (plain === '') return undefined;
  const number = /^[-+]?\d+,\d+$/.test(plain) ? plain.replace(',', '.') : plain;
  return /^[-+]?(\d+\.?\d*|\.\d+)$/.test(number) ? Number(number) : plain;
}

/** A value at its place, and how it stands with it. */
interface ControlProps {
  readonly state: State;
  readonly path: JobPath;
  readonly field: FieldOf;
  readonly id: string;
  readonly given: unknown;
  readonly locked: boolean;
  readonly wrong: boolean;
}

/** What changes a value: a box to type in, a list of words, or the way out of following another size. */
export function Control({ state, path, field, id, given, locked, wrong }: ControlProps): JSX.Element {
  const common = {
    id,
    disabled: locked,
    'aria-describedby': wrong ? `${id}-about ${id}-wrong` : `${id}-about`,
    'aria-invalid': wrong,
  };
  if (typeof given === 'object' && given !== null && 'of' in given)
    return (
      <span class="follows">
        <output id={id}>{followsText(given)}</output>
        <button type="button" disabled={locked} onClick={() => state.change(path, computed(state, path))}>
          {state.words.value.ownSize}
        </button>
      </span>
    );
  if (field.options.length === 0 || field.unit !== '')
    return <Box state={state} path={path} field={field} given={given} common={common} />;
  return (
    <select
      {...common}
      value={String(given ?? '')}
      onChange={(e) => state.change(path, e.currentTarget.value || undefined)}
    >
      {field.optional || given === undefined ? (
        <option value="">{String(field.fallback ?? '–')}</option>
      ) : null}
      {field.options.map((o) => (
        <option key={o} value={o}>
          {field.titles?.[o] ?? o}
        </option>
      ))}
    </select>
  );
}

interface BoxProps {
  readonly state: State;
  readonly path: JobPath;
  readonly field: FieldOf;
  readonly given: unknown;
  readonly common: object;
}

/** A box to type in; what is half typed stays as it is typed. */
function Box({ state, path, field, given, common }: BoxProps): JSX.Element {
  const [draft, setDraft] = useState<string | null>(null);
  return (
    <input
      {...common}
      type="text"
      inputMode="decimal"
      autocomplete="off"
      spellcheck={false}
      value={draft ?? String(given ?? '')}
      placeholder={field.fallback === undefined ? '' : String(field.fallback)}
      onInput={(e) => {
        setDraft(e.currentTarget.value);
        state.change(path, typed(e.currentTarget.value));
      }}
      onBlur={() => setDraft(null)}
      onKeyDown={(e) =>
        stepped(e, given, (v) => {
          setDraft(null);
          state.change(path, v);
        })
      }
    />
  );
}

/** Up and down change a number by one, with Shift by ten. */
function stepped(e: KeyboardEvent, given: unknown, take: (v: number) => void): void {
  const way = e.key === 'ArrowUp' ? 1 : e.key === 'ArrowDown' ? -1 : 0;
  if (way === 0 || typeof given !== 'number') return;
  e.preventDefault();
  take(Number((given + way * (e.shiftKey ? 10 : 1)).toFixed(4)));
}

function followsText(given: object): string {
  const { of, less, plus } = given as { of?: unknown; less?: unknown; plus?: unknown };
  return `${of}${less === undefined ? '' : ` − ${less}`}${plus === undefined ? '' : ` + ${plus}`}`;
}

/** The size that follows another, as it now is, in the job's unit. */
function computed(state: State, path: JobPath): number | undefined {
  const { parts, units = 'mm' } = state.job.value ?? {};
  const part = parts?.[Number(path[1])];
  const mm = written(part?.params, path.slice(2));
  return typeof mm === 'number' ? Number(sizeText(mm, units)) : undefined;
}
