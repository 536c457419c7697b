// A press brake asked whether it makes a bend, with every punch over every die that is wide enough.
import type { Die, Horns, Press, Punch } from '@tinwright/shop';
import type { Hinge } from '../body.js';
import { endFirst, lifts } from '../lift.js';
import { box, EVERYWHERE, type PressTools, pressMoment, pressTools, type Tool } from '../machine.js';
import { STAY } from '../rigid.js';
import { standingFor } from '../standing.js';
import type { Span } from '../step.js';
import { cover, type RackOf } from './cover.js';
import {
  type Asked,
  DEGREE,
  ends,
  lifted,
  type Made,
  type Question,
  reaches,
  SURE,
  sunk,
  taken,
  told,
} from './way.js';

/** How it is made, or null. */
export function onPress(given: Asked, question: Question): Made | null {
  const { press } = given.shop;
  const { action, line } = question;
  const span = ends(line);
  if (press === null || span[1] - span[0] > press.length) return null;
  const { bend } = line.hinges[0] as Hinge;
  const angle = action === 'fold' ? 135 : bend.angle;
  const turned = action === 'fold' ? 135 : angle + press.overbend + 1;
  const pairs = diesFor(press, turned, given.body.thickness).flatMap((die) =>
    press.punches.flatMap((punch) =>
      (punch.horns === null ? [null] : [null, punch.horns]).map((horns) => ({ punch, die, horns })),
    ),
  );
  const goes = pairs.some((p) => withTools(given, question, press, { ...p, angle, turned }));
  return goes ? { told: told('press', line), angle, setBack: null } : null;
}

interface Tooling {
  readonly punch: Punch;
  readonly die: Die;
  readonly horns: Horns | null;
  readonly angle: number;
  readonly turned: number;
}

/** What a margin takes to either side of a die, up to its top. */
function besides({ bare, off }: Asked, { section }: Die): readonly Tool[] {
  const [xs, zs] = [section.map((p) => p[0]), section.map((p) => p[1])];
  const [left, right, low] = [Math.min(...xs), Math.max(...xs), Math.min(...zs)];
  return [box(left - off, low, left, 0), box(right, low, right + off, 0)].map((b) =>
    bare('die', b, [EVERYWHERE]),
  );
}

function withTools(given: Asked, { action, line, state }: Question, press: Press, with_: Tooling): boolean {
  const { punch, die, horns, angle, turned } = with_;
  if (turned > 180 - Math.max(die.angle, punch.angle)) return false;
  const step = { action, angle, setAngle: turned, setBack: null };
  const standing = standingFor(given.body, line, step, state);
  const least = die.opening / (2 * Math.cos((angle * DEGREE) / 2)) + 2;
  if (reaches(standing).some((r) => r < least)) return false;
  const names = { punch: punch.name, die: die.name, horns };
  const wide = pressTools(given.draw, press, names, [EVERYWHERE]);
  const low = pressTools(given.bare, press, names, [EVERYWHERE]);
  // off the sheet it presses on by as much as it is drawn larger, and a hair
  const block = { id: 'die', solids: [low.die, ...besides(given, die)].flatMap((t) => t.solids) };
  const large = { ...wide, punch: lifted(wide.punch, given.off + SURE), die: sunk(block, SURE) };
  const cut = die.sectioned ? ['punch', 'die'] : ['punch'];
  const blockedBy = (tools: PressTools) =>
    taken(
      standing,
      STAY,
      (turn) => pressMoment(tools, standing.stroke, turn),
      cut,
      () => false,
    );
  const stands =
    horns === null
      ? cover(ends(line), blockedBy(large), { pieces: punch.lengths, gaps: press.gaps })
      : betweenHorns(ends(line), horns, {
          feet: blockedBy({ ...large, punch: only(large.punch, horns, 'feet') }),
          over: blockedBy({ ...large, punch: only(large.punch, horns, 'over') }),
          rack: { pieces: punch.lengths, gaps: press.gaps },
        });
  if (stands === null) return false;
  const own = pressTools(given.bare, press, names, stands);
  const off = { ...own, punch: lifted(own.punch, given.off + SURE) };
  return [0, standing.set].every((turn) => {
    const moment = pressMoment(off, standing.stroke, turn);
    return horns === null ? lifts(standing, off, moment) : endFirst(standing, off, moment, stands);
  });
}

/** Pieces of a punch by the height of their middle: what is over a foot, or all else. */
const only = (punch: Tool, { foot, height }: Horns, part: 'feet' | 'over'): Tool => ({
  ...punch,
  solids: punch.solids.filter((s) => {
    const middle = (s.low[2] + s.high[2]) / 2;
    return (middle > foot && middle < height) === (part === 'over');
  }),
});

/** Where a punch stands between its horns, from foot to foot; null where it does not. */
function betweenHorns(
  [left, right]: Span,
  { widths: [l, r], reach }: Horns,
  {
    feet,
    over,
    rack,
  }: { readonly feet: readonly Span[] | null; readonly over: readonly Span[] | null; readonly rack: RackOf },
): readonly Span[] | null {
  if (feet === null || over === null) return null;
  const { end } = rack.gaps;
  const at = ([from, to]: Span) => (from <= left + end ? 'left' : to >= right - end ? 'right' : 'middle');
  const all = [
    ...feet.map((s) => ({ s, by: 0, at: at(s) })),
    ...over.map((s) => ({ s, by: reach, at: at(s) })),
  ];
  if (all.some((b) => b.at === 'middle')) return null;
  const blocked = all.map(
    ({ s: [from, to], by, at }): Span =>
      at === 'left' ? [left - 1, to - by + l] : [from + by - r, right + 1],
  );
  const stands = cover([left + l, right - r], blocked, rack);
  const [only, ...others] = stands ?? [];
  if (only === undefined || others.length > 0 || only[1] - only[0] > right - left) return null;
  return [[only[0] - l, only[1] + r]];
}

const LEAST = 4; // thicknesses that the opening of a V has at least

function diesFor(press: Press, turned: number, T: number): Press['dies'] {
  const most = (d: Die) => Math.max(...press.punches.map((p) => 180 - Math.max(p.angle, d.angle)));
  return press.dies.filter((d) => turned <= most(d) && d.opening >= LEAST * T);
}
