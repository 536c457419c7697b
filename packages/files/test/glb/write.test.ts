import type { Formed, Vec3 } from '@tinwright/core';
import { place3 } from '@tinwright/core/internal';
import { assemblySolid, partSolid, toGlb } from '@tinwright/files';
import { validateBytes } from 'gltf-validator';
import { beforeAll, describe, expect, test } from 'vitest';
import { objectOf, plannedCarrier } from '../carrier.js';
import { type GlbNode, readGlb } from '../glb-reader.js';
import { planned } from '../samples.js';

const plan = plannedCarrier('blind-rivet');
const object = objectOf(plan);
const parts: readonly (readonly [string, Formed])[] = [
  ...plan.parts.map((p) => [p.name, p.formed] as const),
  ...planned([
    { name: 'hook', family: 'bent-strip', width: 30, legs: [40, 30, 20], angles: [120, -60] },
    {
      name: 'tray',
      family: 'open-box',
      length: 120,
      width: 80,
      height: 40,
      hem: { type: 'open', length: 9 },
    },
  ]).parts.map((p) => [p.name, p.formed] as const),
];

interface Report {
  readonly issues: { readonly numErrors: number; readonly numWarnings: number; readonly messages: unknown[] };
}

async function validated(bytes: Uint8Array): Promise<Report['issues']> {
  const { issues } = (await validateBytes(bytes, { format: 'glb', writeTimestamp: false })) as Report;
  return issues;
}

const sub = (a: Vec3, b: Vec3): Vec3 => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
const cross = (a: Vec3, b: Vec3): Vec3 => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
const dot = (a: Vec3, b: Vec3) => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];

/** Volume inside triangles that close, each turned the way its normals look. */
const volumeOf = ({ own, normals }: GlbNode) =>
  own.reduce((s, [a, b, c], i) => {
    const turned = dot(cross(sub(b, a), sub(c, a)), normals[i]?.[0] ?? [0, 0, 0]);
    return s + (Math.sign(turned) * dot(a, cross(b, c))) / 6;
  }, 0);

function boxOf(triangles: GlbNode['own']) {
  const points = triangles.flat();
  const at = (pick: (...v: number[]) => number) =>
    [0, 1, 2].map((k) => pick(...points.map((p) => p[k] as number)));
  return { min: at(Math.min), max: at(Math.max) };
}

describe.each(parts)('the model of a %s', (name, formed) => {
  let bytes: Uint8Array;
  beforeAll(() => {
    bytes = toGlb(partSolid({ name, formed }));
  });

  test('the validator of the format finds no error and no warning', async () => {
    const issues = await validated(bytes);
    expect(issues.messages).toEqual([]);
    expect(issues).toMatchObject({ numErrors: 0, numWarnings: 0 });
  });

  test('one node of its name, from here and with no date in it', () => {
    const { json, nodes } = readGlb(bytes);
    expect(nodes.map((n) => n.name)).toEqual([name]);
    expect(json.asset).toEqual({ version: '2.0', generator: 'Tinwright' });
  });

  test('metres, +Y up: its box is the formed one, turned', () => {
    const [node] = readGlb(bytes).nodes as [GlbNode];
    const { min, max } = boxOf(node.triangles);
    const [x0, y0, z0] = formed.box.min;
    const [x1, y1, z1] = formed.box.max;
    // single precision, and a bend's strips lie inside the true ring by 0.5 % of its radius at most
    for (const [k, [low, high]] of [
      [x0, x1],
      [z0, z1],
      [-y1, -y0],
    ].entries()) {
      expect(min[k]).toBeCloseTo((low as number) / 1000, 4);
      expect(max[k]).toBeCloseTo((high as number) / 1000, 4);
    }
  });

  test('real sheet: the triangles close round the volume of the formed part', () => {
    const [node] = readGlb(bytes).nodes as [GlbNode];
    expect((volumeOf(node) * 1e9) / formed.volume).toBeCloseTo(1, 2);
  });

  test('every corner has a normal of length 1, square to its triangle or nearly so', () => {
    const [node] = readGlb(bytes).nodes as [GlbNode];
    expect(node.normals).toHaveLength(node.own.length);
    let least = 1;
    for (const [i, [a, b, c]] of node.own.entries()) {
      const face = cross(sub(b, a), sub(c, a));
      for (const n of node.normals[i] ?? []) {
        expect(Math.hypot(...n)).toBeCloseTo(1, 5);
        least = Math.min(least, Math.abs(dot(face, n)) / Math.hypot(...face));
      }
    }
    expect(least).toBeGreaterThan(0.7);
  });

  test('every triangle runs counter-clockwise seen from outside: its normals look out of its front', () => {
    // glTF 2.0, section 3.7.2.1, from memory: counter-clockwise triangles are front faces
    const [node] = readGlb(bytes).nodes as [GlbNode];
    const turned = node.own.filter(
      ([a, b, c], i) => dot(cross(sub(b, a), sub(c, a)), node.normals[i]?.[0] ?? [0, 0, 0]) < 0,
    );
    expect(turned).toHaveLength(0);
  });

  test('the same part gives the same bytes', () => {
    expect(toGlb(partSolid({ name, formed }))).toEqual(bytes);
  });
});

