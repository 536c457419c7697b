import type { LayerMap, MarkStyle, TableStyle } from '@tinwright/files';
import type { OptionSpec } from './commands/command.js';
import type { Host } from './console.js';
import type { ExitCode } from './failure.js';
import { withText } from './open-text.js';

/** What was asked of the files for a cutting table. */
export interface TableOptions {
  readonly dxf: 'r2000' | 'r12';
  readonly layers?: string;
  readonly text: 'on' | 'off';
  readonly note: 'name' | 'full';
  readonly marks: MarkStyle;
  readonly curves: 'polyline' | 'arcs';
  readonly dxfUnits: 'mm' | 'in';
  readonly smallHoles: 'cut' | 'mark';
}

/** Stands for the map of layers that comes with the program. */
const BASIC = 'basic';

/** Options of verbs that write files for a cutting table, the form of the DXF aside. */
export const TABLE_OPTIONS: Readonly<Record<string, OptionSpec>> = {
  layers: {
    type: 'string',
    values: [BASIC],
    describe: 'file with names, colours, linetypes of layers; or basic: seven plain colours',
  },
  text: { type: 'string', choices: ['on', 'off'], default: 'on', describe: 'text in the cut files' },
  note: {
    type: 'string',
    choices: ['name', 'full'],
    default: 'name',
    describe: 'what the text says: full adds quantity, material, thickness',
  },
  marks: {
    type: 'string',
    choices: ['cross', 'dash', 'point', 'circle', 'none'],
    default: 'cross',
    describe: 'how the place of a fastener is marked',
  },
  curves: {
    type: 'string',
    choices: ['polyline', 'arcs'],
    default: 'polyline',
    describe: 'outlines as polylines with bulges, or as lines and arcs only',
  },
  'dxf-units': { type: 'string', choices: ['mm', 'in'], default: 'mm', describe: 'unit of the DXF files' },
  'small-holes': {
    type: 'string',
    choices: ['cut', 'mark'],
    default: 'cut',
    describe: 'holes smaller than the table of the shop cuts: cut, or marked for a punch',
  },
};

/** The style asked for. @param leastHole smallest hole the table cuts, mm; 0 where nobody said */
export async function tableStyle(
  host: Host,
  options: TableOptions,
  leastHole: number,
  json: boolean,
): Promise<{ readonly style: TableStyle } | { readonly exit: ExitCode }> {
  const { BASIC_LAYERS, readLayers, TABLE_STYLE } = await import('@tinwright/files');
  const map = await layerMap(host, options.layers, json, BASIC_LAYERS, readLayers);
  if ('exit' in map) return map;
  const { dxf: form, dxfUnits: unit, curves, marks, text, note, smallHoles } = options;
  const least = smallHoles === 'mark' ? leastHole : 0;
  return {
    style: { ...TABLE_STYLE, ...map.answer, form, unit, curves, marks, text, note, leastHole: least },
  };
}

async function layerMap(
  host: Host,
  file: string | undefined,
  json: boolean,
  basic: LayerMap,
  read: (data: unknown) => LayerMap,
): Promise<{ readonly answer: LayerMap } | { readonly exit: ExitCode }> {
  if (file === undefined) return { answer: { looks: {}, without: [] } };
  return file === BASIC ? { answer: basic } : withText(host, file, 'layers', json, read);
}
