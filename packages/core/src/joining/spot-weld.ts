import { remark } from '../errors/core-findings.js';
import type { Remark } from '../errors/finding.js';
import { COMMON_PRACTICE, cite } from '../errors/source.js';
import {
  extremes,
  type FastenerAsk,
  type FastenerNeeds,
  type FastenerPlace,
  fastenerKind,
  type NamedFastenerKind,
  type StackSheet,
  stackThickness,
} from './fastener.js';
import { rowFor, SPOT_WELD_TABLES, WELD_EDGE_TABLE } from './spot-weld-tables.js';

/** Clearance between electrode and an upstanding wall, mm: 1 to 2 is usual, the middle taken. */
const ELECTRODE_CLEARANCE = 1.5;
/** A third sheet widens the pitch by this. Source: NOTES, with the 3:1 ratio. */
const THREE_SHEETS = 1.3;
const NOTES = 'dbmimports.com spot-welding notes';
const ISO_RANGE = [0.4, 3] as const;

/** Values a joint may give for spot welds. */
export interface SpotWeldAsk extends FastenerAsk {
  /** How far the arms of the welder reach over the work, mm; null when the job does not say. */
  readonly throat: number | null;
}

/**
 * Least distances of spot welds in low-carbon steel: the larger of the two schedules' values at the next thicker
 * row; edge distance the larger of half the overlap and the aircraft order's table.
 */
function spotWeldNeeds(
  stack: readonly StackSheet[],
  _ask?: SpotWeldAsk,
  layers: number = stack.length,
): FastenerNeeds {
  const [thinnest] = extremes(stack);
  const rows = SPOT_WELD_TABLES.map((t) => rowFor(t.rows, thinnest, (r) => r.thickness));
  const [a, b] = SPOT_WELD_TABLES.map((t) => t.name);
  const most = (of: (row: (typeof rows)[number]) => number) => Math.max(...rows.map(of));
  const pitch = most((r) => r.pitch) * (layers > 2 ? THREE_SHEETS : 1);
  const half = most((r) => r.overlap) / 2;
  const [, order] = rowFor(WELD_EDGE_TABLE.rows, thinnest, ([t]) => t);
  return {
    edge: Math.max(half, order),
    edgeSource: [
      cite(`${a}, ${b}`, { rule: '½ overlap', size: half, basis: 'stricter' }),
      cite(WELD_EDGE_TABLE.source, { size: order }),
    ],
    pitch,
    pitchSource: [
      ...SPOT_WELD_TABLES.map((t) => cite(`${t.name}: ${t.source}`, { basis: 'stricter' })),
      ...(layers > 2 ? [cite(NOTES, { rule: `× ${THREE_SHEETS} (n = 3)` })] : []),
    ],
    usualPitch: 1.25 * pitch,
    bend: most((r) => r.electrode) / 2 + ELECTRODE_CLEARANCE,
    bendSource: [cite(`${a}, ${b}`, { rule: '½ D(electrode) + #', size: 1.5 })],
    holes: stack.map(() => null),
  };
}

function remarks(
  stack: readonly StackSheet[],
  { throat }: SpotWeldAsk,
  place: FastenerPlace,
): readonly Remark[] {
  const reach = throat === null ? [] : throatRemarks(throat, place.reach());
  return [
    ...sheetRemarks(stack),
    ...metalRemarks(stack),
    ...layerRemarks(place.layers, stack.length),
    ...reach,
  ];
}

function sheetRemarks(stack: readonly StackSheet[]): readonly Remark[] {
  const [thin, thick] = extremes(stack);
  const [least, most] = ISO_RANGE;
  const found: Remark[] = [];
  const scope = [cite('ISO 14373')];
  if (thick > 3 * thin)
    found.push(
      remark('weld-ratio', 'warning', {
        value: thick / thin,
        limit: 3,
        values: { thin, thick },
        source: scope,
      }),
    );
  if (thin < least || thick > most)
    found.push(
      remark('weld-thickness', 'warning', {
        value: thin < least ? thin : thick,
        limit: thin < least ? least : most,
        unit: 'mm',
        values: { least, most },
        source: scope,
      }),
    );
  if (stackThickness(stack) > 4 * thin)
    found.push(
      remark('weld-stack', 'warning', {
        value: stackThickness(stack),
        limit: 4 * thin,
        unit: 'mm',
        values: {},
        source: [cite(NOTES)],
      }),
    );
  return found;
}

function metalRemarks(stack: readonly StackSheet[]): readonly Remark[] {
  const zinc = stack.find((s) => s.material.zinc);
  const foreign = stack.find((s) => s.material.weldSchedule !== 'low-carbon steel');
  const found: Remark[] = [];
  if (zinc !== undefined)
    found.push(
      remark('weld-zinc', 'warning', {
        values: { weld: 'spot-weld' },
        source: [cite('29 CFR 1910.252'), cite('29 CFR 1910.1000'), cite('BS 1140')],
      }),
    );
  if (foreign !== undefined) {
    const weldable = foreign.material.weldSchedule !== null;
    found.push(
      remark('weld-schedule', weldable ? 'warning' : 'error', {
        values: { material: foreign.material.name, weldable },
        source: [cite('table A, table B'), ...COMMON_PRACTICE],
      }),
    );
  }
  return found;
}

function layerRemarks(layers: number, meant: number): readonly Remark[] {
  if (layers <= meant) return [];
  return [
    remark('weld-layers', layers > 3 ? 'error' : 'warning', {
      value: layers,
      limit: meant,
      values: {},
      source: [cite('ISO 14373')],
    }),
  ];
}

function throatRemarks(throat: number, reach: number): readonly Remark[] {
  if (reach <= throat) return [];
  return [
    remark('weld-throat', 'warning', {
      value: reach,
      limit: throat,
      unit: 'mm',
      values: {},
      source: [cite('job')],
    }),
  ];
}

/** Resistance spot welds. */
export const spotWeld: NamedFastenerKind<'spot-weld', SpotWeldAsk> = fastenerKind<'spot-weld', SpotWeldAsk>({
  name: 'spot-weld',
  facts: { hole: 'none', heat: 'resistance', rivet: 'none', tools: ['spot-welder', 'eyes', 'gloves'] },
  options: (k) => ({ throat: k.maybe(k.size({ max: 3000 })) }),
  needs: spotWeldNeeds,
  remarks,
});
