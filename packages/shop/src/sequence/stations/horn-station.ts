import type { Mounting, Obstacle, Station } from './station.js';

/** Nobody mounts horns where a punch does without. */
const NOT_NEEDED: Obstacle = { code: 'punch', panel: -1 };

/** A press with horns, for what the same tools without them cannot do as the part stands. */
export function hornStation(horned: Station, plain: Station): Station {
  const refused = new WeakMap<Mounting, Mounting>();
  return {
    ...horned,
    mount: (operation, held, done) => {
      const without = plain.mount(operation, held, done);
      if (without.obstacle !== null) return horned.mount(operation, held, done);
      const known = refused.get(without) ?? { ...without, obstacle: NOT_NEEDED, stretches: [] };
      refused.set(without, known);
      return known;
    },
  };
}
