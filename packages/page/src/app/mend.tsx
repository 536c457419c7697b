import type { JSX } from 'preact';
import type { State } from './state.js';
import { numberIn } from './told.js';

/** The value that would do, to be taken with a click. */
export function Mend({ state, at }: { state: State; at: string }): JSX.Element | null {
  const found = state.mends.value.get(at);
  const words = state.words.value;
  if (found === 'looking') return <em>{words.looking}</em>;
  if (found === undefined || found === null) return null;
  const { path, value } = found;
  return (
    <button type="button" class="take" onClick={() => state.change(path, value)}>
      {words.take(numberIn(state, String(value)))}
    </button>
  );
}
