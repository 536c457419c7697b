// What a program needs that takes bought parts: a door of its own, so that others do not bundle it.

import type { HardwareTools } from './assembly/bought.js';
import { fastenRow } from './assembly/bought-holes.js';
import { standBought } from './assembly/stand-bought.js';
import { swingFindings } from './assembly/swing.js';
import { hardwareOf, hardwareSchema, hardwareTwins } from './job/hardware.js';
import { withMethods } from './units/with-methods.js';

/** Reads and stands bought parts: `readJob(data, FAMILIES, { hardware })`. */
export const hardware: HardwareTools = withMethods({}, {
  schema: hardwareSchema,
  read: hardwareOf,
  twins: hardwareTwins,
  fit: (rows, placed, sheets) => {
    const standing = rows.map((row) => standBought(row, placed));
    return {
      bought: standing.flatMap((r) => r.bought),
      fastened: standing.flatMap((r) => fastenRow(r, sheets)),
    };
  },
  swing: swingFindings,
} satisfies HardwareTools);
