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
  /** Of the stroke and of swinging, at least, and of setting it by its line where it goes by that in any state. */
  readonly seconds: number;
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
  let index = 0;
  return operations.map((operation) =>
    stations.flatMap((station) =>
      SIDES.filter((held) => station.limits(operation, held) === null).map((held): Way => {
        const line = { operation, station, held };
        const gauging = gauges.ever(line);
        return {
          ...line,
          index: index++,
          seconds:
            strokeCost(operation, station, costs) +
            (station.swings(operation, held) ? costs.swing : 0) +
            (gauging?.edges.length === 0 ? costs.line : 0),
          faceUp: operation.angle > 0 ? 'marked' : 'unmarked',
          heading: heading(operation, held),
          ...setting(operation, station),
          gauging,
        };
      }),
    ),
  );
}
