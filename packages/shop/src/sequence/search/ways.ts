import type { HeldSide } from '../part/line.js';
import type { LineStroke } from '../part/operations.js';
import type { Gauging } from '../stations/gauge.js';
import type { Station } from '../stations/station.js';
import { type PlacingInput, strokeCost } from './handling.js';

/** An operation on a station with one side held, as far as no state changes it. */
export interface Way {
  readonly index: number;
  readonly operation: LineStroke;
  readonly station: Station;
  readonly held: HeldSide;
  /** Of the stroke and of swinging, at least. */
  readonly seconds: number;
  /** The same as a bound counts it that counts stop or line for every step. */
  readonly bare: number;
  readonly faceUp: 'marked' | 'unmarked';
  /** Degrees, as in a position. */
  readonly heading: number;
  readonly stop: number | null;
  readonly setBack: number | null;
  /** What can lie against a stop for it; null where it needs neither stop nor line. */
  readonly gauging: Gauging | null;
}

const SIDES: readonly HeldSide[] = ['parent', 'child'];

/** Every way there is, by the number of its operation. */
export function waysOf(
  operations: readonly LineStroke[],
  stations: readonly Station[],
  { costs, heading, setting, gauges }: PlacingInput,
): readonly (readonly Way[])[] {
  const most = Math.max(costs.gauge, costs.line);
  let index = 0;
  return operations.map((operation) =>
    stations.flatMap((station) =>
      SIDES.filter((held) => station.limits(operation, held) === null).map((held): Way => {
        const line = { operation, station, held };
        const gauging = gauges.ever(line);
        const seconds =
          strokeCost(operation, station, costs) + (station.swings(operation, held) ? costs.swing : 0);
        return {
          ...line,
          index: index++,
          seconds,
          bare: gauging === null ? Math.max(0, seconds - most * operation.steps.length) : seconds,
          faceUp: operation.angle > 0 ? 'marked' : 'unmarked',
          heading: heading(operation, held),
          ...setting(operation, station),
          gauging,
        };
      }),
    ),
  );
}
