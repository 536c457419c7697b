import { useComputed } from '@preact/signals';
import type { JSX } from 'preact';
import type { FamilyView, Field } from '../protocol.js';
import { Single, Value } from './field.js';
import { withAdded, withoutPart } from './job-text.js';
import { Mend } from './mend.js';
import type { State } from './state.js';
import { sentence } from './told.js';

const LETTERS = 'bcdefghijklmnopqrstuvwxyz';
const plain: Omit<Field, 'name'> = {
  words: '',
  unit: '',
  options: [],
  least: null,
  most: null,
  fallback: undefined,
  optional: true,
  inner: [],
  list: false,
};

interface PartData {
  readonly name: string | null;
  readonly family: string | null;
}

/** Names and families of a job's parts; null for a text that is no job. */
function partsOf(data: unknown): readonly PartData[] | null {
  if (data === null) return null;
  const { parts } = data as { readonly parts?: unknown };
  const word = (part: unknown, key: 'name' | 'family') => {
    const said = (part as Readonly<Record<string, unknown>> | null)?.[key];
    return said === undefined ? null : String(said);
  };
  return Array.isArray(parts) ? parts.map((p) => ({ name: word(p, 'name'), family: word(p, 'family') })) : [];
}

/** The job's sizes as fields, part by part. */
export function Sizes({ state }: { state: State }): JSX.Element {
  const words = state.words.value;
  // drawn again only when parts come, go or change their names; each field sees to itself
  const text = useComputed(() => JSON.stringify(partsOf(state.data.value)));
  const parts = JSON.parse(text.value) as readonly PartData[] | null;
  const catalogue = state.catalogue.value;
  if (parts === null) return <Elsewhere state={state} />;
  if (catalogue === null) return <p aria-busy="true">…</p>;
  const materials = catalogue.materials.map((m) => m.name);
  const titles = Object.fromEntries(catalogue.materials.map((m) => [m.name, m.title]));
  return (
    <form onSubmit={(e) => e.preventDefault()}>
      <Elsewhere state={state} />
      <fieldset>
        <legend>{words.material}</legend>
        <Single
          state={state}
          path={['stock', 'material']}
          field={{ ...plain, name: 'material', options: materials, titles }}
          label={words.material}
        />
        <Single
          state={state}
          path={['stock', 'thickness']}
          field={{ ...plain, name: 'thickness', unit: 'mm', least: 0.1, most: 6 }}
          label={words.thickness}
        />
        <Single
          state={state}
          path={['bending', 'insideRadius']}
          field={{ ...plain, name: 'insideRadius', unit: 'mm', least: 0, most: 100 }}
          label={words.insideRadius}
        />
      </fieldset>
      {parts.map((part, i) => (
        <Part
          key={i}
          state={state}
          index={i}
          name={part.name ?? String(i + 1)}
          kind={part.family ?? ''}
          family={catalogue.families.find((f) => f.name === part.family)}
        />
      ))}
      <AddPart state={state} families={catalogue.families} names={parts.map((p) => String(p.name))} />
    </form>
  );
}

function Part({
  state,
  index,
  name,
  kind,
  family,
}: {
  state: State;
  index: number;
  name: string;
  kind: string;
  family: FamilyView | undefined;
}): JSX.Element {
  const words = state.words.value;
  const chosen = state.chosen.value === name;
  const removable = !state.content.locked.some(
    (l) => l === `parts.${name}` || l.startsWith(`parts.${name}.`),
  );
  const { fitted } = state;
  const anew = fitted.value !== null && 'again' in fitted.value && fitted.value.again.includes(name);
  return (
    <fieldset class={chosen ? 'part chosen' : 'part'}>
      <legend>
        <button type="button" aria-pressed={chosen} onClick={() => state.choose(name)}>
          {name}
        </button>
        <span class="family"> {family?.title ?? kind}</span>
        {anew ? <mark> {words.anew}</mark> : null}
      </legend>
      <div onFocusCapture={() => (chosen ? undefined : state.choose(name))}>
        <Single
          state={state}
          path={['parts', index, 'quantity']}
          field={{ ...plain, name: 'quantity', fallback: 1 }}
          label={words.quantity}
        />
        {family?.fields.map((f) => (
          <Value key={f.name} state={state} path={['parts', index, f.name]} field={f} />
        ))}
      </div>
      {removable ? (
        <button type="button" class="quiet" onClick={() => state.write(withoutPart(state.text.value, index))}>
          {words.removePart(name)}
        </button>
      ) : null}
    </fieldset>
  );
}

function AddPart({
  state,
  families,
  names,
}: {
  state: State;
  families: readonly FamilyView[];
  names: readonly string[];
}): JSX.Element {
  const words = state.words.value;
  const add = (family: FamilyView | undefined) => {
    if (family === undefined) return;
    const [stem = 'part'] = family.name.split('-').slice(-1);
    // a number behind a name is a piece of its part
    const name = [stem, ...[...LETTERS].map((l) => `${stem}-${l}`)].find((n) => !names.includes(n));
    state.write(withAdded(state.text.value, ['parts'], { name, family: family.name, ...family.example }));
    state.chosen.value = name ?? stem;
  };
  return (
    <label class="add">
      {words.addPart}
      <select
        value=""
        onChange={(e) => {
          add(families.find((f) => f.name === e.currentTarget.value));
          e.currentTarget.value = '';
        }}
      >
        <option value="">–</option>
        {families.map((f) => (
          <option key={f.name} value={f.name}>
            {f.name}: {f.title}
          </option>
        ))}
      </select>
    </label>
  );
}

/** Problems that no field can stand beside. */
function Elsewhere({ state }: { state: State }): JSX.Element | null {
  const words = state.words.value;
  const text = state.textProblem.value;
  const problems = state.problems.value;
  if (text === null && problems.length === 0) return null;
  return (
    <div class="wrong" role="alert">
      <strong>{words.jobCannotBe}</strong>
      <ul>
        {text === null ? null : (
          <li>
            {words.line(text.line)}: {text.message}
          </li>
        )}
        {problems.map((p) => {
          const at = p.path.join('.');
          return (
            <li key={`${at} ${p.message}`}>
              {p.part === '' ? '' : `${p.part}: `}
              {p.path.slice(p.part === '' ? 0 : 2).join('.')} {p.message}. {sentence(p.fix)}{' '}
              <Mend state={state} at={at} />
            </li>
          );
        })}
      </ul>
    </div>
  );
}
