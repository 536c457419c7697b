import { type Buffer, Document, type Mesh as GltfMesh, type mat4, WebIO } from '@gltf-transform/core';
import type { Assembly, Formed, Pose } from '@tinwright/core';
import { meshOf, toGltf } from './mesh.js';

/** What `asset.generator` says: ours, so that the library's version does not change the bytes. */
const GENERATOR = 'Tinwright';
const GREY = 0.72;

/** A formed part as binary glTF 2.0: metres, +Y up, one node. Same part, same bytes. */
export function partGlb(name: string, formed: Formed): Promise<Uint8Array> {
  const { document, buffer } = empty();
  const node = document.createNode(name).setMesh(addMesh(document, buffer, name, formed));
  document.createScene(name).addChild(node);
  return new WebIO().writeBinary(document);
}

/** The assembled object as binary glTF 2.0: a node for every piece, a mesh for every part. */
export function assemblyGlb(name: string, { placed }: Assembly): Promise<Uint8Array> {
  const { document, buffer } = empty();
  const scene = document.createScene(name);
  const meshes = new Map<string, GltfMesh>();
  for (const { piece, part, pose } of placed) {
    const mesh = meshes.get(part.name) ?? addMesh(document, buffer, part.name, part.formed);
    meshes.set(part.name, mesh);
    scene.addChild(document.createNode(piece).setMesh(mesh).setMatrix(matrixOf(pose)));
  }
  return new WebIO().writeBinary(document);
}

function empty(): { readonly document: Document; readonly buffer: Buffer } {
  const document = new Document();
  document.getRoot().getAsset().generator = GENERATOR;
  return { document, buffer: document.createBuffer() };
}

function addMesh(document: Document, buffer: Buffer, name: string, formed: Formed): GltfMesh {
  const { positions, normals } = meshOf(formed);
  const accessor = (array: Float32Array<ArrayBuffer>) =>
    document.createAccessor().setType('VEC3').setArray(array).setBuffer(buffer);
  const sheet = document
    .createMaterial('sheet')
    .setBaseColorFactor([GREY, GREY, GREY, 1])
    .setMetallicFactor(0.6)
    .setRoughnessFactor(0.5);
  const primitive = document
    .createPrimitive()
    .setAttribute('POSITION', accessor(positions))
    .setAttribute('NORMAL', accessor(normals))
    .setMaterial(sheet);
  return document.createMesh(name).addPrimitive(primitive);
}

/** Column-major. The part's axes and the scene's are both turned: column k is where the turned axis k goes. */
function matrixOf({ x, y, z, origin }: Pose): mat4 {
  const unit = (v: readonly [number, number, number]) => toGltf([v[0] * 1000, v[1] * 1000, v[2] * 1000]);
  const [right, up, back] = [unit(x), unit(z), unit([-y[0], -y[1], -y[2]])];
  return [...right, 0, ...up, 0, ...back, 0, ...toGltf(origin), 1];
}
