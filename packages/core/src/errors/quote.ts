const HIDDEN = /[\p{Cc}\p{Cf}\p{Zl}\p{Zp}\p{Co}\p{Cs}]/gu;
const LONGEST = 40;

/** Text with its control and direction-changing characters as `show` has them, one at a time. */
export const shownText = (text: string, show: (character: string) => string): string =>
  text.replace(HIDDEN, show);

/** Text that is safe to print on one line: control and direction-changing characters by their number. */
export function safeText(text: string): string {
  return shownText(text, (c) => `U+${(c.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, '0')}`);
}

/** Somebody's text in quotes, safe to print, cut off when long. */
export function quoted(text: string): string {
  const letters = [...text];
  return `"${safeText(letters.slice(0, LONGEST).join(''))}${letters.length > LONGEST ? '…' : ''}"`;
}

/** True when a text holds characters that do not print. */
export function hasHidden(text: string): boolean {
  return text.search(HIDDEN) >= 0;
}
