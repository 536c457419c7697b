import type { Rack, StockSheet } from '@tinwright/cutting';
import type { Shop } from '@tinwright/shop';
import type { Host } from './console.js';
import type { ExitCode } from './failure.js';
import { withText } from './open-text.js';

/** A rack as it was read, and its file's bytes to know it again by; null where it comes from no file. */
export interface OpenRack {
  readonly rack: Rack;
  readonly bytes: Uint8Array | null;
}

/** The rack in a file; problems are printed with their places. */
export async function openRack(
  host: Host,
  file: string,
  json: boolean,
): Promise<OpenRack | { readonly exit: ExitCode }> {
  const { readRack } = await import('@tinwright/cutting');
  const opened = await withText(host, file, 'rack', json, (data, bytes) => ({ rack: readRack(data), bytes }));
  return 'exit' in opened ? opened : opened.answer;
}

/** The sheets a shop says it has, of every metal that is asked for, as many as needed. */
export async function rackOf(
  { sheets }: Shop,
  metals: readonly Pick<StockSheet, 'material' | 'thickness'>[],
): Promise<OpenRack> {
  const { NO_TRIM } = await import('@tinwright/cutting');
  const stock = metals.flatMap(({ material, thickness }) =>
    sheets.map(
      ([x, y]): StockSheet => ({
        name: `${x} x ${y}`,
        origin: 'sheet',
        material,
        thickness,
        x,
        y,
        outline: null,
        count: Number.POSITIVE_INFINITY,
        price: null,
        grain: null,
        trim: NO_TRIM,
      }),
    ),
  );
  return { rack: { sheets: stock, kerf: 0, leastOffcut: { x: 100, y: 100 } }, bytes: null };
}
