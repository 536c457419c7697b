// A press brake asked whether it makes a bend, with every punch over the two dies that come nearest to the radius.
import type { Die, Press, Punch } from '@tinwright/shop';
import type { Hinge } from '../body.js';
import { lifts } from '../lift.js';
import { box, EVERYWHERE, pressMoment, pressTools, type Tool } from '../machine.js';
import { STAY } from '../rigid.js';
import { standingFor } from '../standing.js';
import { cover } from './cover.js';
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
  const radius = action === 'fold' ? given.body.thickness : bend.insideRadius;
  const pairs = diesFor(press, radius, turned, given.body.thickness).flatMap((die) =>
    press.punches.map((punch) => ({ punch, die })),
  );
  const goes = pairs.some((p) => withTools(given, question, press, { ...p, angle, turned }));
  return goes ? { told: told('press', line), angle, setBack: null } : null;
}

interface Tooling {
  readonly punch: Punch;
  readonly die: Die;
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
  const { punch, die, angle, turned } = with_;
  if (turned > 180 - Math.max(die.angle, punch.angle)) return false;
  const step = { action, angle, setAngle: turned, setBack: null };
  const standing = standingFor(given.body, line, step, state);
  const least = die.opening / (2 * Math.cos((angle * DEGREE) / 2)) + 2;
  if (reaches(standing).some((r) => r < least)) return false;
  const names = { punch: punch.name, die: die.name };
  const wide = pressTools(given.draw, press, names, [EVERYWHERE]);
  const low = pressTools(given.bare, press, names, [EVERYWHERE]);
  // off the sheet it presses on by as much as it is drawn larger, and a hair
  const block = { id: 'die', solids: [low.die, ...besides(given, die)].flatMap((t) => t.solids) };
  const large = { ...wide, punch: lifted(wide.punch, given.off + SURE), die: sunk(block, SURE) };
  const cut = die.sectioned ? ['punch', 'die'] : ['punch'];
  const blocked = taken(
    standing,
    STAY,
    (turn) => pressMoment(large, standing.stroke, turn),
    cut,
    () => false,
  );
  if (blocked === null) return false;
  const stands = cover(ends(line), blocked, { pieces: punch.lengths, gaps: press.gaps });
  if (stands === null) return false;
  const own = pressTools(given.bare, press, names, stands);
  const off = { ...own, punch: lifted(own.punch, given.off + SURE) };
  return [0, standing.set].every((turn) => lifts(standing, off, pressMoment(off, standing.stroke, turn)));
}

const LEAST = 5; // thicknesses that the opening of a V has at least

function diesFor(press: Press, radius: number, turned: number, T: number): Press['dies'] {
  const most = (d: Die) => Math.max(...press.punches.map((p) => 180 - Math.max(p.angle, d.angle)));
  const off = (d: Die) => Math.abs(Math.log((0.16 * d.opening) / Math.max(radius, 0.1)));
  return press.dies
    .filter((d) => turned <= most(d) && d.opening >= LEAST * T)
    .toSorted((a, b) => off(a) - off(b))
    .slice(0, 2);
}
