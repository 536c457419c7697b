import type { JSX } from 'preact';
import { useEffect, useId, useState } from 'preact/hooks';
import type { Answers } from '../protocol.js';
import { typed } from './control.js';
import type { State } from './state.js';
import { lengths, sentence } from './told.js';

/** Type what the rule shows on a finished part: what else changes is listed, and can be taken over. */
export function Refit({ state }: { state: State }): JSX.Element | null {
  const words = state.words.value;
  const id = useId();
  const [size, setSize] = useState('');
  const [value, setValue] = useState('');
  const job = state.job.value;
  const data = state.data.value;
  const measured = typed(value);
  const answer = state.fitted.value;
  useEffect(() => {
    let wanted = true;
    const typedNow = size === '' || measured === undefined ? {} : { [size]: measured };
    if (Object.keys({ ...takenOver(data), ...typedNow }).length === 0) state.fitted.value = null;
    else
      void state.engine.ask('refit', { data, measured: typedNow }).then((found) => {
        if (wanted) state.fitted.value = found;
      });
    return () => {
      wanted = false;
    };
  }, [size, measured, data, state]);
  if (job === null) return null;
  const names = job.parts.flatMap((p) =>
    p.sizes.map((s) => ({ name: `${p.name}.${s.name}`, value: s.value })),
  );
  const now = names.find((n) => n.name === size);
  return (
    <form onSubmit={(e) => e.preventDefault()}>
      <p>{words.measuredHelp}</p>
      <div class="field">
        <label for={`${id}size`}>{words.measured}</label>
        <select id={`${id}size`} value={size} onChange={(e) => setSize(e.currentTarget.value)}>
          <option value="">–</option>
          {names.map((n) => (
            <option key={n.name} value={n.name}>
              {n.name}
            </option>
          ))}
        </select>
      </div>
      <div class="field">
        <label for={`${id}value`}>
          {words.is} <span class="unit">{job.units}</span>
        </label>
        <input
          id={`${id}value`}
          type="text"
          inputMode="decimal"
          autocomplete="off"
          value={value}
          placeholder={now === undefined ? '' : lengths(state)(now.value)}
          onInput={(e) => setValue(e.currentTarget.value)}
        />
      </div>
      <Changes state={state} answer={answer} />
      {size !== '' && measured !== undefined && answer !== null && 'changes' in answer ? (
        <button
          type="button"
          onClick={() => {
            state.change(['measured', size], measured);
            setValue('');
            setSize('');
          }}
        >
          {words.takeOver}
        </button>
      ) : null}
    </form>
  );
}

/** Sizes measured that the job holds already. */
const takenOver = (data: unknown): object => (data as { readonly measured?: object } | null)?.measured ?? {};

function Changes({ state, answer }: { state: State; answer: Answers['refit'] | null }): JSX.Element | null {
  const words = state.words.value;
  const said = lengths(state);
  if (answer === null) return null;
  if ('problems' in answer)
    return (
      <p class="wrong" role="alert">
        {answer.problems.map((p) => `${sentence(p.message)}. ${sentence(p.fix)}`).join(' ')}
      </p>
    );
  if (answer.changes.length === 0) return <p>{words.nothingChanges}</p>;
  return (
    <>
      <table class="changes">
        <thead>
          <tr>
            <th>{words.part}</th>
            <th>{words.measured}</th>
            <th>{words.was}</th>
            <th>{words.is}</th>
          </tr>
        </thead>
        <tbody>
          {answer.changes.map((c) => (
            <tr key={`${c.part} ${c.dimension}`} class={c.measured ? 'measured' : 'changed'}>
              <td>{c.part}</td>
              <td>{c.dimension}</td>
              <td>{said(c.before)}</td>
              <td>
                <mark>{said(c.after)}</mark>
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      <p>{words.cutAgain(answer.again.length === 0 ? words.none : answer.again.join(', '))}</p>
    </>
  );
}
