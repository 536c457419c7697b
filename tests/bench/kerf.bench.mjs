// 1,000 outlines of flat patterns with holes and rounds, moved by half a cut: ours keeps lines and arcs; the peers get
// polygons with the arcs cut to chords within 0.005 mm, and give polygons.

import { segments } from '@tinwright/core';
import { arcOf, loopArea } from '@tinwright/core/internal';
import { offsetLoop } from '@tinwright/cutting';
import { areaD, EndType, inflatePathsD, JoinType } from 'clipper2-ts';
import Module from 'manifold-3d';
import { perCall } from './measure.mjs';

const [N, BY, WITHIN, SEED] = [1000, 0.65, 0.005, 1];

function random(seed) {
  let s = seed;
  return () => {
    s = (Math.imul(s, 1664525) + 1013904223) >>> 0;
    return s / 2 ** 32;
  };
}

/** A blank with notched corners, some of them round, and tabs. */
function outline(next) {
  const [w, h] = [60 + 400 * next(), 40 + 300 * next()];
  const notch = () => 4 + 12 * next();
  const corners = [
    [0, 0, 1, 1],
    [w, 0, -1, 1],
    [w, h, -1, -1],
    [0, h, 1, -1],
  ].flatMap(([x, y, sx, sy], i) => {
    const [a, b] = [notch(), notch()];
    const bulge = next() < 0.5 ? -0.41421356 : 0;
    const along = [x + sx * a, y];
    const up = [x, y + sy * b];
    const inner = [x + sx * a, y + sy * b];
    const from = i % 2 === 0 ? up : along;
    const to = i % 2 === 0 ? along : up;
    return bulge === 0
      ? [from, inner, to].map((at) => ({ at, bulge: 0 }))
      : [
          { at: from, bulge },
          { at: to, bulge: 0 },
        ];
  });
  return corners;
}

function chords(loop) {
  return segments(loop).flatMap((s) => {
    if (s.bulge === 0) return [[s.from[0], s.from[1]]];
    const { centre, radius, start, sweep } = arcOf(s);
    const n = Math.max(2, Math.ceil(Math.abs(sweep) / (2 * Math.acos(1 - WITHIN / radius))));
    return Array.from({ length: n }, (_, k) => {
      const angle = start + (sweep * k) / n;
      return [centre[0] + radius * Math.cos(angle), centre[1] + radius * Math.sin(angle)];
    });
  });
}

const arcs = (loops) => loops.reduce((sum, l) => sum + l.filter((v) => v.bulge !== 0).length, 0);

export default async function () {
  const library = await Module();
  library.setup();
  const next = random(SEED);
  const loops = Array.from({ length: N }, () => outline(next));
  const polygons = loops.map(chords);
  const paths = polygons.map((p) => p.map(([x, y]) => ({ x, y })));
  const segmentsOf = Math.ceil(Math.PI / Math.acos(1 - WITHIN / BY));
  const theirs = (p) => {
    const section = new library.CrossSection([p]);
    const grown = section.offset(BY, 'Round', 2, segmentsOf);
    const points = grown.toPolygons();
    section.delete();
    grown.delete();
    return points;
  };
  const clipped = (p) => inflatePathsD([p], BY, JoinType.Round, EndType.Polygon, 2, 4, WITHIN);
  let worst = 0;
  let lost = 0;
  let kept = 0;
  loops.forEach((loop, i) => {
    const own = offsetLoop(loop, BY);
    const area = own.reduce((sum, l) => sum + loopArea(l), 0);
    worst = Math.max(worst, Math.abs(area / areaD(clipped(paths[i])[0]) - 1));
    const corners = segments(loop).length; // every corner but those a notch turns in on opens to a round
    kept += arcs(own);
    if (arcs(own) < loop.filter((v) => v.bulge !== 0).length || corners === 0) lost++;
  });
  const all = (work, list) => perCall(() => list.forEach(work), 9).time;
  const ours = all((l) => offsetLoop(l, BY), loops);
  const [manifold, clipper] = [all(theirs, polygons), all(clipped, paths)];
  return {
    ours,
    peer: clipper,
    peerName: 'clipper2-ts',
    unit: `ms, ${N} outlines`,
    n: N,
    detail: `manifold-3d CrossSection ${manifold.toFixed(1)} ms; arcs kept ${kept}, outlines that lost one ${lost}, theirs none kept; areas apart by ${(100 * worst).toFixed(4)} % at most; seed ${SEED}`,
  };
}
