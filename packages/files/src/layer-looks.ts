import type { LayerName } from './layers.js';
import { layerStyle } from './layers.js';

/** Linetypes that a layer can have in a DXF. */
export type Linetype = 'CONTINUOUS' | 'DASHED' | 'DOTTED' | 'DASHDOT';

/** How a layer stands in a DXF's table. */
export interface LayerRow {
  readonly name: string;
  /** Colour number, 1 to 255. */
  readonly number: number;
  readonly linetype: Linetype;
}

/** What a user calls our layers, and how they look there; those not named stay as they are. */
export type LayerLooks = Partial<Readonly<Record<LayerName, LayerRow>>>;

/** The row of one of our layers. */
export function rowOf(looks: LayerLooks | undefined, name: LayerName): LayerRow {
  return looks?.[name] ?? { name, number: layerStyle(name).number, linetype: 'CONTINUOUS' };
}

/** The rows of layers, each outside name once: several of ours may share one. */
export function rowsOf(looks: LayerLooks | undefined, names: readonly LayerName[]): readonly LayerRow[] {
  const rows = names.map((name) => rowOf(looks, name));
  return rows.filter((row, i) => rows.findIndex((r) => r.name === row.name) === i);
}
