const DECIMAL = /^[+-]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?$/i;

/** A decimal number as it is typed, `12.5` or `1e3`; null for anything else, such as `0x10` or nothing. */
export function plainDecimal(text: string): number | null {
  const value = Number(text);
  return DECIMAL.test(text.trim()) && Number.isFinite(value) ? value : null;
}
