import type { JSX } from 'preact';
import { typed } from './field.js';
import type { State } from './state.js';
import { sizeText } from './units.js';

/** What a maker should know, worst first, each leading to its part. */
export function Findings({ state }: { state: State }): JSX.Element {
  const words = state.words.value;
  const { findings = [], parts = [], units = 'mm' } = state.job.value ?? {};
  if (findings.length === 0) return <p>{words.noFindings}</p>;
  return (
    <ul class="findings">
      {findings.map((f) => {
        const index = parts.findIndex((p) => p.name === f.part);
        return (
          <li
            key={`${f.part} ${f.message}`}
            class={f.severity}
            onPointerEnter={() => {
              if (f.part === state.chosen.value) state.lit.value = f.names[0] ?? null;
            }}
          >
            <strong>{words.severity[f.severity]}</strong>{' '}
            {f.part === '' ? null : (
              <button type="button" class="plain" onClick={() => state.choose(f.part)}>
                {f.part}
              </button>
            )}{' '}
            {f.message}. {f.fix === '' ? '' : `${f.fix}. `}
            {index < 0
              ? null
              : f.changes.map((c) => {
                  const value = typeof c.value === 'number' ? sizeText(c.value, units) : c.value;
                  return (
                    <button
                      key={c.path.join('.')}
                      type="button"
                      class="take"
                      onClick={() => state.change(['parts', index, ...c.path], typed(value))}
                    >
                      {words.take(`${c.path.join('.')} ${value}`)}
                    </button>
                  );
                })}{' '}
            {f.source === '' ? null : <small>({f.source})</small>}
          </li>
        );
      })}
    </ul>
  );
}

/** Blank, mass, sheet, pieces and fasteners, always in sight. */
export function Totals({ state }: { state: State }): JSX.Element {
  const words = state.words.value;
  const job = state.job.value;
  const part = state.part.value;
  if (job === null || part === null) return <p class="totals" aria-busy="true" />;
  const hidden = state.content.worksheet;
  const flat = state.quick.value?.flat ?? part.flat;
  const blank = flat.size.map((v) => (hidden ? '……' : sizeText(v, job.units))).join(' × ');
  const metric = job.units === 'mm';
  const area = metric
    ? `${(job.totals.area / 1e6).toFixed(3)} m²`
    : `${(job.totals.area / 645.16).toFixed(0)} in²`;
  const mass = metric ? `${job.totals.mass.toFixed(2)} kg` : `${(job.totals.mass * 2.2046226).toFixed(2)} lb`;
  const rows: readonly (readonly [string, string])[] = [
    [`${words.blank} ${part.name}`, `${blank} ${job.units}`],
    [words.mass, hidden ? '……' : mass],
    [words.sheetArea, hidden ? '……' : area],
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
