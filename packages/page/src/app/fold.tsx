import type { JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import { bare } from './space.js';
import type { State } from './state.js';

const STEP_TIME = 1400; // ms a bend while it plays

/** From flat to finished in the found order: a slider, steps, and playing it. */
export function Fold({ state }: { state: State }): JSX.Element {
  const words = state.words.value;
  const order = state.order.value;
  const [playing, setPlaying] = useState(false);
  const count = order?.steps.length ?? 0;
  const at = state.at.value ?? count;
  useEffect(() => {
    if (!playing || count === 0) return;
    return play(state, count, () => setPlaying(false));
  }, [playing, count, state]);
  if (state.problems.value.length > 0) return <p>{words.waiting}</p>;
  if (order === null) return <p aria-busy="true">{words.searching}</p>;
  if (order.status === 'infeasible')
    return (
      <>
        <p>{words.cannotBend}</p>
        <ul>
          {order.reasons.map((r) => (
            <li key={r}>{r}</li>
          ))}
        </ul>
      </>
    );
  if (count === 0) return <p>{words.noBends}</p>;
  const go = (to: number) => {
    setPlaying(false);
    state.fold(Math.min(count, Math.max(0, to)));
  };
  return (
    <>
      <input
        type="range"
        min={0}
        max={count}
        step={0.02}
        value={at}
        aria-label={words.fold}
        aria-valuetext={words.step(Math.floor(at), count)}
        onInput={(e) => go(Number(e.currentTarget.value))}
        onKeyDown={(e) => {
          const way = { ArrowRight: 1, ArrowUp: 1, ArrowLeft: -1, ArrowDown: -1 }[e.key];
          if (way === undefined) return;
          e.preventDefault();
          go(way > 0 ? Math.floor(at) + 1 : Math.ceil(at) - 1);
        }}
      />
      <p class="row">
        <button type="button" onClick={() => go(0)}>
          {words.flatAgain}
        </button>
        <button type="button" disabled={at <= 0} onClick={() => go(Math.ceil(at) - 1)}>
          {words.stepBack}
        </button>
        <button type="button" disabled={at >= count} onClick={() => go(Math.floor(at) + 1)}>
          {words.stepOn}
        </button>
        <button type="button" aria-pressed={playing} onClick={() => setPlaying(!playing)}>
          {playing ? words.pause : words.play}
        </button>
      </p>
      <p>{order.claim}</p>
    </>
  );
}

/** The bend that the slider stands in, told, with the section of its machine. */
export function Step({ state }: { state: State }): JSX.Element | null {
  const words = state.words.value;
  const order = state.order.value;
  const count = order?.steps.length ?? 0;
  if (order === null || count === 0 || order.status === 'infeasible' || state.problems.value.length > 0)
    return null;
  const at = state.at.value ?? count;
  const shown = Math.min(count - 1, Math.max(0, Math.ceil(at) - 1));
  return (
    <>
      <p aria-live="polite">
        <strong>{words.step(Math.floor(at), count)}</strong>
        {at === 0 ? '' : `: ${order.words[shown] ?? ''}`}
      </p>
      {/* our own writer's text: names in it are escaped */}
      <div
        class="drawing paper"
        role="img"
        aria-label={order.words[shown] ?? ''}
        dangerouslySetInnerHTML={{ __html: bare(order.sections[shown] ?? '') }}
      />
    </>
  );
}

/** Run from where it stands, or from flat, to the end; for those who want no motion a bend at a time. */
function play(state: State, count: number, ended: () => void): () => void {
  const calm = matchMedia('(prefers-reduced-motion: reduce)').matches;
  const from = (state.at.value ?? count) >= count ? 0 : (state.at.value ?? 0);
  const start = performance.now();
  let frame = 0;
  const next = () => {
    const gone = from + (performance.now() - start) / STEP_TIME;
    const to = Math.min(count, calm ? Math.floor(gone) : gone);
    if (to !== state.at.value) state.fold(to);
    if (to >= count) ended();
    else frame = requestAnimationFrame(next);
  };
  frame = requestAnimationFrame(next);
  return () => cancelAnimationFrame(frame);
}
