import type { Path, Point, Problem, Unit } from '@tinwright/core';
import { plainNumber, quoted, sayIn } from '@tinwright/core/internal';
import { impossible } from './impossible.js';
import type { Die } from './shop.js';

const ROUNDING = 0.01; // mm
const OPENING_OFF = 0.1; // mm; with rounded shoulders the V is measured between them or where its faces would meet the top
const ANGLE_OFF = 1; // degrees

/** A V as a section draws it. mm, degrees */
interface Vee {
  readonly angle: number;
  /** Between its shoulders, and between its faces as far up as the top. */
  readonly openings: readonly number[];
}

/** Angle and opening of a V that are not those of its section. A section that is flat over the bend line has none drawn. */
export function veeProblems(die: Die, path: Path, units: Unit): readonly Problem[] {
  const vee = veeOf(die.section);
  if (vee === null) return [];
  const { size } = sayIn(units);
  const of = `the V of ${quoted(die.name)} is`;
  const nearest = vee.openings.toSorted((a, b) => Math.abs(a - die.opening) - Math.abs(b - die.opening))[0];
  return [
    ...(nearest === undefined || Math.abs(nearest - die.opening) <= OPENING_OFF
      ? []
      : [
          impossible(
            [...path, 'opening'],
            `${size(die.opening)} given, ${of} ${size(nearest)} wide in its section`,
            'Give the width of the V at the top, or measure the section again',
          ),
        ]),
    ...(Math.abs(vee.angle - die.angle) <= ANGLE_OFF
      ? []
      : [
          impossible(
            [...path, 'angle'],
            `${plainNumber(die.angle, 1)} deg given, ${of} ${plainNumber(vee.angle, 1)} deg in its section`,
            'Give the angle between the faces of the V, or measure the section again',
          ),
        ]),
  ];
}

type Edge = readonly [Point, Point];

/** The V at the bend line: its faces are the longest sides that fall and rise between the shoulders. */
function veeOf(section: readonly Point[]): Vee | null {
  const path = between(section);
  if (path === null) return null;
  const edges = path.slice(1).map((to, i): Edge => [path[i] as Point, to]);
  const [down, up] = [-1, 1].map(
    (way) =>
      edges.filter(([a, b]) => b[0] - a[0] > ROUNDING && way * (b[1] - a[1]) > ROUNDING).toSorted(longer)[0],
  );
  if (down === undefined || up === undefined) return null;
  const [first, last] = [path[0] as Point, path.at(-1) as Point];
  return {
    angle: lean(down) + lean(up),
    openings: [last[0] - first[0], atTop(up) - atTop(down)],
  };
}

/** Corners from the shoulder left of the bend line to the one right of it, through the V; null where the top is flat. */
function between(section: readonly Point[]): readonly Point[] | null {
  const tops = section.filter((p) => Math.abs(p[1]) <= ROUNDING);
  const left = tops.filter((p) => p[0] < -ROUNDING).toSorted((a, b) => b[0] - a[0])[0];
  const right = tops.filter((p) => p[0] > ROUNDING).toSorted((a, b) => a[0] - b[0])[0];
  if (left === undefined || right === undefined) return null;
  const ways = [section, section.toReversed()].map((round) => {
    const from = round.indexOf(left);
    const turned = [...round.slice(from), ...round.slice(0, from)];
    return turned.slice(0, turned.indexOf(right) + 1);
  });
  // the other way goes round the block
  const inside = ways.filter((w) => w.every(([x]) => x >= left[0] - ROUNDING && x <= right[0] + ROUNDING));
  const depth = (way: readonly Point[]) => -Math.min(...way.map((p) => p[1]));
  const [shallow] = inside.toSorted((a, b) => depth(a) - depth(b));
  return shallow === undefined || shallow.length < 3 ? null : shallow;
}

const longer = (a: Edge, b: Edge) => span(b) - span(a);
const span = ([a, b]: Edge) => Math.hypot(b[0] - a[0], b[1] - a[1]);

/** Between a face and the upright, degrees. */
const lean = ([a, b]: Edge) => (Math.atan(Math.abs((b[0] - a[0]) / (b[1] - a[1]))) * 180) / Math.PI;

/** Where a face would meet the top, mm across. */
const atTop = ([a, b]: Edge) => a[0] - (a[1] * (b[0] - a[0])) / (b[1] - a[1]);
