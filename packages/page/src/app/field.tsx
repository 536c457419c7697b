import type { JSX } from 'preact';
import { useId } from 'preact/hooks';
import type { Field as FieldOf, FindingView, JobPath } from '../protocol.js';
import { Control, written } from './control.js';
import { findingId } from './findings.js';
import { isLocked, placeName } from './locks.js';
import { Mend } from './mend.js';
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
  const given = written(state.data.value, path);
  const entries = Array.isArray(given) ? given : [];
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
  const data = state.data.value;
  const words = state.words.value;
  const key = path.join('.');
  const problems = state.problems.value.filter((p) => p.path.join('.') === key);
  const locked = isLocked(state.content, data, path);
  return (
    <div class={field.titles === undefined ? 'field' : 'field wide'}>
      <label for={id}>
        {label}
        {field.unit === '' ? null : <span class="unit"> {field.unit === 'deg' ? '°' : unitOf(data)}</span>}
      </label>
      <Control state={state} path={path} field={field} id={id} locked={locked} wrong={problems.length > 0} />
      <span id={`${id}-about`} class="about">
        {[field.words, locked ? words.locked : rangeText(state, field)].filter((t) => t !== '').join('; ')}
      </span>
      <Beside state={state} path={path} />
      {problems.length === 0 && !state.mends.value.has(key) ? null : (
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
function Beside({ state, path }: { state: State; path: JobPath }): JSX.Element | null {
  const [root, part, ...rest] = placeName(state.data.value, path).split('.');
  const { findings = [] } = state.job.value ?? {};
  if (root !== 'parts' || part === undefined) return null;
  const place = rest.join('.');
  const speaks = (f: FindingView) => f.part === part && f.changes.some((c) => c.path.join('.') === place);
  const fitted = state.fitted.value;
  const changes = fitted !== null && 'changes' in fitted ? fitted.changes : [];
  const change = changes.find((c) => c.part === part && c.dimension === place);
  const words = state.words.value;
  if (change === undefined && !findings.some(speaks)) return null;
  return (
    <span class="beside">
      {findings.map((f, i) =>
        speaks(f) ? (
          <button
            key={findingId(i)}
            type="button"
            class={`place ${f.severity}`}
            title={`${sentence(f.message)}.`}
            aria-label={`${words.findings} ${i + 1}: ${f.message}`}
            onClick={() => document.getElementById(findingId(i))?.focus()}
          >
            {i + 1}
          </button>
        ) : null,
      )}
      {change === undefined ? null : (
        <mark>
          {words.refit}: {lengths(state)(change.after)}
        </mark>
      )}
    </span>
  );
}

const unitOf = (data: unknown): 'mm' | 'in' =>
  (data as { units?: unknown } | null)?.units === 'in' ? 'in' : 'mm';

function rangeText(state: State, { unit, least, most, options }: FieldOf): string {
  const words = state.words.value;
  const units = unitOf(state.data.value);
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
