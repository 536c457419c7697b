import type { JSX } from 'preact';
import { useId } from 'preact/hooks';
import type { Field as FieldOf, JobPath } from '../protocol.js';
import { Control } from './control.js';
import { findingId } from './findings.js';
import { Mend } from './mend.js';
import { type FieldSeen, useSeen } from './seen.js';
import type { State } from './state.js';
import { lengths, numberIn, sentence } from './told.js';
import { sizeText } from './units.js';

/** A value with its label, its range, what is wrong with it and what would do. */
export function Value({ state, path, field }: { state: State; path: JobPath; field: FieldOf }): JSX.Element {
  if (field.list) return <List state={state} path={path} field={field} />;
  if (field.inner.length > 0)
    return (
      <fieldset class="group">
        <legend>
          {field.name} <span class="unit">{field.words}</span>
        </legend>
        {field.inner.map((f) => (
          <Value key={f.name} state={state} path={[...path, f.name]} field={f} />
        ))}
      </fieldset>
    );
  return <Single state={state} path={path} field={field} label={field.name} />;
}

function List({ state, path, field }: { state: State; path: JobPath; field: FieldOf }): JSX.Element | null {
  const { given } = useSeen(state, path);
  const entries: readonly unknown[] = Array.isArray(given) ? given : [];
  const [entry] = field.inner;
  const words = state.words.value;
  if (entry === undefined) return null;
  const last = entries.at(-1);
  return (
    <fieldset class="group">
      <legend>
        {field.name} <span class="unit">{field.words}</span>
      </legend>
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
  readonly path: JobPath;
  readonly field: FieldOf;
  readonly label: string;
}

/** One value with its label, what it may be, and what is wrong with it. */
export function Single({ state, path, field, label }: SingleProps): JSX.Element {
  const id = useId();
  const words = state.words.value;
  const seen = useSeen(state, path);
  const { problems, locked, units } = seen;
  const key = path.join('.');
  const wrong = problems.length > 0;
  return (
    <div class={field.titles === undefined ? 'field' : 'field wide'}>
      <label for={id}>
        {label}
        {field.unit === '' ? null : <span class="unit"> {field.unit === 'deg' ? '°' : units}</span>}
      </label>
      <Control
        state={state}
        path={path}
        field={field}
        id={id}
        given={seen.given}
        locked={locked}
        wrong={wrong}
      />
      <span id={`${id}-about`} class="about">
        {[field.words, locked ? words.locked : rangeText(state, field, units)]
          .filter((t) => t !== '')
          .join('; ')}
      </span>
      <Beside state={state} seen={seen} />
      {!wrong && !state.mends.value.has(key) ? null : (
        <span id={`${id}-wrong`} class="wrong" role="alert">
          {problems.map((p) => (
            <span key={p.message}>
              {sentence(p.message)}. {sentence(p.fix)}{' '}
            </span>
          ))}
          <Mend state={state} at={key} />
        </span>
      )}
    </div>
  );
}

/** What else speaks of a value: findings it would mend, and what a size measured at the bench makes of it. */
function Beside({
  state,
  seen: { findings, fitted },
}: {
  state: State;
  seen: FieldSeen;
}): JSX.Element | null {
  const words = state.words.value;
  if (fitted === null && findings.length === 0) return null;
  return (
    <span class="beside">
      {findings.map(({ index, severity, message }) => (
        <button
          key={index}
          type="button"
          class={`place ${severity}`}
          title={`${sentence(message)}.`}
          aria-label={`${words.findings} ${index + 1}: ${message}`}
          onClick={() => document.getElementById(findingId(index))?.focus()}
        >
          {index + 1}
        </button>
      ))}
      {fitted === null ? null : (
        <mark>
          {words.refit}: {lengths(state)(fitted)}
        </mark>
      )}
    </span>
  );
}

function rangeText(state: State, { unit, least, most, options }: FieldOf, units: 'mm' | 'in'): string {
  const words = state.words.value;
  const said = (v: number) => numberIn(state, unit === 'mm' ? sizeText(v, units) : String(v));
  const known =
    least !== null && most !== null
      ? words.range(said(least), said(most))
      : most !== null
        ? words.upTo(said(most))
        : least !== null
          ? words.from(said(least))
          : '';
  const other = unit === 'mm' && options.length > 0 ? options.join(', ') : '';
  return [other, known].filter((t) => t !== '').join('; ');
}
