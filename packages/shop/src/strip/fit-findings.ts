import { cite, type Finding } from '@tinwright/core';
import { remark } from '../checks/check-findings.js';
import type { StripFit, StripResidual } from './fit.js';
import { CONTRADICTS } from './least-squares.js';
import type { MeasuredStrip, MeasuredStrips, Reading } from './measured.js';

const LEAST_WIDTH = 8; // thicknesses along the bend
const ENOUGH = 3;
const SURELY = 2; // standard errors of a reading

/** What to know about a fit before it is used, worst first. `part` names the strip. */
export function fitFindings(fit: StripFit, measured: MeasuredStrips): readonly Finding[] {
  return [
    ...fit.strips.filter((s) => s.contradicts.length > 0).map((s) => contradiction(s, fit)),
    ...measured.strips.flatMap((s) => closing(s, measured.reading)),
    ...narrow(measured),
    ...few(fit),
  ];
}

function contradiction(
  { name, deduction, springback, k, contradicts }: StripResidual,
  { row }: StripFit,
): Finding {
  const lengths = contradicts.includes('lengths');
  return {
    part: name,
    ...remark('strip-contradicts', 'error', {
      ...(lengths ? { value: deduction, unit: 'mm' } : { value: springback ?? 0, unit: 'deg' }),
      values: {
        in: lengths ? 'lengths' : 'springback',
        k,
        opens: springback ?? 0,
        fit: row.springback ?? 0,
      },
      source: [cite(null, { rule: `${CONTRADICTS} σ`, basis: 'memory' })],
    }),
  };
}

/** A bend opens when the tools let go: one that is left sharper than it was set was read the other way round. */
function closing({ name, angle, set }: MeasuredStrip, reading: Reading): readonly Finding[] {
  if (set === null) return [];
  const slack = SURELY * Math.SQRT2 * reading.angle; // both are read with the same protractor
  if (angle - set <= slack) return [];
  return [
    {
      part: name,
      ...remark('strip-closes', 'error', {
        value: angle,
        limit: set + slack,
        unit: 'deg',
        values: { set },
        source: [cite(null, { rule: `${SURELY} σ`, basis: 'derived' })],
      }),
    },
  ];
}

/** Metal at the ends of a bend gives way sideways: in a narrow strip that is all there is. */
function narrow({ strips, thickness }: MeasuredStrips): readonly Finding[] {
  const least = LEAST_WIDTH * thickness;
  return strips.flatMap(({ name, width }): readonly Finding[] =>
    width === null || width >= least
      ? []
      : [
          {
            part: name,
            ...remark('strip-narrow', 'warning', {
              value: width,
              limit: least,
              unit: 'mm',
              values: {},
              source: [cite(null, { rule: `${LEAST_WIDTH} T`, basis: 'memory' })],
            }),
          },
        ],
  );
}

function few({ row: { name, strips } }: StripFit): readonly Finding[] {
  if (strips >= ENOUGH) return [];
  return [
    {
      part: name,
      ...remark('strip-few', 'note', {
        value: strips,
        limit: ENOUGH,
        values: {},
        source: [cite(null, { basis: 'common-practice' })],
      }),
    },
  ];
}
