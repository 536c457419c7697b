import { PROGRAM } from '@tinwright/core';

/**
 * True for a file that this program wrote and nobody changed since in a way that shows: a PDF whose producer it is and
 * that nothing was appended to, HTML it generated, an SVG it signed.
 */
export function isOwnFile(bytes: Uint8Array): boolean {
  const text = new TextDecoder('latin1').decode(bytes);
  const mark = `${PROGRAM.name} `;
  if (text.startsWith('%PDF-')) return producer(text).startsWith(mark) && text.split('%%EOF').length === 2;
  if (text.startsWith('<!DOCTYPE html>'))
    return text.slice(0, 1000).includes(`<meta name="generator" content="${mark}`);
  return text.slice(-100).includes(`<!-- ${mark}`);
}

/** The producer a PDF names, which it may keep in an object of its own; empty without one. */
function producer(pdf: string): string {
  const [, direct, object] = /\/Producer (?:\(([^)]*)\)|(\d+) 0 R)/.exec(pdf) ?? [];
  if (object === undefined) return direct ?? '';
  return new RegExp(`\\n${object} 0 obj\\s*\\(([^)]*)\\)`).exec(pdf)?.[1] ?? '';
}

/** Text with the program's name and version at its end, for XML files that stand alone. */
export const signed = (xml: string): string => `${xml.trimEnd()}\n<!-- ${PROGRAM.mark} -->\n`;
