import { rectangle } from '../../fold/draft/outline.js';
import type { Sheet, Step } from '../../fold/draft/tree.js';
import { asked, flange, hole, panel, type SeatSpec, site } from '../../fold/draft/verbs.js';
import { defineFamily, type NamedFamily } from '../family.js';
import { describe } from './describe.js';
import { across, type BracketParams, derived, values } from './params.js';

function build(p: BracketParams, sheet: Sheet): readonly Step[] {
  const { width, base, web, leg, angle } = p;
  const back = p.profile === 'z' ? -angle : angle;
  const base0 = panel('base', rectangle(base, width), [['base'], ['width']]);
  const legs =
    p.profile === 'angle'
      ? [flange('leg', ['base', 'east'], { height: leg, angle, by: ['leg'] })]
      : [
          flange('web', ['base', 'east'], { height: web, angle, by: ['web'] }),
          flange('leg', ['web', 'far'], { height: leg, angle: back, by: ['leg'] }),
        ];
  return [
    base0,
    ...legs,
    ...holes(p),
    ...sites(p),
    ...corner(p, sheet),
    asked('width', width, 'y'),
    ...sizes(p),
  ];
}

/** A row across the base and one across the last leg, as far from the free end of each. */
function holes(p: BracketParams): readonly Step[] {
  const { holes } = p;
  if (holes === null) return [];
  const { diameter, inset, edge } = holes;
  const size = ['holes', 'diameter'];
  const [end, side] = [['holes', 'inset'], edge === null ? size : ['holes', 'edge']];
  return across(p, holes).flatMap((y) => [
    hole('base', { at: [inset, y], diameter, by: { at: [end, side], diameter: size } }),
    hole('leg', { at: [y, p.leg - inset], diameter, by: { at: [side, end], diameter: size } }),
  ]);
}

/** Both faces of the base and of the last leg, told from their middles. */
function sites({ width, base, leg }: BracketParams): readonly Step[] {
  const seats: readonly SeatSpec[] = [
    { panel: 'base', at: [base / 2, width / 2], up: [1, 0] },
    { panel: 'leg', at: [width / 2, leg / 2], up: [0, 1] },
  ];
  return seats.flatMap((seat) => [
    site(seat.panel, [{ panel: seat.panel, face: 'marked' }], seat),
    site(`${seat.panel}-back`, [{ panel: seat.panel, face: 'unmarked' }], seat),
  ]);
}

/** An angle goes round a corner with the insides of both legs, told from where those meet, the middle of its width. */
function corner({ profile, base, width }: BracketParams, { thickness }: Sheet): readonly Step[] {
  if (profile !== 'angle') return [];
  const faces = ['base', 'leg'].map((id) => ({ panel: id, face: 'marked' as const }));
  return [site('inside', faces, { panel: 'base', at: [base - thickness, width / 2], up: [0, 1] })];
}

/** Legs between square bends are measured straight over them. */
function sizes({ profile, angle, base, web, leg }: BracketParams): readonly Step[] {
  if (angle !== 90) return [];
  const over = (...panels: readonly string[]) => ({ panels, bends: panels });
  const first = profile === 'angle' ? 'leg' : 'web';
  return [
    asked('base', base, 'x', { panels: ['base'], bends: [first] }),
    ...(profile === 'angle'
      ? [asked('leg', leg, 'z', over('leg'))]
      : [
          asked('web', web, 'z', { panels: ['web'], bends: ['web', 'leg'] }),
          asked('leg', leg, 'x', over('leg')),
        ]),
  ];
}

/**
 * Bracket with holes. An angle, a Z or a U to fix one thing to another, with a row of holes in its base and in its
 * last leg. x runs from the free end of the base to the first bend, y along the bends. Outside sizes unless a
 * parameter says otherwise.
 */
export const bracket: NamedFamily<'bracket', typeof values> = defineFamily({
  name: 'bracket',
  values,
  build,
  derived,
  describe,
});
