import { plainNumber, type Unsaid } from '@tinwright/core';
import type { StripFit, StripResidual } from './fit.js';
import { CONTRADICTS } from './least-squares.js';
import type { MeasuredStrip, MeasuredStrips, Reading } from './measured.js';

const LEAST_WIDTH = 8; // thicknesses along the bend
const ENOUGH = 3;
const SURELY = 2; // standard errors of a reading

/** What to know about a fit before it is used, worst first. `part` names the strip. */
export function fitFindings(fit: StripFit, measured: MeasuredStrips): readonly Unsaid[] {
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
): Unsaid {
  const lengths = contradicts.includes('lengths');
  return {
    code: 'strip-contradicts',
    severity: 'error',
    part: name,
    ...(lengths
      ? { value: deduction, unit: 'mm' as const }
      : { value: springback ?? 0, unit: 'deg' as const }),
    message: (say) =>
      lengths
        ? `contradicts the others: its deduction is ${say.size(deduction)} off (K = ${plainNumber(k, 3)} by itself)`
        : `contradicts the others: it would open by ${plainNumber(springback ?? 0, 2)} deg at 90 deg, the fit by ${plainNumber(row.springback ?? 0, 2)} deg`,
    source: `more than ${CONTRADICTS} standard errors of its readings; data snooping, from memory`,
    fix: 'measure it again, or take it out of the file',
  };
}

/** A bend opens when the tools let go: one that is left sharper than it was set was read the other way round. */
function closing({ name, angle, set }: MeasuredStrip, reading: Reading): readonly Unsaid[] {
  if (set === null) return [];
  const slack = SURELY * Math.SQRT2 * reading.angle; // both are read with the same protractor
  if (angle - set <= slack) return [];
  const deg = (v: number) => plainNumber(v, 2);
  return [
    {
      code: 'strip-closes',
      severity: 'error',
      part: name,
      value: angle,
      limit: set + slack,
      unit: 'deg',
      message: `left at ${deg(angle)} deg, bent further than the ${deg(set)} deg it was set to; metal opens again`,
      source: `more than ${SURELY} standard errors of both readings`,
      fix: `give both as bent through from flat: a protractor that shows ${deg(angle)} between the legs means ${deg(180 - angle)}`,
    },
  ];
}

/** Metal at the ends of a bend gives way sideways: in a narrow strip that is all there is. */
function narrow({ strips, thickness }: MeasuredStrips): readonly Unsaid[] {
  const least = LEAST_WIDTH * thickness;
  return strips.flatMap(({ name, width }): readonly Unsaid[] =>
    width === null || width >= least
      ? []
      : [
          {
            code: 'strip-narrow',
            severity: 'warning',
            part: name,
            value: width,
            limit: least,
            unit: 'mm',
            message: (say) =>
              `${say.size(width)} wide; a bend so short gives way at its ends as no part does`,
            source: `${LEAST_WIDTH} T for plane strain, from memory`,
            fix: (say) => `bend a strip ${say.least(least)} wide or more`,
          },
        ],
  );
}

function few({ row: { name, strips } }: StripFit): readonly Unsaid[] {
  if (strips >= ENOUGH) return [];
  return [
    {
      code: 'strip-few',
      severity: 'note',
      part: name,
      value: strips,
      limit: ENOUGH,
      message: `${strips} of the strips counted; the error is what the readings allow, scatter does not show yet`,
      source: 'common practice, no source',
      fix: `bend and measure ${ENOUGH} strips or more`,
    },
  ];
}
