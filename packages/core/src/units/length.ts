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
 * Read a length. A plain number is in `unit`; a string may carry its own unit.
 * Accepts decimals, inch fractions, and feet followed by inches. Negative lengths are not read.
 * Returns millimetres; range is the caller's business.
 */
export function parseLength(value: number | string, unit: Unit): ParsedLength {
  if (typeof value === 'number') return finite(value * (FACTORS[unit] as number));
  const text = value
    .slice(0, LONGEST + 1)
    .replace(VULGAR, (c) => ` ${c.normalize('NFKD').replace('\u2044', '/')}`)
    .trim();
  if (text.length > LONGEST)
    return { ok: false, why: `"${text.slice(0, 20)}…" is too long for a length; ${EXAMPLES}` };
  const parts = quantities(text);
  if (parts === null) return { ok: false, why: `"${text}" is not a length; ${EXAMPLES}` };
  const [first, second] = parts;
  if (first === undefined) return { ok: false, why: `an empty text is not a length; ${EXAMPLES}` };
  if (second === undefined) return finite(first.amount * (FACTORS[first.unit ?? unit] as number));
  const feet = first.unit === 'ft' || first.unit === "'";
  const inches = second.unit === 'in' || second.unit === '"';
  if (parts.length === 2 && feet && inches)
    return finite(first.amount * 12 * MM_PER_INCH + second.amount * MM_PER_INCH);
  return { ok: false, why: `"${text}" mixes units; only feet followed by inches go together` };
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
    const [all, whole, top, bottom, onlyTop, onlyBottom, plain, unit] = m;
    const part = (n: string | undefined, d: string | undefined) =>
      n === undefined ? 0 : Number(n) / Number(d);
    found.push({
      amount: Number(whole ?? 0) + part(top, bottom) + part(onlyTop, onlyBottom) + Number(plain ?? 0),
      unit,
    });
    rest = rest.slice(all.length).trim();
  }
  return found;
}

function finite(mm: number): ParsedLength {
  return Number.isFinite(mm) ? { ok: true, mm } : { ok: false, why: `${mm} is not a finite length` };
}
