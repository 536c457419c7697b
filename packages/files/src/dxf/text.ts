/** Signs that DXF text has its own codes for. */
const CODES: readonly (readonly [RegExp, string])[] = [
  [/[\p{Cc}\p{Zl}\p{Zp}]+/gu, ' '], // a line break would start new group codes
  [/%(?=%)/g, '% '], // two would start a code
  [/°/g, '%%d'],
  [/[Ø⌀]/g, '%%c'],
  [/±/g, '%%p'],
];

const coded = (text: string) => CODES.reduce((t, [sign, code]) => t.replace(sign, code), text);

/** Text value for R2000: one line of ASCII, other characters by their number. */
export function dxfText(text: string): string {
  return coded(text).replace(/[^ -~]/gu, (c) =>
    [...Array(c.length).keys()]
      .map((i) => `\\U+${c.charCodeAt(i).toString(16).toUpperCase().padStart(4, '0')}`)
      .join(''),
  );
}

/** Text value for R12: one line of ASCII, accents dropped, `?` for what is left. */
export function dxfTextR12(text: string): string {
  return coded(text)
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .replace(/[^ -~]/gu, '?');
}
