import type { Bytes } from '../out-file.js';

const MAGIC = 0x46546c67; // "glTF"
const JSON_CHUNK = 0x4e4f534a; // "JSON"
const BINARY_CHUNK = 0x004e4942; // "BIN"

/** What a binary glTF holds: a document and the numbers its buffer views lie in. */
export interface Gltf {
  readonly document: object;
  readonly binary: Uint8Array;
}

/** The container of binary glTF 2.0 (specification, section 4.4): header, then chunks filled up to four bytes. */
export function container({ document, binary }: Gltf): Bytes {
  const json = filled(new TextEncoder().encode(JSON.stringify(document)), 0x20);
  const numbers = filled(binary, 0);
  const bytes = new Uint8Array(12 + 8 + json.length + 8 + numbers.length);
  const view = new DataView(bytes.buffer);
  const words = (at: number, ...values: readonly number[]) => {
    for (const [i, v] of values.entries()) view.setUint32(at + 4 * i, v, true);
  };
  words(0, MAGIC, 2, bytes.length, json.length, JSON_CHUNK);
  bytes.set(json, 20);
  words(20 + json.length, numbers.length, BINARY_CHUNK);
  bytes.set(numbers, 28 + json.length);
  return bytes;
}

function filled(bytes: Uint8Array, filler: number): Uint8Array {
  const whole = new Uint8Array(Math.ceil(bytes.length / 4) * 4).fill(filler);
  whole.set(bytes);
  return whole;
}
