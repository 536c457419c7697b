import type { Sheet } from '../../fold/draft/tree.js';
import { type Given, value as v } from '../../schema/value.js';
import { cornerGap } from '../corner-values.js';
import { type DerivedSize, derivedSize } from '../derived.js';

/** A channel-shaped handle with tabs. Outside sizes, mm. */
export const values = {
  span: v.size('over the outside faces of the folded tabs'),
  width: v.size('over the outside faces of the sides'),
  sideDepth: v.size('depth of the sides, over the hem'),
  hem: v.hem('hem along the edge of both sides, folded in; leave out for none'),
  tabs: v.group('tabs at both ends, folded down', {
    length: v.size('outside length of the tabs'),
    gap: cornerGap('kept between the tabs and the sides at the corners'),
  }),
  feet: v.maybe(
    v.group('feet turned outwards at the ends of the tabs, to stand on a face; leave out for none', {
      length: v.size('how far they stand out of the tabs'),
    }),
  ),
};

export type HandleParams = Given<typeof values>;

export function derived({ span }: HandleParams, { thickness }: Sheet): readonly DerivedSize[] {
  return [derivedSize('insideSpan', span - 2 * thickness, 'span', 'between the inside faces of the tabs')];
}
