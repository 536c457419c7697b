import type { Unit } from '@tinwright/core';
import type { LayerMap, MarkStyle, TableStyle } from '@tinwright/files';
import type { Host } from '../host/console.js';
import type { ExitCode } from '../host/failure.js';
import type { OptionSpec } from '../line/command.js';
import { typedLength } from '../line/typed-length.js';
import { withText } from '../open/open-text.js';

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
  readonly leastEdge?: string;
}

/** Stands for the width of the cut. */
const KERF = 'kerf';

/** mm */
const MOST_EDGE = 10;

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
  'least-edge': {
    type: 'string',
    values: [KERF],
    describe:
      'outlines get no edge shorter than this, where taking metal off can help; kerf: than the cut is wide',
  },
  'small-holes': {
    type: 'string',
    choices: ['cut', 'mark'],
    default: 'cut',
    describe: 'holes smaller than the table of the shop cuts: cut, or marked for a punch',
  },
};

/** What a table says of itself where nobody asks for anything else: mm, and the unit of lengths as typed. */
export interface TableLimits {
  /** Smallest hole it cuts; 0 where nobody said. */
  readonly smallestHole: number;
  /** Width of its cut; 0 where nobody said. */
  readonly kerf: number;
  /** Least edge of an outline where none is asked for. */
  readonly leastEdge: number;
  readonly units: Unit;
}

/** The style asked for; a sentence about an option that cannot be. */
export async function tableStyle(
  host: Host,
  options: TableOptions,
  limits: TableLimits,
  json: boolean,
): Promise<{ readonly style: TableStyle } | { readonly exit: ExitCode } | string> {
  const { BASIC_LAYERS, readLayers, TABLE_STYLE } = await import('@tinwright/files');
  const leastEdge = leastEdgeOf(options.leastEdge, limits);
  if (typeof leastEdge === 'string') return leastEdge;
  const map = await layerMap(host, options.layers, json, BASIC_LAYERS, readLayers);
  if ('exit' in map) return map;
  const { dxf: form, dxfUnits: unit, curves, marks, text, note, smallHoles } = options;
  const leastHole = smallHoles === 'mark' ? limits.smallestHole : 0;
  const style = {
    ...TABLE_STYLE,
    ...map.answer,
    form,
    unit,
    curves,
    marks,
    text,
    note,
    leastHole,
    leastEdge,
  };
  return { style };
}

function leastEdgeOf(given: string | undefined, { kerf, leastEdge, units }: TableLimits): number | string {
  if (given === undefined) return leastEdge;
  if (given !== KERF) return typedLength('least-edge', given, units, 0, MOST_EDGE);
  return kerf > 0 ? kerf : '--least-edge: kerf given, and nobody says how wide the cut is';
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
