import { Inflate, strFromU8, strToU8, zlibSync } from 'fflate';
import { LONGEST_TEXT } from './job-text.js';

const LONGEST_LINK = 100_000; // characters of a fragment that are looked at

/** A job's text as the fragment of a link. */
export function linkOf(text: string): string {
  const packed = zlibSync(strToU8(text), { level: 9 });
  const binary = Array.from(packed, (b) => String.fromCharCode(b)).join('');
  return `#job=${btoa(binary).replaceAll('+', '-').replaceAll('/', '_').replace(/=+$/, '')}`;
}

/** The job a fragment carries; null where it carries none, 'bad' where nobody can read it. */
export function textOf(fragment: string): string | null | 'bad' {
  if (!fragment.startsWith('#job=')) return null;
  if (fragment.length > LONGEST_LINK) return 'bad';
  try {
    const binary = atob(fragment.slice(5).replaceAll('-', '+').replaceAll('_', '/'));
    return strFromU8(unpacked(Uint8Array.from(binary, (c) => c.charCodeAt(0))));
  } catch {
    return 'bad';
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
  return whole;
}