describe('the model of a carrier', () => {
  let bytes: Uint8Array;
  beforeAll(() => {
    bytes = toGlb(assemblySolid('carrier', object));
  });

  test('the validator of the format finds no error and no warning', async () => {
    expect(await validated(bytes)).toMatchObject({ numErrors: 0, numWarnings: 0, messages: [] });
  });

  test('one node a piece; pieces of one part share a mesh', () => {
    const { nodes, json } = readGlb(bytes);
    expect(nodes.map((n) => n.name)).toEqual(['body', 'end-1', 'end-2', 'handle']);
    expect(nodes[1]?.mesh).toBe(nodes[2]?.mesh);
    expect(json.meshes).toHaveLength(3);
  });

  test('every piece stands where the assembly says: corners of its panels are corners of its triangles', () => {
    for (const node of readGlb(bytes).nodes) {
      const placed = object.placed.find((p) => p.piece === node.name);
      const corners = node.triangles.flat();
      for (const panel of placed?.part.formed.panels ?? []) {
        const [x, y] = panel.shape[0] ?? [0, 0];
        const own = place3(panel.pose, [x, y, 0]);
        const [u, v, w] = placed === undefined ? [0, 0, 0] : place3(placed.pose, own);
        // x, y, z with z up become x, z, −y with y up
        const wanted = [u / 1000, w / 1000, -v / 1000];
        const nearest = Math.min(
          ...corners.map((p) => Math.hypot(...p.map((c, k) => c - (wanted[k] as number)))),
        );
        expect(nearest, `${node.name}.${panel.id}`).toBeLessThan(1e-6);
      }
    }
  });

  test('no piece is mirrored or stretched', () => {
    for (const { matrix } of readGlb(bytes).nodes) {
      const column = (k: number) => matrix.slice(4 * k, 4 * k + 3) as unknown as Vec3;
      expect(dot(cross(column(0), column(1)), column(2))).toBeCloseTo(1, 6);
      for (const k of [0, 1, 2]) expect(Math.hypot(...column(k))).toBeCloseTo(1, 6);
    }
  });

  test('its pieces together are as heavy as their sheet: volumes add up', () => {
    const total = readGlb(bytes).nodes.reduce((s, n) => s + volumeOf(n), 0);
    const wanted = object.placed.reduce((s, p) => s + p.part.formed.volume, 0);
    expect((total * 1e9) / wanted).toBeCloseTo(1, 2);
  });

  test('the same object gives the same bytes', () => {
    const again = objectOf(plannedCarrier('blind-rivet'));
    expect(toGlb(assemblySolid('carrier', again))).toEqual(bytes);
  });
});
