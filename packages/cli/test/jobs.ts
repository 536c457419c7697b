/** Lines 1 to 9 of a job: 1 mm galvanised steel, K 0.42, inside radius 1 mm. */
export const HEAD = `units: mm
stock:
  material: galvanised-steel
  thickness: 1.0
bending:
  rule: k-factor
  k: 0.42
  insideRadius: 1.0
parts:
`;

/** A strip bent twice; lines 10 to 14 behind the head. */
export const STRIP = `  - name: bracket
    family: bent-strip
    width: 40
    legs: [30, 60, 30]
    angles: [90, 90]
`;

/** A job with one strip, with some of its text replaced. @throws Error when the text is not there */
export function stripJob(...changes: readonly (readonly [from: string, to: string])[]): string {
  return changes.reduce((text, [from, to]) => {
    if (!text.includes(from)) throw new Error(`"${from}" is not in the job`);
    return text.replace(from, () => to);
  }, HEAD + STRIP);
}

/** A job with one part of a family, as JSON: also YAML. */
export function partJob(family: string, parameters: object, head: object = {}): string {
  return JSON.stringify({
    units: 'mm',
    stock: { material: 'galvanised-steel', thickness: 1 },
    bending: { rule: 'k-factor', k: 0.42, insideRadius: 1 },
    ...head,
    parts: [{ name: 'tray', family, ...parameters }],
  });
}
