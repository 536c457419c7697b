import type { Engine } from './engine.js';
import { faultIn, type Held } from './held.js';

/** Shows the part with so many bends of its order made, null for all; stages passed over while one is made are never asked for. */
export function staging(engine: Engine, held: Held): (at: number | null) => void {
  const { at, stage } = held;
  let busy = false;
  return (to) => {
    at.value = to;
    if (to === null) stage.value = null;
    else if (!busy) {
      busy = true;
      void stages(engine, held)
        .catch(faultIn(held))
        .finally(() => {
          busy = false;
        });
    }
  };
}

/** Stages one after the other, until the one shown is the one wanted. */
async function stages(engine: Engine, { at, order, data, chosen, stage }: Held): Promise<void> {
  let shown: number | null = null;
  while (at.value !== null && at.value !== shown && order.value !== null) {
    shown = at.value;
    const { steps } = order.value;
    const solid = await engine.ask('stage', { data: data.value, part: chosen.value, steps, at: shown });
    if (at.value !== null && order.value?.steps === steps) stage.value = solid;
  }
}
