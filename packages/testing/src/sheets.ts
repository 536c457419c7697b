import fc from 'fast-check';

/** A bend rule of a job, every one that compensates, with constants where it takes some. */
export const bendings: readonly Readonly<Record<string, unknown>>[] = [
  { rule: 'k-factor', k: 0.42 },
  { rule: 'k-factor' },
  { rule: 'din-6935' },
  { rule: 'handbook', group: 'soft' },
  { rule: 'handbook', group: 'medium' },
  { rule: 'handbook', group: 'hard' },
  { rule: 'linear', perRadius: 0.5, perThickness: 1.5 },
];

/** Stock and bending of a job, mm. */
export interface RandomSheet {
  readonly stock: object;
  readonly bending: object;
}

/** Stock and bending of a random job: 0.4 to 3 mm of mild steel, inside radius a quarter to three times that. */
export const sheets: fc.Arbitrary<RandomSheet> = fc
  .record({
    thickness: fc.constantFrom(0.4, 0.5, 0.8, 1, 1.2, 1.5, 2, 3),
    ratio: fc.constantFrom(0.25, 0.5, 1, 1.6, 2, 3),
    bending: fc.constantFrom(...bendings),
  })
  .map(({ thickness, ratio, bending }) => ({
    stock: { material: 'mild-steel', thickness },
    bending: { ...bending, insideRadius: thickness * ratio },
  }));
