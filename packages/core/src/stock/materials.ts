import { frozen } from '../units/frozen.js';
import type { GaugeSystemName } from './gauges.js';
import {
  aircraftRadius,
  aluminiumRadius,
  din6935Radius,
  type RadiusRule,
  timesThickness,
} from './least-radius.js';

/** A sheet alloy: typical values at room temperature. */
export interface Material {
  /** Name in a job file. */
  readonly name: string;
  readonly title: string;
  /** kg/m³ */
  readonly density: number;
  /** Tensile strength, least and greatest, N/mm² */
  readonly tensile: readonly [number, number];
  /** Typical yield strength, N/mm² */
  readonly yield: number;
  /** Modulus of elasticity, GPa */
  readonly modulus: number;
  /** Neutral-axis fraction for air bends at R ≈ T, used when a job gives no k. */
  readonly k: number;
  /** Where `k` comes from. */
  readonly kSource: string;
  /** Least inside radius for a bend across the rolling direction, mm, from the thickness in mm. */
  readonly leastRadius: RadiusRule;
  /** The same by a stricter source that disagrees; absent where none was found. */
  readonly strictRadius?: RadiusRule;
  /** System its gauge numbers are in; null where trade has none of the four. */
  readonly gauges: GaugeSystemName | null;
  /** True when spot-welding or heating it gives off zinc fume. */
  readonly zinc: boolean;
  /** Which spot-weld schedules hold for it; null where a small spot welder does not do. */
  readonly weldSchedule: 'low-carbon steel' | 'own' | null;
  readonly source: string;
}

const MEDIUM =
  "Machinery's Handbook 31st ed. p. 1421: half-hard copper and brass, soft steel, aluminium, 0.64T + 1.57R";
const SOFT = "Machinery's Handbook 31st ed. p. 1421: soft brass, soft copper, 0.55T + 1.57R";
// K behind the handbook's 90° lengths: c·T = (π/2)·K·T
const K_MEDIUM = 0.64 / (Math.PI / 2);
const K_SOFT = 0.55 / (Math.PI / 2);

