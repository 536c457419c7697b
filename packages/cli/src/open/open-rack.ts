import type { JobPlan } from '@tinwright/core';
import type { Blank, Rack } from '@tinwright/cutting';
import type { Shop } from '@tinwright/shop';
import type { Host } from '../host/console.js';
import type { ExitCode } from '../host/failure.js';
import { withText } from './open-text.js';

/** A rack as it was read, and its file's bytes to know it again by; null where it comes from no file of its own. */
export interface OpenRack {
  readonly rack: Rack;
  readonly bytes: Uint8Array | null;
}

/** Who may say what stock there is. */
export interface StockAsked {
  /** A rack file: it alone counts then. */
  readonly rack?: string;
  readonly plans: readonly JobPlan[];
  readonly blanks: readonly Pick<Blank, 'material' | 'thickness'>[];
  readonly shop: Shop | null;
  readonly json: boolean;
}

/** The stock of a rack file, else of the jobs themselves, else of the shop; null where nobody says. */
export async function stockKnown(
  host: Host,
  { rack, plans, blanks, shop, json }: StockAsked,
): Promise<OpenRack | { readonly exit: ExitCode } | null> {
  if (rack !== undefined) return openRack(host, rack, json);
  const { stockOf } = await import('@tinwright/files/internal');
  const known = stockOf(plans, blanks, shop);
  return known && { rack: known, bytes: null };
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
