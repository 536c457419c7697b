import { Inflate, strToU8, zlibSync } from 'fflate';
import { LONGEST_TEXT } from './job-text.js';

const LONGEST_LINK = 100_000; // characters of a fragment that are looked at

/** A job's text as the fragment of a link. */
export function linkOf(text: string): string {
  const packed = zlibSync(strToU8(text), { level: 9 });
  const binary = Array.from(packed, (b) => String.fromCharCode(b)).join('');
  return `#job=${btoa(binary).replaceAll('+', '-').replaceAll('/', '_').replace(/=+$/, '')}`;
}

/** What a fragment carries: a job's text, or the name of the words for why there is none to be read. */
export type Linked = { readonly text: string } | { readonly unread: 'badLink' | 'emptyLink' };

/** What a link carries; null for the fragment of something else. */
export function linked(fragment: string): Linked | null {
  if (!fragment.startsWith('#job=')) return null;
  if (fragment === '#job=') return { unread: 'emptyLink' };
  if (fragment.length > LONGEST_LINK) return { unread: 'badLink' };
  try {
    const binary = atob(fragment.slice(5).replaceAll('-', '+').replaceAll('_', '/'));
    const bytes = unpacked(Uint8Array.from(binary, (c) => c.charCodeAt(0)));
    const text = new TextDecoder('utf-8', { fatal: true }).decode(bytes);
    return text.trim() === '' ? { unread: 'emptyLink' } : { text };
  } catch {
    return { unread: 'badLink' };
  }
}

/** Unpack, but not more than a job may have: a small link can hold very much of the same. */
function unpacked(bytes: Uint8Array): Uint8Array {
  const pieces: Uint8Array[] = [];
  let length = 0;
  const inflate = new Inflate((piece) => {
    length += piece.length;
    if (length > LONGEST_TEXT) throw new RangeError('too long');
    pieces.push(piece);
  });
  const body = bytes.subarray(2, bytes.length - 4); // the wrapping of zlib
  for (let at = 0; at < body.length; at += 1024)
    inflate.push(body.subarray(at, at + 1024), at + 1024 >= body.length);
  const whole = new Uint8Array(length);
  let at = 0;
  for (const p of pieces) {
    whole.set(p, at);
    at += p.length;
  }
  const sum = bytes.subarray(-4).reduce((n, byte) => n * 256 + byte, 0);
  if (sum !== adler32(whole)) throw new RangeError('not whole');
  return whole;
}

/** The sum at the end of what is packed, by RFC 1950. */
function adler32(bytes: Uint8Array): number {
  let [a, b] = [1, 0];
  for (const byte of bytes) {
    a = (a + byte) % 65521;
    b = (b + a) % 65521;
  }
  return b * 65536 + a;
}
