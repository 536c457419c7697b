import { type AnyFamily, defineFamily, flange, need, panel, rectangle, setback } from '@tinwright/core';

interface StripParams {
  readonly leg: number;
  readonly width: number;
}

/** A strip with one square bend in its middle. Legs outside, mm. */
export const STRIP_FAMILY: AnyFamily = defineFamily<StripParams>({
  name: 'test-strip',
  params: (k) => ({ leg: k.size(), width: k.size() }),
  check: ({ leg }, sheet) => need(leg > setback(sheet), ['leg'], 'the bend takes up more'),
  build: ({ leg, width }) => [
    panel('leg-1', rectangle(leg, width)),
    flange('leg-2', ['leg-1', 'east'], { height: leg }),
  ],
  describe: {
    title: 'test strip',
    summary: 'A strip with one square bend in its middle, to be measured. x runs along the first leg.',
    sizes: { leg: 'each, outside', width: 'along the bend' },
    example: { leg: 60, width: 50 },
  },
});
