import type { JSX } from 'preact';
import type { FlatView } from '../protocol.js';
import { Explained } from './explained.js';
import { findingId } from './findings.js';
import type { State } from './state.js';
import { numberIn, sentence } from './told.js';

const MARGIN = 5; // mm of white the writer leaves round the drawing
const HIGHEST = 19; // rem

/** The flat pattern from the cut file's own drawing, findings at their places, and what explains it. */
export function Flat({ state }: { state: State }): JSX.Element | null {
  const words = state.words.value;
  const flat = (state.quick.value ?? state.part.value)?.flat;
  if (flat === undefined) return null;
  const [w, h] = flat.size.map((side) => side + 2 * MARGIN) as [number, number];
  return (
    <>
      <div class="drawing">
        <div class="flat" style={{ aspectRatio: `${w} / ${h}`, width: `min(100%, ${(HIGHEST * w) / h}rem)` }}>
          <svg role="img" aria-label={`${words.flat}: ${state.chosen.value}`} viewBox={`0 0 ${w} ${h}`}>
            <Pattern state={state} flat={flat} />
          </svg>
          <Places state={state} flat={flat} />
        </div>
      </div>
      <Explained state={state} flat={flat} />
    </>
  );
}

function Pattern({ state, flat }: { state: State; flat: FlatView }): JSX.Element {
  const words = state.words.value;
  const lit = state.lit.value;
  const inside = flat.svg.slice(flat.svg.indexOf('<g'), flat.svg.lastIndexOf('</svg>'));
  const points = (ps: readonly (readonly [number, number])[]) =>
    ps.map(([x, y]) => `${x + MARGIN},${flat.size[1] - y + MARGIN}`).join(' ');
  const area = (id: string, shape: readonly (readonly [number, number])[], kind: string, label: string) => {
    const light = () => {
      state.lit.value = id;
    };
    return (
      <polygon
        key={kind + id}
        class={`${kind}${lit === id ? ' lit' : ''}`}
        points={points(shape)}
        onPointerEnter={light}
        onPointerDown={light}
      >
        <title>{label}</title>
      </polygon>
    );
  };
  return (
    <>
      {flat.panels.map((p) => area(p.id, p.shape, 'panel', words.panel(p.id)))}
      {/* our own writer's text: names in it are escaped */}
      <g class="cut" dangerouslySetInnerHTML={{ __html: inside }} />
      {flat.bends.map((b) =>
        area(
          b.id,
          b.zone,
          'bend',
          words.bend(b.id, numberIn(state, `${Number(b.angle.toFixed(2))}`), b.direction),
        ),
      )}
    </>
  );
}

/** Findings of the part that hold at a place, each a number there that leads to its sentence. */
function Places({ state, flat }: { state: State; flat: FlatView }): JSX.Element {
  const { findings = [] } = state.job.value ?? {};
  const across = (x: number) => `${(100 * (x + MARGIN)) / (flat.size[0] + 2 * MARGIN)}%`;
  const up = (y: number) => `${(100 * (y + MARGIN)) / (flat.size[1] + 2 * MARGIN)}%`;
  const label = state.words.value.findings;
  return (
    <>
      {findings.map((f, i) =>
        f.part !== state.chosen.value || f.at === null ? null : (
          <button
            key={findingId(i)}
            type="button"
            class={`place ${f.severity}`}
            style={{ left: across(f.at[0]), bottom: up(f.at[1]) }}
            title={`${sentence(f.message)}.`}
            aria-label={`${label} ${i + 1}: ${f.message}`}
            onClick={() => document.getElementById(findingId(i))?.focus()}
          >
            {i + 1}
          </button>
        ),
      )}
    </>
  );
}
