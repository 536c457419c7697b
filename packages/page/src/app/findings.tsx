import type { JSX } from 'preact';
import type { FindingView } from '../protocol.js';
import { typed } from './control.js';
import type { State } from './state.js';
import { BLANK, found, lengths, numberIn, sentence } from './told.js';
import { sizeText } from './units.js';

/** Name of a finding's sentence in the page, for what leads to it. */
export const findingId = (index: number): string => `finding-${index + 1}`;

/** What a maker should know, worst first, each leading to its part; the number is that of its place on the pattern. */
export function Findings({ state }: { state: State }): JSX.Element {
  const words = state.words.value;
  const { findings = [], parts = [] } = state.job.value ?? {};
  if (findings.length === 0) return <p>{words.noFindings}</p>;
  const told = (text: string) => (state.content.worksheet ? withoutBlanks(state, text) : text);
  return (
    <ol class="findings">
      {findings.map((f, i) => {
        const index = parts.findIndex((p) => p.name === f.part);
        const light = () => {
          if (f.part === state.chosen.value) state.lit.value = f.names[0] ?? null;
        };
        return (
          <li
            key={findingId(i)}
            id={findingId(i)}
            tabIndex={-1}
            class={f.severity}
            onPointerEnter={light}
            onFocus={light}
          >
            <span class={`place ${f.severity}`}>{i + 1}</span> <strong>{f.label}</strong>{' '}
            {f.part === '' ? null : (
              <button type="button" class="plain" onClick={() => state.choose(f.part)}>
                {f.part}
              </button>
            )}
            <br />
            {sentence(told(f.message))}. {f.fix === '' ? '' : `${sentence(told(f.fix))}. `}
            {index < 0 ? null : <Changes state={state} finding={f} index={index} />}{' '}
            {f.source === '' ? null : <small>({f.source})</small>}
          </li>
        );
      })}
    </ol>
  );
}

/** Values with which a finding would be gone, each taken by a click. */
function Changes({
  state,
  finding,
  index,
}: {
  state: State;
  finding: FindingView;
  index: number;
}): JSX.Element {
  const words = state.words.value;
  const units = state.job.value?.units ?? 'mm';
  return (
    <>
      {finding.changes.map(({ path, value }) => {
        const text = typeof value === 'number' ? sizeText(value, units) : value;
        return (
          <button
            key={path.join('.')}
            type="button"
            class="take"
            onClick={() => state.change(['parts', index, ...path], typed(text))}
          >
            {words.take(`${path.join('.')} ${typeof value === 'number' ? numberIn(state, text) : text}`)}
          </button>
        );
      })}
    </>
  );
}

/** A sentence without the sizes of blanks, which a class is to find. */
function withoutBlanks(state: State, text: string): string {
  const said = lengths(state);
  const sizes = (state.job.value?.parts ?? []).flatMap((p) => p.flat.size.map(said));
  return sizes.reduce((left, size) => left.replaceAll(size, BLANK), text);
}

/** Blank, mass, sheet, pieces and fasteners, always in sight. */
export function Totals({ state }: { state: State }): JSX.Element {
  const words = state.words.value;
  const job = state.job.value;
  const part = state.part.value;
  if (job === null || part === null) return <p class="totals" aria-busy="true" />;
  const flat = state.quick.value?.flat ?? part.flat;
  const [metric, hidden] = [job.units === 'mm', state.content.worksheet];
  const amount = (value: number, digits: number, unit: string) =>
    hidden ? BLANK : `${numberIn(state, value.toFixed(digits))} ${unit}`;
  const rows: readonly (readonly [string, string])[] = [
    [`${words.blank} ${part.name}`, `${flat.size.map(found(state)).join(' × ')} ${job.units}`],
    [words.mass, metric ? amount(job.totals.mass, 2, 'kg') : amount(job.totals.mass * POUNDS, 2, 'lb')],
    [
      words.sheetArea,
      metric ? amount(job.totals.area / 1e6, 3, 'm²') : amount(job.totals.area / 645.16, 0, 'in²'),
    ],
    [words.pieces, String(job.totals.pieces)],
    [words.fasteners, String(job.totals.fasteners)],
  ];
  return (
    <dl class="totals">
      {rows.map(([name, value]) => (
        <div key={name}>
          <dt>{name}</dt>
          <dd>{value}</dd>
        </div>
      ))}
    </dl>
  );
}

const POUNDS = 2.2046226; // in a kilogram
