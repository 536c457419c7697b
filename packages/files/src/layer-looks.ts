import { type LayerName, type LayerPaints, layerStyle } from './layers.js';

/** Linetypes that a layer can have in a DXF. */
export type Linetype = 'CONTINUOUS' | 'DASHED' | 'DOTTED' | 'DASHDOT';

/** How a layer stands in a DXF's table. */
export interface LayerRow {
  readonly name: string;
  /** Colour number, 1 to 255. */
  readonly number: number;
  readonly linetype: Linetype;
}

/** What a user calls our layers or layers of his own, and how they look there; those not named stay as they are. */
export type LayerLooks = Readonly<Partial<Record<LayerName, LayerRow>>> & {
  readonly [own: string]: LayerRow;
};

/** What of a drawing says how its layers look. */
interface Looking {
  readonly looks?: LayerLooks;
  readonly paints?: LayerPaints;
}

/** The row of a layer. */
export function rowOf({ looks, paints }: Looking, name: string): LayerRow {
  return looks?.[name] ?? { name, number: layerStyle(name, paints).number, linetype: 'CONTINUOUS' };
}

/** The rows of layers, each outside name once: several of ours may share one. */
export function rowsOf(drawing: Looking, names: readonly string[]): readonly LayerRow[] {
  const rows = names.map((name) => rowOf(drawing, name));
  return rows.filter((row, i) => rows.findIndex((r) => r.name === row.name) === i);
}
