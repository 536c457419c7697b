import { GAUGE_SYSTEMS, MATERIAL_NAMES, MATERIALS } from '@tinwright/core';
import { expect, test } from 'vitest';

// Typical values at room temperature: density kg/m³, tensile N/mm², yield N/mm² (least, greatest of the
// typical value), modulus GPa. Read: DC01 tensile (EN 10130, vinco.es) and 304 density. All others from
// memory of EN 10346, EN 10088-2, EN 485-2, EN 10202 and of typical values for copper and brass.
const TYPICAL = [
  ['mild-steel', [7850, 7850], [270, 410], [200, 280], [210, 210]],
  ['galvanised-steel', [7850, 7850], [270, 500], [250, 330], [210, 210]],
  ['stainless-304', [7900, 7930], [540, 750], [205, 230], [200, 200]],
  ['stainless-430', [7700, 7700], [430, 600], [260, 260], [200, 220]],
  ['aluminium-1050-h14', [2700, 2700], [105, 145], [85, 85], [69, 69]],
  ['aluminium-3003-h14', [2730, 2730], [145, 185], [125, 125], [69, 69]],
  ['aluminium-5052-h32', [2680, 2680], [210, 260], [130, 130], [70, 70]],
  ['aluminium-6061-t6', [2700, 2700], [290, 310], [240, 275], [69, 69]],
  ['copper', [8930, 8930], [220, 300], [140, 180], [120, 130]],
  ['brass', [8440, 8440], [300, 440], [170, 180], [105, 110]],
  ['tinplate', [7850, 7850], [330, 420], [230, 330], [205, 205]],
] as const;

const row = (name: string) => {
  const found = MATERIALS.find((m) => m.name === name);
  if (found === undefined) throw new Error(`there is no material ${name}`);
  return found;
};

function expectWithin(value: number, [least, greatest]: readonly [number, number]): void {
  expect(value).toBeGreaterThanOrEqual(least);
  expect(value).toBeLessThanOrEqual(greatest);
}

test('the table: these eleven materials, each once', () => {
  expect(MATERIAL_NAMES).toEqual(TYPICAL.map(([name]) => name));
  expect(new Set(MATERIAL_NAMES).size).toBe(11);
});

test.each(TYPICAL)(
  '%s: density %j and tensile strength %j as the standards give them',
  (name, density, tensile) => {
    expectWithin(row(name).density, density);
    expect(row(name).tensile).toEqual(tensile);
  },
);

test.each(TYPICAL)(
  '%s: yield and modulus within the typical values',
  (name, _density, tensile, yields, modulus) => {
    expectWithin(row(name).yield, yields);
    expectWithin(row(name).modulus, modulus);
    expect(row(name).yield).toBeLessThan(tensile[1]);
  },
);

test.each(MATERIALS)('$name: values, k and least radius each carry a source', (material) => {
  for (const source of [material.source, material.kSource, material.leastRadius.source])
    expect(source.length).toBeGreaterThan(8);
  expect(material.title).not.toBe('');
});

test.each(MATERIALS)('$name: what is typed from memory says so', ({ source }) => {
  expect(source).toContain('from memory');
});

// Machinery's Handbook 31st ed. p. 1421, K behind the printed 90° lengths: 0.350 soft, 0.407 middle group
test.each([
  ['copper', 0.35],
  ['mild-steel', 0.407],
  ['galvanised-steel', 0.407],
  ['aluminium-1050-h14', 0.407],
  ['aluminium-3003-h14', 0.407],
  ['aluminium-5052-h32', 0.407],
  ['aluminium-6061-t6', 0.407],
  ['brass', 0.407],
])("%s: k is %d, calculated from the handbook's length", (name, k) => {
  expect(row(name).k).toBeCloseTo(k, 3);
  expect(row(name).kSource).toContain("Machinery's Handbook 31st ed. p. 1421");
});

test.each(['stainless-304', 'stainless-430'])(
  '%s: its k says that stainless is not in the handbook',
  (name) => {
    expect(row(name).kSource).toContain('not listed');
  },
);

test('gauge numbers: each metal in the system its trade uses, tinplate in none', () => {
  const used = Object.fromEntries(MATERIALS.map((m) => [m.name, m.gauges]));
  expect(used).toEqual({
    'mild-steel': 'steel',
    'galvanised-steel': 'galvanised',
    'stainless-304': 'stainless',
    'stainless-430': 'stainless',
    'aluminium-1050-h14': 'aluminium',
    'aluminium-3003-h14': 'aluminium',
    'aluminium-5052-h32': 'aluminium',
    'aluminium-6061-t6': 'aluminium',
    copper: 'aluminium',
    brass: 'aluminium',
    tinplate: null,
  });
  const systems = GAUGE_SYSTEMS.map((s) => s.name);
  expect(MATERIALS.every((m) => m.gauges === null || systems.includes(m.gauges))).toBe(true);
});

test('zinc fume: galvanised steel alone', () => {
  expect(MATERIALS.filter((m) => m.zinc).map((m) => m.name)).toEqual(['galvanised-steel']);
});
