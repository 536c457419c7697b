// Random harvest carriers: a channel, two ends, a handle, sizes that follow each other by more or less than fits.
import fc from 'fast-check';

/** A job as a file would hold it. */
export type Job = Readonly<Record<string, unknown>>;

const hundredths = (min: number, max: number) =>
  fc.integer({ min: Math.round(min * 100), max: Math.round(max * 100) }).map((n) => n / 100);

const fastenings: readonly unknown[] = [
  'spot-weld',
  'blind-rivet',
  'screw',
  'plug-weld',
  { 'spot-weld': { count: 7 } },
  { 'blind-rivet': { diameter: 4, pitch: 25 } },
  { 'blind-rivet': { diameter: '1/8 in', count: 2 } },
];

/** Following by less where a difference is positive, by more where it is negative. */
const follow = (of: string, less: number) =>
  less === 0 ? { of } : less > 0 ? { of, less } : { of, plus: -less };

/** Most carriers go together; in some parts run into each other, stand apart, or are too small to fasten. */
export const carriers: fc.Arbitrary<Job> = fc
  .record({
    thickness: fc.constantFrom(0.6, 0.8, 1, 1.2, 1.5),
    ratio: fc.constantFrom(0.5, 1, 1.5, 2),
    length: hundredths(150, 500),
    width: hundredths(100, 300),
    height: hundredths(40, 80),
    hem: fc.constantFrom<object>(
      { type: 'closed', length: 12 },
      { type: 'open', length: 14, gap: 2 },
      { type: 'none' },
    ),
    tabs: hundredths(14, 24),
    // round reliefs are cut from the pattern but fill the formed part, which then stands clearer than is said;
    // square notches between tabs leave bends that taper too steeply for the folding routine of the tests
    tabbed: fc.constantFrom<object>(
      { on: ['base', 'north', 'south'], notch: 'slant' },
      { on: ['base'], notch: 'slant' },
      { on: ['base'], notch: 'square' },
    ),
    narrower: fc.oneof(hundredths(0.2, 3), hundredths(-3, 0.2)),
    shorter: fc.oneof(hundredths(0, 0.5), hundredths(-3, 3)),
    rise: hundredths(40, 110),
    crown: hundredths(30, 90),
    nip: fc.constantFrom<unknown>('auto', 0, 4),
    grip: hundredths(30, 60),
    depth: hundredths(10, 16),
    tab: hundredths(18, 40),
    by: fc.tuple(fc.constantFrom(...fastenings), fc.constantFrom(...fastenings)),
  })
  .map((c) => ({
    units: 'mm',
    stock: { material: 'mild-steel', thickness: c.thickness },
    bending: { rule: 'k-factor', k: 0.42, insideRadius: c.thickness * c.ratio },
    parts: [
      {
        name: 'body',
        family: 'hemmed-channel',
        length: c.length,
        width: c.width,
        height: c.height,
        hem: c.hem,
        endTabs: { length: c.tabs, ...c.tabbed },
      },
      {
        name: 'end',
        family: 'gusset-end',
        quantity: 2,
        width: follow('body.seatWidth', c.narrower),
        shoulderHeight: c.height - 2,
        height: c.height + c.rise,
        crownWidth: c.crown,
        cornerNip: c.nip,
      },
      {
        name: 'handle',
        family: 'handle',
        span: follow('body.insideLength', 2 * c.thickness + c.shorter),
        width: c.grip,
        sideDepth: c.depth,
        tabs: { length: c.tab },
      },
    ],
    joints: [
      { name: 'west', from: 'body.west', to: 'end-1.rim', by: c.by[0] },
      { name: 'east', from: 'body.east', to: 'end-2.rim', by: c.by[0] },
      { name: 'grip-west', from: 'end-1.crown', to: 'handle.west', by: c.by[1] },
      { name: 'grip-east', from: 'end-2.crown', to: 'handle.east', by: c.by[1] },
    ],
  }));
