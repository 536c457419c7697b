import type { AnyFamily } from '@tinwright/core';
import { defineFamily, flange, panel, rectangle, value } from '@tinwright/core/family';

/** A strip with one square bend in its middle. Legs outside, mm. */
export const STRIP_FAMILY: AnyFamily = defineFamily({
  name: 'test-strip',
  values: { leg: value.size('each, outside'), width: value.size('along the bend') },
  build: ({ leg, width }) => [
    panel('leg-1', rectangle(leg, width), [['leg'], ['width']]),
    flange('leg-2', ['leg-1', 'east'], { height: leg, by: ['leg'] }),
  ],
  describe: {
    title: 'test strip',
    summary: 'A strip with one square bend in its middle, to be measured. x runs along the first leg.',
    example: { leg: 60, width: 50 },
  },
});
