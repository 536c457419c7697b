import type { JSX } from 'preact';
import { useId, useState } from 'preact/hooks';
import type { Field as FieldOf, Path } from '../protocol.js';
import { isLocked } from './locks.js';
import type { State } from './state.js';
import { sizeText } from './units.js';

/** What a job writes at a path. */
export const written = (data: unknown, path: Path): unknown =>
  path.reduce<unknown>((d, step) => (d as Record<string | number, unknown> | null | undefined)?.[step], data);

/** What was typed, as a job writes it: plain numbers as numbers, everything else as text. */
export function typed(text: string): number | string | undefined {
  const plain = text.trim();
  if (plain === '') return undefined;
  const number = /^[-+]?\d+,\d+$/.test(plain) ? plain.replace(',', '.') : plain;
  return /^[-+]?(\d+\.?\d*|\.\d+)$/.test(number) ? Number(number) : plain;
}

/** A value with its label, its range, what is wrong with it and what would do. */
export function Value({ state, path, field }: { state: State; path: Path; field: FieldOf }): JSX.Element {
  if (field.list) return <List state={state} path={path} field={field} />;
  if (field.inner.length > 0)
    return (
      <fieldset class="group">
        <legend title={field.words}>{field.name}</legend>
        {field.inner.map((f) => (
          <Value key={f.name} state={state} path={[...path, f.name]} field={f} />
        ))}
      </fieldset>
    );
  return <Single state={state} path={path} field={field} label={field.name} />;
}

function List({ state, path, field }: { state: State; path: Path; field: FieldOf }): JSX.Element | null {
  const given = written(state.data.value, path);
  const entries = Array.isArray(given) ? given : [];
  const [entry] = field.inner;
  const words = state.words.value;
  if (entry === undefined) return null;
  const last = entries.at(-1);
  return (
    <fieldset class="group">
      <legend title={field.words}>{field.name}</legend>
      {entries.map((_, i) => (
        // entries have nothing else to be told apart by
        <Single key={i} state={state} path={[...path, i]} field={entry} label={`${field.name} ${i + 1}`} />
      ))}
      <div class="row">
        <button
          type="button"
          aria-label={`${words.add}: ${field.name}`}
          onClick={() => state.change(path, [...entries, last ?? entry.options[0] ?? 10])}
        >
          +
        </button>
        <button
          type="button"
          aria-label={`${words.remove}: ${field.name}`}
          disabled={entries.length === 0}
          onClick={() => state.change(path, entries.length > 1 ? entries.slice(0, -1) : undefined)}
        >
          −
        </button>
      </div>
    </fieldset>
  );
}

interface SingleProps {
  readonly state: State;
  readonly path: Path;
  readonly field: FieldOf;
  readonly label: string;
}

/** One value with its label, what it may be, and what is wrong with it. */
export function Single(props: SingleProps): JSX.Element {
  const { state, path, field, label } = props;
  const id = useId();
  const data = state.data.value;
  const words = state.words.value;
  const key = path.join('.');
  const problems = state.problems.value.filter((p) => p.path.join('.') === key);
  const locked = isLocked(state.content, data, path);
  return (
    <div class="field">
      <label for={id} title={field.words}>
        {label}
        {field.unit === '' ? null : <span class="unit"> {field.unit === 'deg' ? '°' : unitOf(data)}</span>}
      </label>
      <Control {...props} id={id} locked={locked} wrong={problems.length > 0} />
      <span id={`${id}-about`} class="about">
        {locked ? words.locked : rangeText(state, field)}
      </span>
      {problems.length === 0 && !state.mends.value.has(key) ? null : (
        <span id={`${id}-wrong`} class="wrong" role="alert">
          {problems.map((p) => (
            <span key={p.message}>
              {p.message}. {p.fix}{' '}
            </span>
          ))}
          <Mend state={state} at={key} />
        </span>
      )}
    </div>
  );
}

interface ControlProps extends SingleProps {
  readonly id: string;
  readonly locked: boolean;
  readonly wrong: boolean;
}

/** What changes a value: a box to type in, a list of words, or the way out of following another size. */
function Control({ state, path, field, id, locked, wrong }: ControlProps): JSX.Element {
  const given = written(state.data.value, path);
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
          {o}
        </option>
      ))}
    </select>
  );
}

interface BoxProps {
  readonly state: State;
  readonly path: Path;
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

/** The value that would do, to be taken with a click. */
export function Mend({ state, at }: { state: State; at: string }): JSX.Element | null {
  const found = state.mends.value.get(at);
  const words = state.words.value;
  if (found === 'looking') return <em>{words.looking}</em>;
  if (found === undefined || found === null) return null;
  const { path, value } = found;
  return (
    <button type="button" class="take" onClick={() => state.change(path, value)}>
      {words.take(String(value))}
    </button>
  );
}

/** Up and down change a number by one, with Shift by ten. */
function stepped(e: KeyboardEvent, given: unknown, take: (v: number) => void): void {
  const way = e.key === 'ArrowUp' ? 1 : e.key === 'ArrowDown' ? -1 : 0;
  if (way === 0 || typeof given !== 'number') return;
  e.preventDefault();
  take(Number((given + way * (e.shiftKey ? 10 : 1)).toFixed(4)));
}

const unitOf = (data: unknown): 'mm' | 'in' =>
  (data as { units?: unknown } | null)?.units === 'in' ? 'in' : 'mm';

function followsText(given: object): string {
  const { of, less, plus } = given as { of?: unknown; less?: unknown; plus?: unknown };
  return `${of}${less === undefined ? '' : ` − ${less}`}${plus === undefined ? '' : ` + ${plus}`}`;
}

/** The size that follows another, as it now is, in the job's unit. */
function computed(state: State, path: Path): number | undefined {
  const { parts, units = 'mm' } = state.job.value ?? {};
  const part = parts?.[Number(path[1])];
  const mm = written(part?.params, path.slice(2));
  return typeof mm === 'number' ? Number(sizeText(mm, units)) : undefined;
}

function rangeText(state: State, { unit, least, most, optional, fallback, options }: FieldOf): string {
  const words = state.words.value;
  const units = unitOf(state.data.value);
  const said = (v: number) => (unit === 'mm' ? sizeText(v, units) : String(v));
  const known =
    least !== null && most !== null
      ? words.range(said(least), said(most))
      : most !== null
        ? words.upTo(said(most))
        : least !== null
          ? words.from(said(least))
          : '';
  const other = unit === 'mm' && options.length > 0 ? options.join(', ') : '';
  const out =
    optional && fallback !== undefined && typeof fallback !== 'object' ? words.leftOut(String(fallback)) : '';
  return [other, known, out].filter((t) => t !== '').join('; ');
}
