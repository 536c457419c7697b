import { JobError, MATERIAL_NAMES, outsideSetback, type Problem } from '@tinwright/core';
import { type Gives, type ParamKit, paramKit, strictGroup } from '@tinwright/core/family';
import { numberAbove, problemsOf, sayIn, textLine } from '@tinwright/core/internal';
import * as z from 'zod/mini';
import { twinProblems } from '../machines/twin-problems.js';
import { bendPoint } from './bend-point.js';
import { type MeasuredStrip, type MeasuredStrips, USUAL_READING } from './measured.js';

const MOST = 100;
/** Angles a strip speaks for, degrees. */
const STRIP_ANGLES = { least: 15, most: 165 } as const;

type Group = ReturnType<typeof strictGroup>;

/** Schema of a file of measured strips. */
function measuredSchema(k: ParamKit): Gives<unknown> {
  return strictGroup({
    units: z.enum(['mm', 'in']),
    name: k.or(textLine(), ''),
    material: k.oneOf(MATERIAL_NAMES),
    thickness: k.size({ min: 0.1, max: 6 }),
    insideRadius: k.size({ min: 0, max: 100 }),
    reading: k.or(readingSchema(k) as Gives<unknown>, USUAL_READING),
    strips: k.list(stripSchema(k) as Gives<unknown>, 1, MOST),
  });
}

const readingSchema = (k: ParamKit): Group =>
  strictGroup({
    length: k.or(k.size({ max: 5 }), USUAL_READING.length),
    angle: k.or(numberAbove(0, 10, ' deg'), USUAL_READING.angle),
  });

const stripSchema = (k: ParamKit): Group =>
  strictGroup({
    name: k.or(textLine(), ''),
    flat: k.size({ max: 3000 }),
    legs: k.list(k.size({ max: 3000 }), 2, 2),
    angle: k.angle(STRIP_ANGLES.least, STRIP_ANGLES.most),
    set: k.maybe(k.angle(STRIP_ANGLES.least, 180)),
    width: k.maybe(k.size({ max: 3000 })),
  });

/**
 * Read measured strips from plain data, as a YAML or JSON parser gives it. Strips without a name are called by number.
 * @throws JobError with every problem found, in the order of the file
 */
export function readMeasured(data: unknown): MeasuredStrips {
  const units = (data as { units?: unknown } | null)?.units === 'in' ? 'in' : 'mm';
  const read = measuredSchema(paramKit(units)).safeParse(data);
  if (!read.success) throw new JobError(problemsOf(read.error.issues, data));
  const found = read.data as MeasuredStrips;
  const strips = found.strips.map((s, i) => ({ ...s, name: s.name === '' ? `strip ${i + 1}` : s.name }));
  const measured = { ...found, strips };
  const problems = [
    ...twinProblems(['strips'], strips),
    ...strips.flatMap((s, i) => impossible(s, i, measured)),
  ];
  if (problems.length > 0) throw new JobError(problems);
  return measured;
}

const SURELY = 6; // standard errors of a strip's own readings

/** What no strip can measure, whatever its K: legs that end in the bend, or that come from another strip. */
function impossible(strip: MeasuredStrip, i: number, measured: MeasuredStrips): readonly Problem[] {
  const { thickness, insideRadius, units, reading } = measured;
  const say = sayIn(units);
  const { angle, flat, legs } = strip;
  const wrong = (path: Problem['path'], message: string, fix: string): Problem => {
    return { code: 'strip-impossible', path: ['strips', i, ...path], message, fix };
  };
  const setback = outsideSetback({ thickness, insideRadius, angle });
  const short = legs.flatMap((leg, side) =>
    leg > setback
      ? []
      : [
          wrong(
            ['legs', side],
            `${say.size(leg)} given, more than ${say.least(setback)} allowed: the bend takes up that much`,
            'Measure the legs outside, from where the outside faces would meet',
          ),
        ],
  );
  if (short.length > 0) return short;
  // the neutral axis lies in the sheet: K from 0 to 1
  const { x, y, variance } = bendPoint(strip, measured, reading);
  const slack = SURELY * Math.sqrt(variance);
  if (y > -slack && y < x + slack) return [];
  const taken = legs[0] + legs[1] - flat;
  const [least, most] = [taken + y - x, taken + y];
  return [
    wrong(
      ['flat'],
      `legs of ${legs.map(say.size).join(' and ')} on a flat of ${say.size(flat)} leave a deduction of ${say.size(taken)}; ${say.least(least)} to ${say.most(most)} is possible`,
      'Measure the flat between the same two ends or lines as the legs',
    ),
  ];
}
