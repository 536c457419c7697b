import type { JSX } from 'preact';
import type { BlankView, FlatView } from '../protocol.js';
import type { State } from './state.js';
import { found, numberIn } from './told.js';

/** Why what is pointed at measures what it does, and why a blank is as large as it is. Every row lights its place. */
export function Explained({ state, flat }: { state: State; flat: FlatView }): JSX.Element {
  const words = state.words.value;
  const said = found(state);
  const units = state.job.value?.units ?? 'mm';
  return (
    <div class="explained">
      <p aria-live="polite">
        {aboutLit(state, flat).map((line) => (
          <span key={line}>{line} </span>
        ))}
      </p>
      {flat.blank.map((dimension, k) => (
        <details key={k === 0 ? 'x' : 'y'}>
          <summary>
            {words.blank} {k === 0 ? 'x' : 'y'}: {said(dimension.total)} {units}
          </summary>
          <Terms state={state} dimension={dimension} />
        </details>
      ))}
    </div>
  );
}

/** What is lit, told. */
function aboutLit(state: State, flat: FlatView): readonly string[] {
  const words = state.words.value;
  const said = found(state);
  const lit = state.lit.value;
  if (lit === null) return [words.pointAt];
  const bend = flat.bends.find((b) => b.id === lit);
  const panel = flat.panels.find((p) => p.id === lit);
  const folds =
    bend === undefined
      ? `${words.panel(lit)}.`
      : `${words.bend(bend.id, numberIn(state, `${Number(bend.angle.toFixed(2))}`), bend.direction)}; ${words.bendTerms(
          said(bend.insideRadius),
          said(bend.allowance),
          said(bend.deduction),
        )}.`;
  const spans = (panel?.spans ?? []).map(
    (s) => `${words.span(said(s.marked), said(s.outside), said(s.taken), s.bends)}.`,
  );
  return [folds, ...spans];
}

function Terms({ state, dimension }: { state: State; dimension: BlankView }): JSX.Element {
  const words = state.words.value;
  const said = found(state);
  return (
    <ul class="terms">
      {dimension.terms.map((t, i) => {
        const light = () => {
          state.lit.value = t.id;
        };
        return (
          <li key={i}>
            <button
              type="button"
              class={state.lit.value === t.id ? 'plain lit' : 'plain'}
              onFocus={light}
              onPointerEnter={light}
              onClick={light}
            >
              <span class="number">
                {t.length < 0 ? '−' : '+'} {said(Math.abs(t.length))}
              </span>{' '}
              {t.kind === 'leg' ? words.leg : words.deductionOf} {t.id}
            </button>
          </li>
        );
      })}
    </ul>
  );
}
