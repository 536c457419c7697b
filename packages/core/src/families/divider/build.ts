import { nip, rectangle } from '../../fold/draft/outline.js';
import { slot } from '../../fold/draft/slot.js';
import type { Outline, Sheet, Step } from '../../fold/draft/tree.js';
import { asked, flange, panel, type SeatSpec, site } from '../../fold/draft/verbs.js';
import { defineFamily, type NamedFamily } from '../family.js';
import { ENDS } from '../walls.js';
import { describe } from './describe.js';
import { check, type DividerParams, nipLeg, type Slots, slotSize, values } from './params.js';

function build(p: DividerParams, sheet: Sheet): readonly Step[] {
  const { tabs } = p;
  const clear = nipLeg(p, sheet);
  return [
    panel('plate', tabs === null ? nipped(p, clear) : rectangle(p.length, p.height), [
      ['length'],
      ['height'],
    ]),
    ...(p.slots === null ? [] : cuts(p, p.slots, sheet)),
    ...(tabs === null
      ? []
      : ENDS.map((end) =>
          // the tab's x runs up at the west end, down at the east end
          flange(`tab-${end}`, ['plate', end], {
            height: tabs.length,
            by: ['tabs', 'length'],
            inset: end === 'west' ? [clear, 0] : [0, clear],
          }),
        )),
    ...ENDS.map((end) => endSite(p, end, sheet)),
    ...(p.slots === null ? [] : slotSites(p, p.slots, sheet)),
    asked('length', p.length, 'x'),
    asked('height', p.height, 'y', { panels: ['plate'] }),
    ...(tabs === null ? [] : [asked('tabs.length', tabs.length, 'z', { panels: ['plate', 'tab-west'] })]),
  ];
}

const nipped = ({ length, height }: DividerParams, leg: number): Outline =>
  nip(nip(rectangle(length, height), ['west', 'south'], leg, 'nip-west'), ['south', 'east'], leg, 'nip-east');

function cuts(p: DividerParams, slots: Slots, sheet: Sheet): readonly Step[] {
  const [width, depth] = slotSize(p, slots, sheet);
  const [edge, y] = slots.from === 'top' ? ['north', p.height] : ['south', 0];
  return slots.at.map((x, i) =>
    slot('plate', {
      edge,
      at: [x, y],
      width,
      depth,
      by: { at: ['slots', 'at', i], depth: ['slots', 'clearance'] },
    }),
  );
}

/** The outside of a tab, or the end edge itself; the divider stands on its lower edge, its middle on the point. */
function endSite(p: DividerParams, end: 'west' | 'east', { thickness }: Sheet): Step {
  const middle = thickness / 2;
  if (p.tabs === null) {
    const out = end === 'west' ? -1 : 1;
    const at = [end === 'west' ? 0 : p.length, 0] as const;
    return site(end, [], { panel: 'plate', looks: [out, 0], at, up: [0, 1], lift: middle }, p.length);
  }
  const panelId = `tab-${end}`;
  const seat: SeatSpec =
    end === 'west'
      ? { panel: panelId, at: [0, middle], up: [1, 0] }
      : { panel: panelId, at: [p.height, middle], up: [-1, 0] };
  return site(end, [{ panel: panelId, face: 'unmarked' }], seat, p.length);
}

/**
 * Where others cross: the ends of their slots come together. A divider with slots from the top looks along its
 * length there, one with slots from the bottom looks off its face, so that they stand square to each other.
 */
function slotSites(p: DividerParams, { at, from }: Slots, { thickness }: Sheet): readonly Step[] {
  // both stand on the same floor, so their middles meet
  const looks = from === 'top' ? { looks: [1, 0] as const, lift: thickness / 2 } : { lift: -thickness / 2 };
  return at.map((x, i) =>
    site(`slot-${i + 1}`, [], { panel: 'plate', at: [x, p.height / 2], up: [0, 1], ...looks }),
  );
}

/**
 * Divider for a box. A flat divider that stands in a box, with tabs at its ends to fasten it by and slots where
 * others cross it. x runs along the length, y up. Outside sizes unless a parameter says otherwise.
 */
export const divider: NamedFamily<'divider', typeof values> = defineFamily({
  name: 'divider',
  values,
  check,
  build,
  describe,
});
