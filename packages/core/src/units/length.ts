/** The two unit systems a job can be written in. */
export type Unit = 'mm' | 'in';

/** Millimetres in one inch, exact since 1959. */
export const MM_PER_INCH = 25.4;

/** What a length string turned into: millimetres, or why it is not a length. */
export type ParsedLength =
  | { readonly ok: true; readonly mm: number }
  | { readonly ok: false; readonly why: string };

const FACTORS: Readonly<Record<string, number>> = {
  mm: 1,
  cm: 10,
  m: 1000,
  in: MM_PER_INCH,
  '"': MM_PER_INCH,
  ft: 12 * MM_PER_INCH,
  "'": 12 * MM_PER_INCH,
};

const VULGAR = /([¼½¾⅐-⅞])/g;
// one quantity: whole or decimal number, fraction, or whole number with fraction ("15 1/2", "15-1/2")
const QUANTITY =
  /^(?:(\d+)(?:\s+|\s*-\s*)(\d+)\/(\d+)|(\d+)\/(\d+)|(\d+(?:\.\d*)?|\.\d+))\s*(mm|cm|m|in|ft|"|')?/;
const EXAMPLES = 'write it like 12.5 mm, 4 cm, 3/4 in, 15-1/2" or 1 ft 3 1/2 in';
const LONGEST = 40;

/**
 * Read a length. A plain number is in `unit`; a string may carry its own unit: decimals, fractions of an inch, feet
 * followed by inches. Negative lengths are not read.
 * @returns millimetres, or why it is not a length; no range is checked
 */
export function parseLength(value: number | string, unit: Unit): ParsedLength {
  if (typeof value === 'number') return finite(value * (FACTORS[unit] as number), value);
  const text = value.trim();
  if (text === '') return refuse(`an empty text is not a length; ${EXAMPLES}`);
  if (text.length > LONGEST) return refuse(`"${text.slice(0, 20)}…" is too long for a length; ${EXAMPLES}`);
  if (/\d,\d/.test(text)) return refuse(`"${text}" is not a length (it has a comma); ${EXAMPLES}`);
  const gauge = /^(?:gauge\s*|#)?(\d{1,2})\s*(?:ga|gauge)?$/i.exec(text);
  if (gauge !== null && /ga|#/i.test(text))
    return refuse(`"${text}" is a gauge, not a length; write gauge: ${gauge[1]} in place of the thickness`);
  const improper = /(\d+)[\s-]+(\d+)\/(\d+)/.exec(text);
  if (improper !== null && Number(improper[3]) > 0 && Number(improper[2]) >= Number(improper[3]))
    return refuse(`"${text}" has a fraction of 1 or more after a whole number; ${meant(improper)}`);
  const parts = quantities(plain(text));
  if (parts === null) return refuse(`"${text}" is not a length; ${EXAMPLES}`);
  const [first, second] = parts as readonly [Quantity, Quantity?];
  if (second === undefined) return finite(first.amount * (FACTORS[first.unit ?? unit] as number), text);
  const feet = first.unit === 'ft' || first.unit === "'";
  const inches = second.unit === 'in' || second.unit === '"';
  if (parts.length === 2 && feet && inches)
    return finite(first.amount * 12 * MM_PER_INCH + second.amount * MM_PER_INCH, text);
  if (parts.every((p) => p.unit === undefined)) return refuse(`"${text}" is not a length; ${EXAMPLES}`);
  return refuse(`"${text}" mixes units; only feet followed by inches go together`);
}

const refuse = (why: string): ParsedLength => ({ ok: false, why });

/** A whole number and a fraction that is none, put right: `12 1/4` for `11 10/8`. */
function meant([, whole, top, bottom]: readonly (string | undefined)[]): string {
  const [w, t, b] = [Number(whole), Number(top), Number(bottom)];
  const common = (x: number, y: number): number => (y === 0 ? x : common(y, x % y));
  const [rest, by] = [t % b, common(t % b, b)];
  return `write ${w + Math.floor(t / b)}${rest === 0 ? '' : ` ${rest / by}/${b / by}`} if that is meant`;
}

const WORDS: readonly (readonly [RegExp, string])[] = [
  [/(?:millimet(?:er|re)s?)/g, 'mm'],
  [/(?:centimet(?:er|re)s?)/g, 'cm'],
  [/(?:inch(?:es)?)/g, 'in'],
  [/(?:feet|foot)/g, 'ft'],
];

/** Small letters, straight marks, vulgar fractions written out, units by their short names, a doubled mark once. */
function plain(text: string): string {
  const spelled = text.replace(VULGAR, (c) => ` ${c.normalize('NFKD').replace('\u2044', '/')}`);
  const marks = spelled.toLowerCase().replace(/[″”]/g, '"').replace(/[′’]/g, "'").replace(/""$/, '"');
  return WORDS.reduce((t, [word, unit]) => t.replace(word, unit), marks).trim();
}

interface Quantity {
  readonly amount: number;
  readonly unit: string | undefined;
}

function quantities(text: string): readonly Quantity[] | null {
  const found: Quantity[] = [];
  for (let rest = text; rest !== ''; ) {
    const m = QUANTITY.exec(rest);
    if (m === null) return null;
    const [all, whole, top, bottom, onlyTop, onlyBottom, decimal, unit] = m;
    const part = (n: string | undefined, d: string | undefined) =>
      n === undefined ? 0 : Number(n) / Number(d);
    const amount = Number(whole ?? 0) + part(top, bottom) + part(onlyTop, onlyBottom) + Number(decimal ?? 0);
    found.push({ amount, unit });
    // feet and inches may be tied with a dash: 1'-3 1/2"
    rest = rest
      .slice(all.length)
      .trim()
      .replace(unit === "'" || unit === 'ft' ? /^-\s*/ : /^$/, '');
  }
  return found;
}

function finite(mm: number, given: number | string): ParsedLength {
  return Number.isFinite(mm) ? { ok: true, mm } : refuse(`${given} is not a finite length`);
}
