/** What the tests use of the glTF validator. */
declare module 'gltf-validator' {
  export function validateBytes(data: Uint8Array, options?: object): Promise<unknown>;
}
