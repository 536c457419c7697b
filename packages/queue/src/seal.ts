import { createHash, createHmac, timingSafeEqual } from 'node:crypto';

/** What seals are made with: a secret that machines share, or null for a hash that anybody can make. */
export type Key = string | null;

/** The seal of something under a name: it fits nothing else and no other name. */
export function sealOf(key: Key, name: string, content: string | Uint8Array): string {
  const hash = key === null ? createHash('sha256') : createHmac('sha256', key);
  return hash.update(`${name.length}:${name}`).update(content).digest('base64url');
}

/** True when the seal is the one that was put on exactly this. */
export function isSealed(key: Key, name: string, content: string | Uint8Array, seal: unknown): boolean {
  const [own, given] = [Buffer.from(sealOf(key, name, content)), Buffer.from(String(seal))];
  return own.length === given.length && timingSafeEqual(own, given);
}
