import type { Remark } from '../errors/finding.js';
import {
  type AnyFastenerKind,
  extremes,
  type FastenerAsk,
  type FastenerNeeds,
  type FastenerPlace,
  fastenerKind,
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
export function spotWeldNeeds(
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
    edgeSource: (say) =>
      `the stricter of half the overlap of ${a} and ${b} (${say.size(half)}) and ${WELD_EDGE_TABLE.source} (${say.size(order)})`,
    pitch,
    pitchSource: `the stricter of ${a} and ${b}: ${[...SPOT_WELD_TABLES.map((t) => t.source), ...(layers > 2 ? [`times ${THREE_SHEETS} for three sheets, ${NOTES}`] : [])].join('; ')}`,
    usualPitch: 1.25 * pitch,
    bend: most((r) => r.electrode) / 2 + ELECTRODE_CLEARANCE,
    bendSource: (say) =>
      `half the electrode of ${a} or ${b} and ${say.size(ELECTRODE_CLEARANCE)} beside the bend`,
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
  const base = { severity: 'warning', fix: 'rivet it, or take nearer thicknesses' } as const;
  if (thick > 3 * thin)
    found.push({
      ...base,
      code: 'weld-ratio',
      value: thick / thin,
      limit: 3,
      unit: '',
      source: 'scope of ISO 14373',
      message: (say) => `sheets of ${say.size(thin)} and ${say.size(thick)} in one weld, 3 to 1 at most`,
    });
  if (thin < least || thick > most)
    found.push({
      ...base,
      code: 'weld-thickness',
      value: thin < least ? thin : thick,
      limit: thin < least ? least : most,
      unit: 'mm',
      source: 'scope of ISO 14373',
      message: (say) =>
        `a sheet of ${say.size(thin < least ? thin : thick)} to spot-weld, ${say.least(least)} to ${say.most(most)} is usual`,
    });
  if (stackThickness(stack) > 4 * thin)
    found.push({
      ...base,
      code: 'weld-stack',
      value: stackThickness(stack),
      limit: 4 * thin,
      unit: 'mm',
      source: NOTES,
      message: (say) =>
        `a stack of ${say.size(stackThickness(stack))}, four times the thinnest sheet at most`,
    });
  return found;
}

function metalRemarks(stack: readonly StackSheet[]): readonly Remark[] {
  const zinc = stack.find((s) => s.material.zinc);
  const foreign = stack.find((s) => s.material.weldSchedule !== 'low-carbon steel');
  const found: Remark[] = [];
  if (zinc !== undefined)
    found.push({
      code: 'weld-zinc',
      severity: 'warning',
      message: 'galvanised sheet: spot welds in it give off zinc fume and want more current and pressure',
      source: '29 CFR 1910.252 and 1910.1000 on zinc oxide fume; BS 1140 on coated sheet',
      fix: 'extract at the weld and try settings on offcuts, or rivet it',
    });
  if (foreign !== undefined)
    found.push({
      code: 'weld-schedule',
      severity: foreign.material.weldSchedule === null ? 'error' : 'warning',
      message: `${foreign.material.title}: the schedules here are for low-carbon steel`,
      source: 'tables A and B are printed for low-carbon steel; the rest common practice, no source',
      fix:
        foreign.material.weldSchedule === null
          ? 'rivet it'
          : "take the welder maker's schedule for this metal",
    });
  return found;
}

function layerRemarks(layers: number, meant: number): readonly Remark[] {
  if (layers <= meant) return [];
  return [
    {
      code: 'weld-layers',
      severity: layers > 3 ? 'error' : 'warning',
      value: layers,
      limit: meant,
      unit: '',
      message: `${layers} sheets lie on each other at a weld, ${meant} are meant (a hem or a tab in the stack?)`,
      source: 'scope of ISO 14373: two or three sheets',
      fix: 'move the weld off the hem, or notch the hem',
    },
  ];
}

function throatRemarks(throat: number, reach: number): readonly Remark[] {
  if (reach <= throat) return [];
  return [
    {
      code: 'weld-throat',
      severity: 'warning',
      value: reach,
      limit: throat,
      unit: 'mm',
      message: (say) =>
        `the arms reach ${say.size(throat)} over the work, the weld furthest in needs ${say.size(reach)}`,
      source: "the welder's throat as the job gives it",
      fix: 'weld before the parts in the way are on, or rivet it',
    },
  ];
}

/** Resistance spot welds. */
export const spotWeld: AnyFastenerKind = fastenerKind<SpotWeldAsk>({
  name: 'spot-weld',
  options: (k) => ({ throat: k.maybe(k.size({ max: 3000 })) }),
  needs: spotWeldNeeds,
  remarks,
});