const ROWS = [
  {
    name: 'mild-steel',
    title: 'cold-rolled mild steel DC01',
    density: 7850,
    tensile: [270, 410],
    yield: 200,
    modulus: 210,
    k: K_MEDIUM,
    kSource: `${MEDIUM}; DC01 is soft steel by strength, though the book lists cold-rolled steel as hard`,
    leastRadius: din6935Radius(390),
    gauges: 'steel',
    zinc: false,
    weldSchedule: 'low-carbon steel',
    source: 'EN 10130 by vinco.es low-carbon strip page (tensile); density and modulus from memory',
  },
  {
    name: 'galvanised-steel',
    title: 'hot-dip galvanised steel DX51D+Z',
    density: 7850,
    tensile: [270, 500],
    yield: 290,
    modulus: 210,
    k: K_MEDIUM,
    kSource: MEDIUM,
    leastRadius: din6935Radius(390), // the row of its usual strength; the grade allows up to 500 N/mm²
    gauges: 'galvanised',
    zinc: true,
    weldSchedule: 'low-carbon steel',
    source: 'EN 10346, from memory; thickness includes the coating',
  },
  {
    name: 'stainless-304',
    title: 'stainless steel 304 (1.4301)',
    density: 7930,
    tensile: [540, 750],
    yield: 230,
    modulus: 200,
    k: K_MEDIUM,
    kSource: `${MEDIUM}; stainless is not listed, taken as the middle group`,
    leastRadius: timesThickness(
      1,
      "stainless makers' guides, ½T to 1T annealed, the stricter taken; from memory",
    ),
    strictRadius: aircraftRadius('304'),
    gauges: 'stainless',
    zinc: false,
    weldSchedule: 'own',
    source: 'EN 10088-2, from memory; density as printed',
  },
  {
    name: 'stainless-430',
    title: 'stainless steel 430 (1.4016)',
    density: 7700,
    tensile: [430, 600],
    yield: 260,
    modulus: 220,
    k: K_MEDIUM,
    kSource: `${MEDIUM}; stainless is not listed, taken as the middle group`,
    leastRadius: timesThickness(1, "stainless makers' guides, about 1T; from memory"),
    gauges: 'stainless',
    zinc: false,
    weldSchedule: 'own',
    source: 'EN 10088-2, from memory',
  },
  {
    name: 'aluminium-1050-h14',
    title: 'aluminium 1050A-H14',
    density: 2700,
    tensile: [105, 145],
    yield: 85,
    modulus: 69,
    k: K_MEDIUM,
    kSource: MEDIUM,
    leastRadius: aluminiumRadius('1100-H14'),
    gauges: 'aluminium',
    zinc: false,
    weldSchedule: null,
    source: 'EN 485-2, from memory',
  },
  {
    name: 'aluminium-3003-h14',
    title: 'aluminium 3003-H14',
    density: 2730,
    tensile: [145, 185],
    yield: 125,
    modulus: 69,
    k: K_MEDIUM,
    kSource: MEDIUM,
    leastRadius: aluminiumRadius('3003-H14'),
    gauges: 'aluminium',
    zinc: false,
    weldSchedule: null,
    source: 'EN 485-2, from memory',
  },
  {
    name: 'aluminium-5052-h32',
    title: 'aluminium 5052-H32',
    density: 2680,
    tensile: [210, 260],
    yield: 130,
    modulus: 70,
    k: K_MEDIUM,
    kSource: MEDIUM,
    leastRadius: aluminiumRadius('5052-H32'),
    strictRadius: aircraftRadius('5052'),
    gauges: 'aluminium',
    zinc: false,
    weldSchedule: null,
    source: 'EN 485-2, from memory',
  },
  {
    name: 'aluminium-6061-t6',
    title: 'aluminium 6061-T6',
    density: 2700,
    tensile: [290, 310],
    yield: 275,
    modulus: 69,
    k: K_MEDIUM,
    kSource: MEDIUM,
    leastRadius: aluminiumRadius('6061-T6'),
    strictRadius: aircraftRadius('6061-T6'),
    gauges: 'aluminium',
    zinc: false,
    weldSchedule: null,
    source: 'EN 485-2, from memory; cracks on tight bends',
  },
  {
    name: 'copper',
    title: 'copper Cu-DHP R220',
    density: 8930,
    tensile: [220, 300],
    yield: 140,
    modulus: 125,
    k: K_SOFT,
    kSource: SOFT,
    leastRadius: timesThickness(0.5, 'soft copper 0 to ½T, the stricter taken; from memory'),
    gauges: 'aluminium',
    zinc: false,
    weldSchedule: null,
    source: 'typical values, from memory',
  },
  {
    name: 'brass',
    title: 'brass CuZn37 R300',
    density: 8440,
    tensile: [300, 440],
    yield: 175,
    modulus: 107,
    k: K_MEDIUM,
    kSource: MEDIUM,
    leastRadius: timesThickness(1, 'half-hard brass ½T to 1T, the stricter taken; from memory'),
    gauges: 'aluminium',
    zinc: false,
    weldSchedule: null,
    source: 'typical values, from memory',
  },
  {
    name: 'tinplate',
    title: 'tinplate T2/T3',
    density: 7850,
    tensile: [330, 420],
    yield: 280,
    modulus: 205,
    k: K_MEDIUM,
    kSource: MEDIUM,
    leastRadius: timesThickness(0.5, 'tinplate 0 to ½T, the stricter taken; from memory'),
    gauges: null,
    zinc: false,
    weldSchedule: 'low-carbon steel',
    source: 'EN 10202, from memory',
  },
] as const satisfies readonly Material[];

/** Name of a built-in material. */
export type MaterialName = (typeof ROWS)[number]['name'];

/** Sheet materials, one row each with its source. */
export const MATERIALS: readonly Material[] = frozen(ROWS);

/** Names of the rows of `MATERIALS`, in their order. */
export const MATERIAL_NAMES: readonly string[] = frozen(MATERIALS.map((m) => m.name));
