import type { Bytes } from '../out-file.js';

const MAGIC = 0x46546c67; // "glTF"
const JSON_CHUNK = 0x4e4f534a; // "JSON"
const BINARY_CHUNK = 0x004e4942; // "BIN"

/** What a binary glTF holds: a document and the numbers its buffer views lie in, one array behind the other. */
export interface Gltf {
  readonly document: object;
  readonly arrays: readonly Float32Array[];
}

/** The container of binary glTF 2.0 (specification, section 4.4): header, then chunks filled up to four bytes. */
export function container({ document, arrays }: Gltf): Bytes {
  const json = new TextEncoder().encode(JSON.stringify(document));
  const said = Math.ceil(json.length / 4) * 4;
  const numbers = arrays.reduce((sum, a) => sum + a.byteLength, 0);
  const bytes = new Uint8Array(12 + 8 + said + 8 + numbers);
  const view = new DataView(bytes.buffer);
  const words = (at: number, ...values: readonly number[]) => {
    for (const [i, v] of values.entries()) view.setUint32(at + 4 * i, v, true);
  };
  words(0, MAGIC, 2, bytes.length, said, JSON_CHUNK);
  bytes.set(json, 20);
  bytes.fill(0x20, 20 + json.length, 20 + said);
  words(20 + said, numbers, BINARY_CHUNK);
  let at = 28 + said;
  for (const array of arrays)
    for (const v of array) {
      view.setFloat32(at, v, true);
      at += 4;
    }
  return bytes;
}
