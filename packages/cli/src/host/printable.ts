import { safeText, shownText } from '@tinwright/core/internal';
import type { Host } from './console.js';

const OWN_COLOUR = new RegExp(`(\\n|${String.fromCharCode(27)}\\[(?:0|1|31|33|34)m)`);
const LINE = /(\n)/;

/**
 * A host that prints no character which moves the cursor, changes colours or turns the direction of text, wherever it
 * came from: a file's name, a shop's, a module's words. In JSON they are escaped, so that programs read them as they are.
 */
export function printable(host: Host, json: boolean): Host {
  const clean = (text: string, kept: RegExp) =>
    text
      .split(kept)
      .map((part, i) => (i % 2 === 1 ? part : json ? escaped(part) : safeText(part)))
      .join('');
  return {
    ...host,
    out: (text) => host.out(clean(text, host.colour && !json ? OWN_COLOUR : LINE)),
    err: (text) => host.err(clean(text, LINE)),
  };
}

const escaped = (text: string) =>
  shownText(text, (c) =>
    c
      .split('')
      .map((unit) => `\\u${unit.charCodeAt(0).toString(16).padStart(4, '0')}`)
      .join(''),
  );
