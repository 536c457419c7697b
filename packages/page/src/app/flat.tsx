import type { JSX } from 'preact';
import type { BlankView, FlatView } from '../protocol.js';
import type { State } from './state.js';
import { sizeText } from './units.js';

const MARGIN = 5; // mm of white the writer leaves round the drawing

/** The flat pattern from the cut file's own drawing, with what explains it. */
export function Flat({ state }: { state: State }): JSX.Element | null {
  const words = state.words.value;
  const flat = (state.quick.value ?? state.part.value)?.flat;
  if (flat === undefined) return null;
  const [w, h] = flat.size;
  const inside = flat.svg.slice(flat.svg.indexOf('<g'), flat.svg.lastIndexOf('</svg>'));
  const points = (ps: readonly (readonly [number, number])[]) =>
    ps.map(([x, y]) => `${x + MARGIN},${h - y + MARGIN}`).join(' ');
  const lit = state.lit.value;
  const area = (id: string, shape: readonly (readonly [number, number])[], kind: string, label: string) => (
    <polygon
      key={kind + id}
      class={`${kind}${lit === id ? ' lit' : ''}`}
      points={points(shape)}
      onPointerEnter={() => {
        state.lit.value = id;
      }}
      onPointerDown={() => {
        state.lit.value = id;
      }}
    >
      <title>{label}</title>
    </polygon>
  );
  const units = state.job.value?.units ?? 'mm';
  return (
    <>
      <svg
        class="drawing"
        role="img"
        aria-label={`${words.flat}: ${state.chosen.value}`}
        viewBox={`0 0 ${w + 2 * MARGIN} ${h + 2 * MARGIN}`}
      >
        {flat.panels.map((p) => area(p.id, p.shape, 'panel', words.panel(p.id)))}
        {/* our own writer's text: names in it are escaped */}
        <g class="cut" dangerouslySetInnerHTML={{ __html: inside }} />
        {flat.bends.map((b) =>
          area(b.id, b.zone, 'bend', words.bend(b.id, `${Number(b.angle.toFixed(2))}`, b.direction)),
        )}
      </svg>
      <Explained state={state} flat={flat} units={units} />
    </>
  );
}

/** Why a blank is as large as it is, and what a bend takes. Every row lights its place. */
function Explained({
  state,
  flat,
  units,
}: {
  state: State;
  flat: FlatView;
  units: 'mm' | 'in';
}): JSX.Element {
  const words = state.words.value;
  const said = (mm: number) => (state.content.worksheet ? '……' : sizeText(mm, units));
  const bend = flat.bends.find((b) => b.id === state.lit.value);
  return (
    <div class="explained">
      <p aria-live="polite">
        {bend === undefined
          ? state.lit.value === null
            ? words.pointAt
            : words.panel(state.lit.value)
          : `${words.bend(bend.id, `${Number(bend.angle.toFixed(2))}`, bend.direction)}; ${words.bendTerms(
              said(bend.insideRadius),
              said(bend.allowance),
              said(bend.deduction),
            )}`}
      </p>
      {flat.blank.map((dimension, k) => (
        <details key={k === 0 ? 'x' : 'y'}>
          <summary>
            {words.blank} {k === 0 ? 'x' : 'y'}: {said(dimension.total)} {units}
          </summary>
          <Terms state={state} dimension={dimension} said={said} />
        </details>
      ))}
    </div>
  );
}

function Terms({
  state,
  dimension,
  said,
}: {
  state: State;
  dimension: BlankView;
  said: (mm: number) => string;
}): JSX.Element {
  const words = state.words.value;
  return (
    <ul class="terms">
      {dimension.terms.map((t, i) => (
        <li key={i}>
          <button
            type="button"
            class={state.lit.value === t.id ? 'plain lit' : 'plain'}
            onFocus={() => {
              state.lit.value = t.id;
            }}
            onPointerEnter={() => {
              state.lit.value = t.id;
            }}
            onClick={() => {
              state.lit.value = t.id;
            }}
          >
            <span class="number">
              {t.length < 0 ? '−' : '+'} {said(Math.abs(t.length))}
            </span>{' '}
            {t.kind === 'leg' ? words.leg : words.deductionOf} {t.id}
          </button>
        </li>
      ))}
    </ul>
  );
}
