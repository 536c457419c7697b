import { isArc, type Point, segments } from '@tinwright/core';
import { arcOf } from '@tinwright/core/internal';
import { bendNumber, runsAcross, type StraightSide } from '../pattern/features.js';
import { gathered, joined, unique } from '../pattern/gather.js';
import { type MarkedThing, type Marking, type MarkingAsk, SAME } from '../pattern/marked.js';
import { centres } from './centres.js';

const ACROSS = 10; // mm of nothing that a bend line is scribed across

/**
 * Everything to mark on a blank in the order a hand does it: lines by their distance from the left edge, then from the
 * bottom edge, slanted lines as two points each, reliefs, arcs, then the centres of holes and marks.
 */
export function markings(ask: MarkingAsk): readonly Marking[] {
  return [
    ...linesFrom(ask, 'left'),
    ...linesFrom(ask, 'bottom'),
    ...slants(ask),
    ...unique(ask.features.rounds, (r) => [...r.centre, r.radius]).map(
      ({ centre, radius }): Marking => ({ kind: 'round', at: centre, diameter: 2 * radius }),
    ),
    ...arcsOf(ask),
    ...centres(ask),
  ];
}

/** Rounded corners and ends of cut-outs, by their radius. */
function arcsOf({ features }: MarkingAsk): readonly Marking[] {
  const arcs = features.cutouts.flatMap(segments).filter(isArc).map(arcOf);
  return gathered(arcs, (a) => a.radius).map((list) => ({
    kind: 'arc',
    radius: (list[0] as (typeof list)[number]).radius,
    at: unique(
      list.map((a) => a.centre),
      (p) => p,
    ),
  }));
}

/** Straight sides of the outline and of cut-outs. */
const cutSides = ({ sides, cutouts }: MarkingAsk['features']): readonly StraightSide[] =>
  cutouts.length === 0 ? sides : [...sides, ...cutouts.flatMap(segments).filter((s) => !isArc(s))];

/** Lines that run across from a datum edge at one offset: edges to cut, bends, sight lines. */
function linesFrom({ flat, features, sights }: MarkingAsk, edge: 'left' | 'bottom'): readonly Marking[] {
  const [axis, other] = edge === 'left' ? ([0, 1] as const) : ([1, 0] as const);
  const span = ({ from, to }: StraightSide): readonly [number, number] => [
    Math.min(from[other], to[other]),
    Math.max(from[other], to[other]),
  ];
  const sides = cutSides(features).filter(
    (s) => runsAcross(s, axis) && !onBlank(s, axis, flat.blank.max[axis]),
  );
  const cuts = gathered(sides, (s) => s.from[axis]).map(
    (list): Marking => ({
      kind: 'line',
      edge,
      offset: (list[0] as StraightSide).from[axis],
      reach: joined(list.map(span), SAME),
      thing: { kind: 'cut' },
    }),
  );
  const numbered = flat.bends.map((b, i) => ({ ...sideOf(b.line), number: bendNumber(i), bend: b }));
  const bends = gathered(
    numbered.filter((b) => runsAcross(b, axis)),
    (b) => b.from[axis],
    (b) => `${b.bend.direction} ${b.bend.angle} ${b.bend.hem}`,
  ).map((list): Marking => {
    const [first] = list as [(typeof list)[number]];
    return {
      kind: 'line',
      edge,
      offset: first.from[axis],
      reach: joined(list.map(span), ACROSS),
      thing: { kind: 'bend', numbers: list.map((b) => b.number), bend: first.bend },
    };
  });
  const seen = sights.flatMap((s): readonly Marking[] => {
    const side = sideOf(s.line);
    const thing: MarkedThing = {
      kind: 'sight',
      number: bendNumber(flat.bends.findIndex((b) => b.id === s.bend)),
    };
    return runsAcross(side, axis)
      ? [{ kind: 'line', edge, offset: side.from[axis], reach: [span(side)], thing }]
      : [];
  });
  return [...cuts, ...bends, ...seen].toSorted((a, b) => offsetOf(a) - offsetOf(b));
}

const offsetOf = (m: Marking): number => ('offset' in m ? m.offset : 0);
const sideOf = ([from, to]: readonly [Point, Point]): StraightSide => ({ from, to });

/** True for a side that is an edge of the blank already. */
const onBlank = ({ from }: StraightSide, axis: 0 | 1, far: number) =>
  from[axis] < SAME || from[axis] > far - SAME;

function slants({ flat, features, sights }: MarkingAsk): readonly Marking[] {
  const slanted = (s: StraightSide) => !runsAcross(s, 0) && !runsAcross(s, 1);
  const ordered = (s: StraightSide): StraightSide =>
    apart(s.from[0], s.to[0]) <= 0 ? s : { from: s.to, to: s.from };
  const rows = [
    ...flat.bends.map((b, i) => ({
      ...ordered(sideOf(b.line)),
      thing: { kind: 'bend', numbers: [bendNumber(i)], bend: b } as MarkedThing,
    })),
    ...sights.map((s) => ({
      ...ordered(sideOf(s.line)),
      thing: {
        kind: 'sight',
        number: bendNumber(flat.bends.findIndex((b) => b.id === s.bend)),
      } as MarkedThing,
    })),
    ...cutSides(features)
      .map((s) => ({ ...ordered(s), thing: { kind: 'cut' } as MarkedThing }))
      .toSorted((a, b) => apart(a.from[0], b.from[0]) || apart(a.from[1], b.from[1])),
  ];
  return rows.filter(slanted).map((r): Marking => ({ kind: 'slant', ...r }));
}

/** The difference, none where it is rounding. */
const apart = (a: number, b: number): number => (Math.abs(a - b) < SAME ? 0 : a - b);
