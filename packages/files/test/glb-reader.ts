// Reads a binary glTF by the published layout: header, JSON chunk, binary chunk (glTF 2.0 specification, section 4.4.1,
// from memory).

type Vec3 = readonly [number, number, number];

/** A node of the scene with the triangles of its mesh, moved by its matrix. Metres. */
export interface GlbNode {
  readonly name: string;
  readonly matrix: readonly number[];
  readonly mesh: number;
  readonly triangles: readonly (readonly [Vec3, Vec3, Vec3])[];
  /** Of the corners, in the mesh's own frame. */
  readonly normals: readonly (readonly [Vec3, Vec3, Vec3])[];
  /** Corners in the mesh's own frame. */
  readonly own: readonly (readonly [Vec3, Vec3, Vec3])[];
}

interface Gltf {
  readonly asset: Readonly<Record<string, unknown>>;
  readonly scene?: number;
  readonly scenes: readonly { readonly nodes: readonly number[]; readonly name?: string }[];
  readonly nodes: readonly {
    readonly name?: string;
    readonly mesh?: number;
    readonly matrix?: readonly number[];
    readonly translation?: Vec3;
    readonly rotation?: readonly [number, number, number, number];
    readonly scale?: Vec3;
  }[];
  readonly meshes: readonly {
    readonly name?: string;
    readonly primitives: readonly {
      readonly attributes: Readonly<Record<string, number>>;
      readonly indices?: number;
      readonly mode?: number;
    }[];
  }[];
  readonly accessors: readonly {
    readonly bufferView: number;
    readonly byteOffset?: number;
    readonly componentType: number;
    readonly count: number;
    readonly type: string;
  }[];
  readonly bufferViews: readonly {
    readonly byteOffset?: number;
    readonly byteStride?: number;
    readonly byteLength: number;
  }[];
}

/** The JSON of a file and its nodes. @throws Error where the layout is not kept */
export function readGlb(bytes: Uint8Array): { readonly json: Gltf; readonly nodes: readonly GlbNode[] } {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const word = (at: number) => view.getUint32(at, true);
  if (word(0) !== 0x46546c67) throw new Error('no glTF');
  if (word(4) !== 2) throw new Error(`version ${word(4)}`);
  if (word(8) !== bytes.byteLength) throw new Error('the header says another length');
  const jsonEnd = 20 + word(12);
  const json = JSON.parse(new TextDecoder().decode(bytes.subarray(20, jsonEnd))) as Gltf;
  const bin = jsonEnd + 8; // length and kind of the second chunk
  const vectors = (index: number): Vec3[] => {
    const accessor = json.accessors[index];
    const chunk = json.bufferViews[accessor?.bufferView ?? -1];
    if (accessor?.type !== 'VEC3' || accessor.componentType !== 5126 || chunk === undefined)
      throw new Error('not three floats');
    const start = bin + (chunk.byteOffset ?? 0) + (accessor.byteOffset ?? 0);
    const stride = chunk.byteStride ?? 12;
    return Array.from({ length: accessor.count }, (_, i) => {
      const at = start + stride * i;
      return [view.getFloat32(at, true), view.getFloat32(at + 4, true), view.getFloat32(at + 8, true)];
    });
  };
  const nodes = (json.scenes[json.scene ?? 0]?.nodes ?? []).map((index): GlbNode => {
    const node = json.nodes[index];
    const primitives = json.meshes[node?.mesh ?? -1]?.primitives ?? [];
    if (primitives.some((p) => p.indices !== undefined || (p.mode ?? 4) !== 4))
      throw new Error('not plain triangles');
    const own = primitives.flatMap((p) => threes(vectors(p.attributes.POSITION ?? -1)));
    const normals = primitives.flatMap((p) => threes(vectors(p.attributes.NORMAL ?? -1)));
    const matrix = node?.matrix ?? composed(node);
    const triangles = own.map((t) => t.map((p) => by(matrix, p)) as unknown as GlbNode['own'][number]);
    return { name: node?.name ?? '', matrix, mesh: node?.mesh ?? -1, triangles, normals, own };
  });
  return { json, nodes };
}

const threes = (list: readonly Vec3[]): GlbNode['own'] =>
  Array.from(
    { length: list.length / 3 },
    (_, i) => list.slice(3 * i, 3 * i + 3) as unknown as GlbNode['own'][number],
  );

/** Column-major matrix of translation, rotation (a quaternion) and scale. */
function composed(node: Gltf['nodes'][number] | undefined): readonly number[] {
  const [x, y, z] = node?.translation ?? [0, 0, 0];
  const [i, j, k, w] = node?.rotation ?? [0, 0, 0, 1];
  const [a, b, c] = node?.scale ?? [1, 1, 1];
  const columns = [
    [1 - 2 * (j * j + k * k), 2 * (i * j + k * w), 2 * (i * k - j * w)].map((v) => v * a),
    [2 * (i * j - k * w), 1 - 2 * (i * i + k * k), 2 * (j * k + i * w)].map((v) => v * b),
    [2 * (i * k + j * w), 2 * (j * k - i * w), 1 - 2 * (i * i + j * j)].map((v) => v * c),
  ];
  return [...columns.flatMap((v) => [...v, 0]), x, y, z, 1];
}

function by(m: readonly number[], [x, y, z]: Vec3): Vec3 {
  const row = (r: number) =>
    (m[r] as number) * x + (m[r + 4] as number) * y + (m[r + 8] as number) * z + (m[r + 12] as number);
  return [row(0), row(1), row(2)];
}
