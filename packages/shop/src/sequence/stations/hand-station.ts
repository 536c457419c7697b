import type { LineStroke } from '../part/operations.js';
import { OPEN } from './prospect.js';
import type { Mounting, Obstacle, Station } from './station.js';

/** What is always done by hand: an edge rolled round a wire, with pliers, hammer and setting-down tools. */
export function handStation(): Station {
  const only = ({ action, panels }: LineStroke): Obstacle | null =>
    action === 'roll' ? null : { code: 'angle', panel: panels[0] as number };
  return {
    name: 'hand',
    id: 'hand',
    rack: [],
    wholeAtFirst: true,
    balance: null,
    tooling: null,
    gaps: { end: 0, inner: 0 },
    limits: only,
    swings: () => false,
    prospect: (operation, held) => (held === 'parent' && only(operation) === null ? OPEN : null),
    mount: (operation, held): Mounting => ({
      operation,
      held,
      obstacle: held === 'parent' ? only(operation) : { code: 'angle', panel: operation.panels[0] as number },
      stretches: [],
      putIn: null,
      takeOff: null,
      swings: false,
    }),
  };
}
