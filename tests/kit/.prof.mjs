// packages/core/src/advice/nearest-size.ts
var stepOf = (unit2) => unit2 === "mm" ? 0.01 : 0.0254;
var DOWN = [
  0.98,
  0.9,
  0.75,
  0.6,
  0.5,
  0.4,
  0.3,
  0.22,
  0.16,
  0.12,
  0.09,
  0.065,
  0.05,
  0.035,
  0.025,
  0.018,
  0.012,
  8e-3,
  3e-3,
  1e-3
];
var UP = [1.02, 1.1, 1.3, 1.6, 2, 2.6, 3.5, 5, 7, 10, 14, 20, 30, 50, 100, 300, 1e3, 1e4];
var FLAT = 1e-9;
function nearestSize(given2, room, budget) {
  const start = room(given2);
  const below = search(given2, start, room, { ...budget, way: -1 });
  const above = search(given2, start, room, { ...budget, way: 1 });
  const down = below === null ? null : { found: below, bound: "most" };
  const up = above === null ? null : { found: above, bound: "least" };
  if (down === null || up === null) return down ?? up;
  return changeOf(given2, down.found) <= changeOf(given2, up.found) ? down : up;
}
function passing(works2) {
  return (size4) => works2(size4) ? 0 : null;
}
function changeOf(given2, found) {
  return Math.abs(Math.log(Math.max(found, 1e-3) / Math.max(given2, 1e-3)));
}
function search(given2, start, room, search2) {
  const { step, way } = search2;
  const size4 = (at) => Number((at * step).toFixed(9));
  const ends = climb(given2, start, (at) => room(size4(at)), search2);
  if (ends === null) return null;
  let [{ at: fails, room: lack }, good] = [ends.failed, ends.good];
  while (Math.abs(good.at - fails) > 1) {
    const at = between(fails, lack, good, way);
    const found = room(size4(at));
    if (works(found)) good = { at, room: found };
    else [fails, lack] = [at, found];
  }
  return size4(good.at);
}
function climb(given2, start, room, search2) {
  const { step, way, rungs = UP.length, least = 0, most = Infinity } = search2;
  const first = Math.max(given2, step);
  const ladder = (way > 0 ? UP : DOWN).slice(0, rungs).map((f) => outward(first * f / step, way)).filter((at) => at !== given2 / step);
  let failed = { at: inward(given2 / step, way), room: start };
  for (let [i, leap] = [0, failed.at]; i < ladder.length; i++) {
    const rung = ladder[i];
    const at = way > 0 ? Math.max(rung, leap) : Math.min(rung, leap);
    if (at <= 0 || at * step < least - FLAT || at * step > most + FLAT) return null;
    const tried = { at, room: room(at) };
    if (works(tried.room)) return { failed, good: tried };
    if (failed.room !== null) {
      if (tried.room === null || tried.room <= failed.room + FLAT) return null;
      const slope = (tried.room - failed.room) / (tried.at - failed.at);
      leap = outward(tried.at - tried.room / slope, way);
    }
    failed = tried;
  }
  return null;
}
function between(fails, lack, good, way) {
  const middle = Math.trunc((fails + good.at) / 2);
  if (lack === null || good.room === null || good.room - lack < FLAT) return middle;
  const guess = outward(fails + (good.at - fails) * -lack / (good.room - lack), way);
  const inner = [fails + way, good.at - way].toSorted((a, b2) => a - b2);
  return Math.min(Math.max(guess, inner[0]), inner[1]);
}
var works = (room) => room !== null && room >= 0;
var outward = (at, way) => way > 0 ? Math.ceil(at - 1e-6) : Math.floor(at + 1e-6);
var inward = (at, way) => way > 0 ? Math.floor(at + 1e-6) : Math.ceil(at - 1e-6);

// packages/core/src/advice/values.ts
function sizesIn(params) {
  return leaves(params, []).filter((l) => typeof l.given === "number");
}
function leaves(value2, path) {
  if (Array.isArray(value2)) return value2.flatMap((v, i) => leaves(v, [...path, i]));
  if (typeof value2 !== "object" || value2 === null) return [{ path, given: value2 }];
  return Object.entries(value2).flatMap(([k, v]) => leaves(v, [...path, k]));
}
function valueAt(data2, path) {
  return path.reduce(
    (d, step) => d?.[step],
    data2
  );
}
function withValue(data2, [step, ...rest], value2) {
  if (step === void 0) return value2;
  if (Array.isArray(data2)) return data2.map((d, i) => i === step ? withValue(d, rest, value2) : d);
  const group2 = data2;
  return { ...group2, [step]: withValue(group2?.[step], rest, value2) };
}

// packages/core/src/advice/advice.ts
function sizeAdvice(params, room, budget, sizes2 = sizesIn(params)) {
  const found = sizes2.flatMap((size4) => {
    const { path, given: given2 } = size4;
    const near2 = nearestSize(given2, (v) => room(withValue(params, path, v)), budget(size4));
    return near2 === null ? [] : [{ path, given: given2, ...near2 }];
  });
  return found.toSorted((a, b2) => changeOf(a.given, a.found) - changeOf(b2.given, b2.found));
}

// packages/core/src/errors/finding.ts
var NOWHERE = { at: null, names: [], others: [], joints: [] };
function remarkOf(code, severity, { values: values11, source, where = {}, value: value2, limit, unit: unit2 }) {
  return {
    code,
    severity,
    where: { ...NOWHERE, ...where },
    value: value2 ?? null,
    limit: limit ?? null,
    unit: unit2 ?? null,
    values: values11,
    source,
    changes: [],
    words: null
  };
}
var WEIGHT = { error: 0, warning: 1, note: 2 };
function sortFindings(findings, parts2) {
  const rank = (f) => f.part === null ? -1 : parts2.indexOf(f.part);
  return findings.toSorted((a, b2) => rank(a) - rank(b2) || WEIGHT[a.severity] - WEIGHT[b2.severity]);
}

// packages/core/src/errors/core-findings.ts
function remark(code, severity, data2) {
  return remarkOf(code, severity, data2);
}

// packages/core/src/units/frozen.ts
function frozen(value2) {
  if (typeof value2 !== "object" || value2 === null) return value2;
  if (!Array.isArray(value2) && Object.getPrototypeOf(value2) !== Object.prototype) return value2;
  for (const inside2 of Object.values(value2)) frozen(inside2);
  return Object.freeze(value2);
}

// packages/core/src/errors/source.ts
function cite(work2, more = {}) {
  return { rule: null, size: null, basis: null, profile: null, assumed: [], ...more, work: work2 };
}
var COMPUTED = frozen([
  cite(null, { basis: "computed" }),
  cite(null, { basis: "common-practice" })
]);
var COMMON_PRACTICE = frozen([cite(null, { basis: "common-practice" })]);

// packages/core/src/plane/point.ts
var SAME = 1e-7;
var add = (a, b2) => [a[0] + b2[0], a[1] + b2[1]];
var sub = (a, b2) => [a[0] - b2[0], a[1] - b2[1]];
var scale = (a, k) => [a[0] * k, a[1] * k];
var dot = (a, b2) => a[0] * b2[0] + a[1] * b2[1];
var cross = (a, b2) => a[0] * b2[1] - a[1] * b2[0];
var size = (a) => Math.sqrt(a[0] * a[0] + a[1] * a[1]);
var distance = (a, b2) => size([a[0] - b2[0], a[1] - b2[1]]);
var mix = (a, b2, t) => [
  a[0] + (b2[0] - a[0]) * t,
  a[1] + (b2[1] - a[1]) * t
];
var same = (a, b2) => distance(a, b2) < SAME;
function unit(a) {
  const l = size(a);
  return [a[0] / l, a[1] / l];
}
var outward2 = (a) => [a[1], -a[0]];

// packages/core/src/fold/space.ts
var add3 = (a, b2) => [a[0] + b2[0], a[1] + b2[1], a[2] + b2[2]];
var sub3 = (a, b2) => [a[0] - b2[0], a[1] - b2[1], a[2] - b2[2]];
var scale3 = (a, k) => [a[0] * k, a[1] * k, a[2] * k];
var dot3 = (a, b2) => a[0] * b2[0] + a[1] * b2[1] + a[2] * b2[2];
var cross3 = (a, b2) => [
  a[1] * b2[2] - a[2] * b2[1],
  a[2] * b2[0] - a[0] * b2[2],
  a[0] * b2[1] - a[1] * b2[0]
];
var length3 = (a) => Math.sqrt(dot3(a, a));
var unit3 = (a) => scale3(a, 1 / length3(a));
var HOME = frozen({ origin: [0, 0, 0], x: [1, 0, 0], y: [0, 1, 0], z: [0, 0, 1] });
function turn3(pose, v) {
  const { x, y, z } = pose;
  return [
    x[0] * v[0] + y[0] * v[1] + z[0] * v[2],
    x[1] * v[0] + y[1] * v[1] + z[1] * v[2],
    x[2] * v[0] + y[2] * v[1] + z[2] * v[2]
  ];
}
function place3(pose, p) {
  return add3(pose.origin, turn3(pose, p));
}
function compose3(outer, inner) {
  return {
    origin: place3(outer, inner.origin),
    x: turn3(outer, inner.x),
    y: turn3(outer, inner.y),
    z: turn3(outer, inner.z)
  };
}

// packages/core/src/plane/convex.ts
function convexPieces(shape) {
  const at = (i) => shape[i % shape.length];
  const n2 = shape.length;
  const right = shape.findIndex((_, i) => turn(at(i + n2 - 1), at(i), at(i + 1)) < -RIGHT);
  if (right < 0) return [shape];
  const corner = at(right);
  const way = unit(sub(corner, at(right + n2 - 1)));
  const { side, to } = firstSide(shape, right, way);
  const round2 = (from, count4) => Array.from({ length: count4 }, (_, k) => at(from + k));
  const count3 = (side - right + n2) % n2;
  const pieces = [
    [...round2(right, count3 + 1), to],
    [to, ...round2(side + 1, n2 - count3)]
  ];
  const parts2 = pieces.map(withoutTwins).filter((p) => p.length > 2);
  return parts2.length < 2 || parts2.some((p) => p.length > n2) ? [shape] : parts2.flatMap(convexPieces);
}
var RIGHT = 1e-9;
function turn(a, b2, c) {
  const [u, v] = [sub(b2, a), sub(c, b2)];
  return cross(u, v) / (size(u) * size(v));
}
function firstSide(shape, from, way) {
  const corner = shape[from];
  let best = { side: from, to: corner, far: Infinity };
  shape.forEach((p, i) => {
    const q = shape[(i + 1) % shape.length];
    if (i === from || (i + 1) % shape.length === from) return;
    const d = sub(q, p);
    const det = cross(way, d);
    if (Math.abs(det) < RIGHT * size(d)) return;
    const r = sub(p, corner);
    const [far, t] = [cross(r, d) / det, cross(r, way) / det];
    const reach2 = SAME / size(d);
    if (far < SAME || t < -reach2 || t > 1 + reach2 || far >= best.far - SAME) return;
    const to = add(corner, scale(way, far));
    best = { side: i, to: same(to, p) ? p : same(to, q) ? q : mix(p, q, t), far };
  });
  return best;
}
var withoutTwins = (shape) => shape.filter((p, i) => !same(p, shape[(i + 1) % shape.length]));
function intersectConvex(shape, convex) {
  return convex.reduce((rest, a, i) => {
    const b2 = convex[(i + 1) % convex.length];
    const l = Math.sqrt((b2[0] - a[0]) ** 2 + (b2[1] - a[1]) ** 2);
    const n2 = [-(b2[1] - a[1]) / l, (b2[0] - a[0]) / l];
    return clipPolygon(rest, n2, n2[0] * a[0] + n2[1] * a[1]);
  }, shape);
}
function clipPolygon(shape, n2, c) {
  const kept = clipRing(shape, (p) => n2[0] * p[0] + n2[1] * p[1] - c, mix);
  const distinct = kept.filter((p, i) => {
    const q = kept[(i + 1) % kept.length];
    return Math.abs(p[0] - q[0]) + Math.abs(p[1] - q[1]) > 1e-9;
  });
  return distinct.length < 3 ? [] : distinct;
}
function clipRing(ring, depth, between3) {
  const [first] = ring;
  if (first === void 0) return ring;
  const start = depth(first);
  const kept = [];
  let a = start;
  for (let i = 0; i < ring.length; i++) {
    const [p, q] = [ring[i], ring[i + 1] ?? first];
    const b2 = i + 1 < ring.length ? depth(q) : start;
    if (a >= 0) kept.push(p);
    if (a < 0 !== b2 < 0 && a !== b2) kept.push(between3(p, q, a / (a - b2)));
    a = b2;
  }
  return kept;
}
function polygonArea(shape) {
  let area2 = 0;
  for (let i = 0; i < shape.length; i++) {
    const [p, q] = [shape[i], shape[i + 1] ?? shape[0]];
    area2 += (p[0] * q[1] - q[0] * p[1]) / 2;
  }
  return area2;
}
function convexHull(points) {
  const sorted = points.toSorted((a, b2) => a[0] - b2[0] || a[1] - b2[1]);
  const half = (list2) => {
    const chain2 = [];
    for (const p of list2) {
      for (let o = chain2.at(-2), a = chain2.at(-1); o && a && (a[0] - o[0]) * (p[1] - o[1]) - (a[1] - o[1]) * (p[0] - o[0]) <= 0; o = chain2.at(-2), a = chain2.at(-1))
        chain2.pop();
      chain2.push(p);
    }
    return chain2.slice(0, -1);
  };
  return sorted.length < 3 ? sorted : [...half(sorted), ...half(sorted.toReversed())];
}

// packages/core/src/errors/quote.ts
var HIDDEN = /[\p{Cc}\p{Cf}\p{Zl}\p{Zp}\p{Co}\p{Cs}]/gu;
var LONGEST = 40;
function safeText(text2) {
  return text2.replace(
    HIDDEN,
    (c) => `U+${(c.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, "0")}`
  );
}
function quoted(text2) {
  const letters = [...text2];
  return `"${safeText(letters.slice(0, LONGEST).join(""))}${letters.length > LONGEST ? "\u2026" : ""}"`;
}
function hasHidden(text2) {
  return text2.search(HIDDEN) >= 0;
}

// packages/core/src/errors/problem.ts
var JobError = class extends Error {
  name = "JobError";
  problems;
  /** The problems before they were said in a unit: what builds a part does not know that of the job. */
  refusals;
  constructor(refusals, unit2 = "mm") {
    const problems2 = refusals.map((r) => worded(r, unit2));
    super(problems2.map(problemText).join("\n"));
    this.problems = problems2;
    this.refusals = refusals;
  }
  /** By name: a family of one's own may bring a second copy of this library, and throws that one's. */
  static [Symbol.hasInstance](value2) {
    return value2 instanceof Error && value2.name === "JobError" && "problems" in value2;
  }
};
function pathText(path) {
  return path.reduce((text2, step) => {
    if (typeof step === "number") return `${text2}[${step}]`;
    return text2 === "" ? step : `${text2}.${step}`;
  }, "");
}
function placeText({ path, part }) {
  const [first, index, ...rest] = path;
  if (first !== "parts" || typeof index !== "number") return pathText(path);
  const who = part === void 0 ? `part ${index + 1}` : `part "${part}"`;
  return rest.length === 0 ? who : `${who}: ${pathText(rest)}`;
}
function problemText(problem) {
  const place2 = placeText(problem);
  const fix = problem.fix === "" ? "" : ` ${problem.fix}.`;
  return safeText(`${place2 === "" ? "" : `${place2}: `}${problem.message}.${fix}`);
}
function fail(code, path, message, fix = "") {
  throw new JobError([{ code, path, message, fix }]);
}
function within(path, work2) {
  try {
    return work2();
  } catch (error) {
    if (!(error instanceof JobError)) throw error;
    throw new JobError(error.refusals.map((p) => ({ ...p, path: [...path, ...p.path] })));
  }
}
function sayIn(unit2) {
  const [per, digits, step] = unit2 === "mm" ? [1, 2, 100] : [25.4, 3, 1e3];
  const text2 = (steps2) => `${(steps2 / step).toFixed(digits).replace(/\.?0+$/, "")} ${unit2}`;
  const steps = (mm2) => mm2 / per * step;
  return {
    unit: unit2,
    size: (mm2) => text2(Math.round(steps(mm2) + 1e-6)),
    most: (mm2) => text2(Math.floor(steps(mm2) + 1e-6)),
    least: (mm2) => text2(Math.ceil(steps(mm2) - 1e-6))
  };
}
function inWords(words, say) {
  return typeof words === "string" ? words : words(say);
}
function worded(refusal2, unit2) {
  const say = sayIn(unit2);
  return { ...refusal2, message: inWords(refusal2.message, say), fix: inWords(refusal2.fix, say) };
}

// packages/core/src/fold/extent.ts
function measuredBox(formed, over) {
  const { panels, bends, thickness } = formed;
  if (over === "all") return boxOfPieces(panels, bends, thickness);
  if ("panels" in over) {
    const chosen = (list2, ids) => list2.filter((p) => ids.includes(p.id));
    return boxOfPieces(chosen(panels, over.panels), chosen(bends, over.bends ?? over.panels), thickness);
  }
  if ("moulds" in over)
    return boxOfPoints(bends.filter((b2) => over.moulds.includes(b2.id)).flatMap(mouldLine));
  if ("between" in over) {
    const [a, b2] = over.between.map((id) => measuredBox(formed, { panels: [id], bends: [] }));
    const clear = boxOfPoints([a.max, b2.max]).min;
    return { min: clear, max: boxOfPoints([a.min, b2.min]).max };
  }
  const lines = over.edges.flatMap(
    ([panel2, edge]) => panels.filter((p) => p.id === panel2).flatMap((p) => edgeOnly(p, edge))
  );
  return boxOfPieces(lines, [], thickness);
}
function mouldLine({ frame, sweep, outsideRadius, low, high }) {
  const reach2 = outsideRadius / Math.cos(sweep / 2);
  return [low, high].map(
    ([from, to]) => place3(frame, [(from + to) / 2, reach2 * Math.cos(sweep / 2), reach2 * Math.sin(sweep / 2)])
  );
}
function boxOfPoints(points) {
  const along3 = (pick2) => [
    pick2(...points.map((p) => p[0])),
    pick2(...points.map((p) => p[1])),
    pick2(...points.map((p) => p[2]))
  ];
  return { min: along3(Math.min), max: along3(Math.max) };
}
function edgeOnly(p, edge) {
  const ends = p.edges.flatMap((name, i) => name === edge ? [i, (i + 1) % p.shape.length] : []);
  return [{ ...p, shape: ends.map((i) => p.shape[i]) }];
}
function boxOfPieces(panels, bends, thickness) {
  const reach2 = { min: [Infinity, Infinity, Infinity], max: [-Infinity, -Infinity, -Infinity] };
  for (const p of panels) panelReach(p, thickness, reach2);
  for (const b2 of bends) bendReach(b2, reach2);
  return reach2;
}
var AXES = [0, 1, 2];
function see({ min, max }, axis, value2) {
  if (value2 < min[axis]) min[axis] = value2;
  if (value2 > max[axis]) max[axis] = value2;
}
function panelReach({ shape, pose }, thickness, reach2) {
  for (const axis of AXES) {
    const step = pose.z[axis] * thickness;
    for (const p of shape) {
      const at = pose.origin[axis] + pose.x[axis] * p[0] + pose.y[axis] * p[1];
      see(reach2, axis, at);
      see(reach2, axis, at + step);
    }
  }
}
function bendReach(b2, reach2) {
  for (const ends of [b2.low, b2.high])
    for (const radius of [b2.insideRadius, b2.outsideRadius])
      for (const axis of AXES) edgeReach({ frame: b2.frame, sweep: b2.sweep, ends, radius }, axis, reach2);
}
function edgeReach({ frame, sweep, ends, radius }, axis, reach2) {
  const [x, y, z] = [frame.x[axis], frame.y[axis], frame.z[axis]];
  const start = frame.origin[axis] + ends[0] * x;
  const slope = (ends[1] - ends[0]) / sweep * x;
  const at = (phi) => see(reach2, axis, start + slope * phi + radius * (y * Math.cos(phi) + z * Math.sin(phi)));
  see(reach2, axis, start + radius * y);
  at(sweep);
  const size4 = radius * Math.sqrt(y * y + z * z);
  if (size4 < 1e-12 || Math.abs(slope) > size4) return;
  const [tilt, lean] = [Math.atan2(z, y), Math.asin(slope / size4)];
  for (const root of [tilt + lean, tilt + Math.PI - lean]) {
    const phi = root < 0 ? root + FULL : root % FULL;
    if (phi < sweep) at(phi);
  }
}
var FULL = 2 * Math.PI;

// packages/core/src/fold/stand.ts
function stand({ thickness, panels, bends }, pose) {
  return {
    thickness,
    panels: panels.map((p) => ({ ...p, pose: compose3(pose, p.pose) })),
    bends: bends.map((b2) => ({ ...b2, frame: compose3(pose, b2.frame) }))
  };
}

// packages/core/src/errors/nearest.ts
function nearest(word2, known) {
  const lower = here(word2.toLowerCase());
  const begun = known.filter((k) => lower.length > 1 && k.toLowerCase().startsWith(lower));
  const limit = Math.ceil(word2.length / 2);
  const near2 = known.filter((k) => Math.abs(k.length - word2.length) <= limit);
  const best = (begun.length > 0 ? begun : near2).map((k) => ({ k, d: slips(lower, k.toLowerCase()) })).toSorted((a, b2) => a.d - b2.d)[0];
  return best !== void 0 && (begun.length > 0 || best.d <= limit) ? best.k : null;
}
var ELSEWHERE = [
  [/^inch(es)?$/, "in"],
  [/^millimet(er|re)s?$/, "mm"],
  [/aluminum/, "aluminium"],
  [/galvanized/, "galvanised"]
];
var here = (word2) => ELSEWHERE.reduce((w, [from, to]) => w.replace(from, to), word2);
function slips(a, b2) {
  let row = Array.from({ length: b2.length + 1 }, (_, j) => j);
  for (const letter of a.split("")) {
    const last = row;
    row = [last[0] + 1];
    for (let j = 1; j <= b2.length; j++) {
      const [aside, above, over] = [row[j - 1], last[j], last[j - 1]];
      row.push(Math.min(aside + 1, above + 1, letter === b2[j - 1] ? over : over + 1));
    }
  }
  return row.at(-1);
}
function suggestion(word2, known) {
  const near2 = nearest(word2, known);
  const list2 = `Known: ${known.join(", ")}`;
  return near2 === null ? list2 : `Did you mean "${near2}"? ${list2}`;
}

// packages/core/src/assembly/types.ts
function pieceNames({ name, quantity }) {
  return quantity === 1 ? [name] : Array.from({ length: quantity }, (_, i) => `${name}-${i + 1}`);
}

// packages/core/src/assembly/joint-problems.ts
function jointProblems(parts2, joints) {
  return [...joints.flatMap((j) => endProblems(parts2, j)), ...claimedTwice(joints)];
}
function endProblems(parts2, joint) {
  const { from, to, path } = joint;
  const ends = ["from", "to"].flatMap((end2) => oneEnd(parts2, joint[end2], [...path, end2]));
  if (ends.length > 0) return ends;
  if (from.piece === to.piece)
    return [
      {
        code: "joint-self",
        path,
        message: `${from.piece} is joined to itself`,
        fix: "Join two different pieces"
      }
    ];
  return [];
}
function oneEnd(parts2, { piece, site: site2 }, path) {
  const part = parts2.find((p) => pieceNames(p).includes(piece));
  if (part === void 0) return [unknownPiece(parts2, piece, path)];
  const names = part.part.sites.map((s) => s.name);
  if (names.includes(site2)) return [];
  const fix = names.length === 0 ? "It has no sites as it is" : suggestion(site2, names);
  return [{ code: "site-unknown", path, message: `${piece} has no site ${quoted(site2)}`, fix }];
}
function unknownPiece(parts2, piece, path) {
  const whole2 = parts2.find((p) => p.name === piece);
  if (whole2 !== void 0) {
    const message = `there are ${whole2.quantity} pieces of ${quoted(piece)}`;
    return {
      code: "piece-which",
      path,
      message,
      fix: `Say which: ${pieceNames(whole2).slice(0, 4).join(", ")}`
    };
  }
  const numbered = parts2.find(
    (p) => piece.startsWith(`${p.name}-`) && /^\d+$/.test(piece.slice(p.name.length + 1))
  );
  if (numbered !== void 0) {
    const many = numbered.quantity === 1 ? `is one piece of ${quoted(numbered.name)}, called just that` : `are ${numbered.quantity} pieces of ${quoted(numbered.name)}`;
    return {
      code: "piece-unknown",
      path,
      message: `${quoted(piece)} given, there ${many}`,
      fix: "Raise its quantity, or join one that is there"
    };
  }
  return {
    code: "piece-unknown",
    path,
    message: `there is no part ${quoted(piece)}`,
    fix: suggestion(piece, parts2.flatMap(pieceNames))
  };
}
function claimedTwice(joints) {
  const ends = joints.flatMap((j) => [j.from, j.to].map((e) => ({ joint: j, key: `${e.piece}.${e.site}` })));
  return ends.flatMap(({ joint, key }, i) => {
    const first = ends.findIndex((e) => e.key === key);
    if (first === i || ends[first]?.joint === joint) return [];
    const message = `${key} is taken by the joint "${ends[first]?.joint.name}"`;
    return [{ code: "site-twice", path: joint.path, message, fix: "Give every joint a site of its own" }];
  });
}

// packages/core/src/assembly/site-frame.ts
function siteFrame(formed, { seat: seat2 }, pose) {
  const panel2 = formed.panels.find((p) => p.id === seat2.panel);
  const stand2 = compose3(pose, panel2.pose);
  const { height, normal } = looking(seat2, formed.thickness);
  return {
    origin: place3(stand2, [seat2.at[0], seat2.at[1], height]),
    normal: unit3(turn3(stand2, normal)),
    up: unit3(turn3(stand2, [seat2.up[0], seat2.up[1], 0]))
  };
}
function looking({ looks, lift }, thickness) {
  if (looks === "marked") return { height: thickness + lift, normal: [0, 0, 1] };
  if (looks === "unmarked") return { height: -lift, normal: [0, 0, -1] };
  return { height: lift, normal: [looks[0], looks[1], 0] };
}
var rightOf = ({ normal, up }) => cross3(up, normal);
function mate(host, own2, move) {
  const [n2, u] = [scale3(host.normal, -1), host.up];
  const world = [n2, u, cross3(u, n2)];
  const local = [own2.normal, own2.up, cross3(own2.up, own2.normal)];
  const axis = (k) => world.reduce((sum, w, i) => add3(sum, scale3(w, local[i][k])), [0, 0, 0]);
  const turn4 = { origin: [0, 0, 0], x: axis(0), y: axis(1), z: axis(2) };
  const steps = [scale3(host.up, move.up), scale3(rightOf(host), move.across), scale3(host.normal, move.out)];
  const target = steps.reduce(add3, host.origin);
  return { ...turn4, origin: sub3(target, turn3(turn4, own2.origin)) };
}
function misfit(host, other, move) {
  const d = sub3(other.origin, host.origin);
  const [up, across2] = [dot3(d, host.up) - move.up, dot3(d, rightOf(host)) - move.across];
  const same3 = dot3(host.up, other.up) - dot3(host.normal, other.normal) - dot3(rightOf(host), rightOf(other));
  const turned = Math.min(1, Math.max(-1, (same3 - 1) / 2));
  return {
    out: dot3(d, host.normal),
    aside: Math.hypot(up, across2),
    tilt: Math.acos(turned) * 180 / Math.PI
  };
}

// packages/core/src/fold/prism.ts
function panelPrisms(panel2, thickness) {
  return convexPieces(panel2.shape).map((shape) => {
    const ring = (z) => shape.map(([x, y]) => place3(panel2.pose, [x, y, z]));
    return prismBetween(ring(0), ring(thickness));
  });
}
function prismBetween(low, high) {
  const sides = low.length;
  const corners2 = [];
  for (const c of low) corners2.push(c[0], c[1], c[2]);
  for (const c of high) corners2.push(c[0], c[1], c[2]);
  const normals = [];
  for (let face = 0; face < sides + 2; face++) pushNormal(normals, corners2, sides, face);
  const directions = [];
  for (let i = 0; i < sides; i++) pushDirection(directions, corners2, i, (i + 1) % sides);
  pushDirection(directions, corners2, 0, sides);
  return { sides, corners: corners2, normals, directions, ...boxOf(corners2) };
}
var faceSize = (sides, face) => face < 2 ? sides : 4;
function faceCorner(sides, face, k) {
  if (face === 0) return sides - 1 - k;
  if (face === 1) return sides + k;
  const i = k === 0 || k === 3 ? face - 2 : (face - 1) % sides;
  return k < 2 ? i : sides + i;
}
function pushNormal(normals, corners2, sides, face) {
  const a = 3 * faceCorner(sides, face, 0);
  const b2 = 3 * faceCorner(sides, face, 1);
  const c = 3 * faceCorner(sides, face, 2);
  const ux = along(corners2, a, b2, 0);
  const uy = along(corners2, a, b2, 1);
  const uz = along(corners2, a, b2, 2);
  const vx = along(corners2, b2, c, 0);
  const vy = along(corners2, b2, c, 1);
  const vz = along(corners2, b2, c, 2);
  pushUnit(normals, uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx);
}
function pushDirection(directions, corners2, from, to) {
  const n2 = directions.length;
  const x = along(corners2, 3 * from, 3 * to, 0);
  const y = along(corners2, 3 * from, 3 * to, 1);
  const z = along(corners2, 3 * from, 3 * to, 2);
  const least = PARALLEL * PARALLEL * (x * x + y * y + z * z);
  for (let k = 0; k < n2; k += 3) {
    const u = directions[k];
    const v = directions[k + 1];
    const w = directions[k + 2];
    if ((y * w - z * v) ** 2 + (z * u - x * w) ** 2 + (x * v - y * u) ** 2 <= least) return;
  }
  pushUnit(directions, x, y, z);
}
var PARALLEL = 1e-9;
var along = (list2, from, to, axis) => list2[to + axis] - list2[from + axis];
function pushUnit(list2, x, y, z) {
  const scale2 = 1 / Math.sqrt(x * x + y * y + z * z);
  list2.push(x * scale2, y * scale2, z * scale2);
}
function boxOf(corners2) {
  const least = (axis) => {
    let min = Infinity;
    for (let i = axis; i < corners2.length; i += 3) min = Math.min(min, corners2[i]);
    return min;
  };
  const most = (axis) => {
    let max = -Infinity;
    for (let i = axis; i < corners2.length; i += 3) max = Math.max(max, corners2[i]);
    return max;
  };
  return { min: [least(0), least(1), least(2)], max: [most(0), most(1), most(2)] };
}
function leastAlong({ corners: corners2 }, x, y, z) {
  let least = Infinity;
  for (let i = 0; i < corners2.length; i += 3) {
    const d = corners2[i] * x + corners2[i + 1] * y + corners2[i + 2] * z;
    if (d < least) least = d;
  }
  return least;
}
function boxesApart(a, b2, margin = 0) {
  return boxDistance(a, b2) >= margin;
}
function boxDistance(a, b2) {
  const x = Math.max(a.min[0] - b2.max[0], b2.min[0] - a.max[0]);
  const y = Math.max(a.min[1] - b2.max[1], b2.min[1] - a.max[1]);
  const z = Math.max(a.min[2] - b2.max[2], b2.min[2] - a.max[2]);
  const most = Math.max(x, y, z);
  return most <= 0 ? most : Math.sqrt(Math.max(x, 0) ** 2 + Math.max(y, 0) ** 2 + Math.max(z, 0) ** 2);
}

// packages/core/src/fold/shell.ts
function shellDepth(solid, bend2) {
  const corners2 = localCorners(solid, bend2.frame);
  if (beside(corners2, bend2)) return 0;
  const { sides } = solid;
  const faces = Array.from(
    { length: sides + 2 },
    (_, face) => Array.from({ length: faceSize(sides, face) }, (_2, k) => corners2[faceCorner(sides, face, k)])
  );
  const middle = bend2.sweep / 2;
  return bend2.sweep > Math.PI * 0.95 ? Math.max(wedgeDepth(faces, bend2, 0, middle), wedgeDepth(faces, bend2, middle, bend2.sweep)) : wedgeDepth(faces, bend2, 0, bend2.sweep);
}
function localCorners({ corners: corners2 }, { origin, x, y, z }) {
  const local = [];
  for (let i = 0; i < corners2.length; i += 3) {
    const u = corners2[i] - origin[0];
    const v = corners2[i + 1] - origin[1];
    const w = corners2[i + 2] - origin[2];
    local.push([
      u * x[0] + v * x[1] + w * x[2],
      u * y[0] + v * y[1] + w * y[2],
      u * z[0] + v * z[1] + w * z[2]
    ]);
  }
  return local;
}
function beside(corners2, bend2) {
  const r = bend2.outsideRadius;
  const past = (axis, low, high) => corners2.every((c) => c[axis] <= low) || corners2.every((c) => c[axis] >= high);
  return past(0, Math.max(...bend2.low), Math.min(...bend2.high)) || past(1, -r, r) || past(2, -r, r);
}
function wedgeDepth(solid, bend2, from, to) {
  const planes = wedgePlanes(bend2, from, to);
  if (planes.some(([n2, c]) => solid.every((face) => face.every((p) => dot3(n2, p) <= c)))) return 0;
  const faces = solid.map((face) => planes.reduce(clipFace, face));
  const points = faces.flat();
  if (points.length === 0) return 0;
  const far = points.reduce((most, [, y, z]) => Math.max(most, y * y + z * z), 0);
  const { insideRadius, outsideRadius } = bend2;
  const past = planes.map(([n2, c]) => points.reduce((most, p) => Math.max(most, dot3(n2, p) - c), -Infinity));
  return Math.max(0, Math.min(Math.sqrt(far) - insideRadius, outsideRadius - nearest2(points), ...past));
}
function wedgePlanes({ low, high }, from, to) {
  return [
    [[1, 0, 0], Math.max(...low)],
    [[-1, 0, 0], -Math.min(...high)],
    [[0, -Math.sin(from), Math.cos(from)], 0],
    [[0, Math.sin(to), -Math.cos(to)], 0]
  ];
}
var clipFace = (face, [n2, c]) => clipRing(
  face,
  (p) => dot3(n2, p) - c,
  (p, q, t) => add3(p, scale3(sub3(q, p), t))
);
function nearest2(points) {
  const hull = convexHull(points.map((p) => [p[1], p[2]]));
  const sides = hull.map((a, i) => [a, hull[(i + 1) % hull.length]]);
  const inside2 = hull.length > 2 && sides.every(([a, b2]) => (b2[0] - a[0]) * -a[1] - (b2[1] - a[1]) * -a[0] >= 0);
  return inside2 ? 0 : Math.min(...sides.map(([a, b2]) => originTo(a, b2)));
}
function originTo([ax, ay], [bx, by]) {
  const [dx, dy] = [bx - ax, by - ay];
  const l2 = dx * dx + dy * dy;
  const t = l2 === 0 ? 0 : Math.max(0, Math.min(1, -(ax * dx + ay * dy) / l2));
  return Math.sqrt((ax + dx * t) ** 2 + (ay + dy * t) ** 2);
}
function shellStrips(bend2) {
  const count3 = Math.max(2, Math.ceil(bend2.sweep / STRIP));
  const at = (phi, r, end2) => {
    const [a, b2] = end2 === "low" ? bend2.low : bend2.high;
    return place3(bend2.frame, [a + (b2 - a) * phi / bend2.sweep, r * Math.cos(phi), r * Math.sin(phi)]);
  };
  return Array.from({ length: count3 }, (_, i) => {
    const [from, to] = [bend2.sweep * i / count3, bend2.sweep * (i + 1) / count3];
    const ring = (end2) => [
      at(from, bend2.outsideRadius, end2),
      at(to, bend2.outsideRadius, end2),
      at(to, Math.max(bend2.insideRadius, 1e-6), end2),
      at(from, Math.max(bend2.insideRadius, 1e-6), end2)
    ];
    return prismBetween(ring("low"), ring("high"));
  });
}
var STRIP = Math.PI / 24;

// packages/core/src/assembly/stand-off.ts
function standOff([host, hostSite], [guest, guestSite], normal) {
  const [own2, theirs] = [siteBends(host, hostSite), siteBends(guest, guestSite)];
  const most = [...own2, ...theirs].reduce((r, b2) => Math.max(r, b2.insideRadius), 0);
  if (most === 0) return 0;
  const [solids, guests] = [solidsNear(host, theirs, most), solidsNear(guest, own2, most)];
  const clear = (out) => free(solids, moved(theirs, scale3(normal, out))) && free(guests, moved(own2, scale3(normal, -out)));
  if (clear(0)) return 0;
  if (!clear(most)) return 0;
  let [low, high] = [0, most];
  for (let i = 0; i < 40; i++) {
    const middle = (low + high) / 2;
    if (clear(middle)) high = middle;
    else low = middle;
  }
  return high;
}
function siteBends({ bends }, { faces }) {
  return bends.filter((b2) => faces.some((f) => f.panel === b2.id));
}
function solidsNear({ panels, thickness }, bends, most) {
  const boxes = bends.map((b2) => boxOfPieces([], [b2], thickness));
  return panels.filter((p) => {
    const box = boxOfPieces([p], [], thickness);
    return boxes.some((b2) => boxDistance(b2, box) <= most);
  }).flatMap((p) => panelPrisms(p, thickness));
}
var moved = (bends, by) => bends.map((b2) => ({ ...b2, frame: { ...b2.frame, origin: add3(b2.frame.origin, by) } }));
var free = (solids, bends) => solids.every((solid) => bends.every((b2) => shellDepth(solid, b2) < TOUCH));
var TOUCH = 1e-7;

// packages/core/src/assembly/place.ts
var WIDEST_GAP = 0.5;
var ASIDE = 0.1;
var RUN_IN = 1e-3;
var TILT = 0.05;
function placePieces(parts2, joints) {
  const problems2 = jointProblems(parts2, joints);
  if (problems2.length > 0) throw new JobError(problems2);
  const pieces = parts2.flatMap((part) => pieceNames(part).map((piece) => ({ piece, part })));
  const objects = [];
  const standing2 = (piece) => objects.flatMap((o) => o.placed.get(piece) ?? []);
  for (const first of pieces.filter((p) => joints.some((j) => touches(j, p.piece)))) {
    if (standing2(first.piece).length > 0) continue;
    const home = grow({ ...first, pose: HOME }, pieces, joints);
    const last = objects.at(-1);
    const x = last === void 0 ? 0 : along2(last)[1] + BESIDE - along2(home)[0];
    objects.push(x === 0 ? home : grow({ ...first, pose: { ...HOME, origin: [x, 0, 0] } }, pieces, joints));
  }
  const order = (s) => joints.indexOf(s.joint);
  return {
    placed: pieces.flatMap(({ piece }) => standing2(piece)),
    seated: objects.flatMap((o) => o.seated).toSorted((a, b2) => order(a) - order(b2)),
    loose: pieces.map((p) => p.piece).filter((p) => standing2(p).length === 0),
    open: objects.flatMap((o) => o.open)
  };
}
var BESIDE = 50;
var touches = ({ from, to }, piece) => from.piece === piece || to.piece === piece;
function grow(first, pieces, joints) {
  const placed2 = /* @__PURE__ */ new Map([[first.piece, first]]);
  const seated2 = [];
  const misses = [];
  for (let left = [...joints]; ; ) {
    const next = left.find((j) => placed2.has(j.from.piece) || placed2.has(j.to.piece));
    if (next === void 0) return { placed: placed2, seated: seated2, open: misses };
    left = left.filter((j) => j !== next);
    const done = seat(next, pieces, placed2);
    if ("finding" in done) misses.push(done);
    else seated2.push(done);
  }
}
function along2({ placed: placed2 }) {
  const boxes = [...placed2.values()].map(({ part, pose }) => {
    const { panels, bends, thickness } = stand(part.formed, pose);
    return boxOfPieces(panels, bends, thickness);
  });
  return [Math.min(...boxes.map((b2) => b2.min[0])), Math.max(...boxes.map((b2) => b2.max[0]))];
}
function seat(joint, pieces, placed2) {
  const find = ({ piece }) => pieces.find((p) => p.piece === piece);
  const forward = placed2.has(joint.from.piece);
  const [host, guest] = forward ? [joint.from, joint.to] : [joint.to, joint.from];
  const at = placed2.get(host.piece);
  const [hostSite, guestSite] = [siteOf(at.part, host), siteOf(find(guest).part, guest)];
  const stands = placed2.get(guest.piece);
  const sign = forward ? 1 : -1;
  const lift = dropIn(hostSite, guestSite);
  const move = { up: joint.shift.up * sign + lift, across: joint.shift.across };
  const frame = siteFrame(at.part.formed, hostSite, at.pose);
  const gap = stands === void 0 ? void 0 : closed(joint, frame, stands, guestSite, move);
  if (typeof gap === "object") return gap;
  const { part } = find(guest);
  const flat = mate(frame, siteFrame(part.formed, guestSite, HOME), { ...move, out: 0 });
  const [hosts, guests] = [stand(at.part.formed, at.pose), stand(part.formed, flat)];
  const off = gap ?? standOff([hosts, hostSite], [guests, guestSite], frame.normal);
  const there = stands ?? {
    piece: guest.piece,
    part,
    pose: mate(frame, siteFrame(part.formed, guestSite, HOME), { ...move, out: off })
  };
  placed2.set(guest.piece, there);
  const sites3 = forward ? [hostSite, guestSite] : [guestSite, hostSite];
  return { joint, from: forward ? at : there, to: forward ? there : at, sites: sites3, gap: off };
}
function dropIn(host, guest) {
  return host.width === null || guest.width === null ? 0 : (host.width - guest.width) / 2;
}
function closed(joint, frame, stands, site2, move) {
  const found = misfit(frame, siteFrame(stands.part.formed, site2, stands.pose), move);
  const { tilt, out, aside } = found;
  const wrong = {
    tilt: tilt > TILT ? tilt : null,
    into: tilt <= TILT && out < -RUN_IN ? -out : null,
    gap: tilt <= TILT && out > WIDEST_GAP + 1e-6 ? out : null,
    aside: aside > ASIDE ? aside : null
  };
  if (Object.values(wrong).every((w) => w === null)) return Math.max(0, out);
  const finding = {
    part: stands.part.name,
    ...remark("loop-open", "error", {
      value: Math.max(Math.abs(out), aside),
      limit: WIDEST_GAP,
      unit: "mm",
      where: { joints: [joint.name] },
      values: {
        ends: [`${joint.from.piece}.${joint.from.site}`, `${joint.to.piece}.${joint.to.site}`],
        ...wrong
      },
      source: COMPUTED
    })
  };
  return { finding, pieces: [joint.from.piece, joint.to.piece], into: Math.max(0, -out) };
}
function siteOf(part, { site: site2 }) {
  return part.part.sites.find((s) => s.name === site2);
}

// packages/core/src/assembly/overlap.ts
var LEAST_AREA = 1;
var TILT2 = 1e-3;
function overlapsOf({ from, to, sites: sites3 }) {
  const [a, b2] = [facesOf(from, sites3[0].faces), facesOf(to, sites3[1].faces)];
  return a.flatMap((f) => b2.flatMap((g) => overlap(f, g)));
}
function facesOf(placed2, faces) {
  return faces.flatMap(({ panel: id, face }) => {
    const panel2 = placed2.part.formed.panels.find((p) => p.id === id);
    return panel2 === void 0 ? [] : [{ placed: placed2, panel: panel2, face, pose: compose3(placed2.pose, panel2.pose) }];
  });
}
function overlap(from, to) {
  const normal = outward3(from);
  if (dot3(normal, outward3(to)) > -1 + TILT2) return [];
  const gap = dot3(normal, sub3(onFace(to, [0, 0]), onFace(from, [0, 0])));
  if (gap < -0.05 || gap > WIDEST_GAP + 1e-6) return [];
  const seen = (p) => seenOn(from, onFace(to, p));
  const pieces = convexPieces(to.panel.shape).map((piece) => counterClockwise(piece.map(seen)));
  const shapes = convexPieces(from.panel.shape).flatMap(
    (own2) => pieces.map((other) => intersectConvex(own2, other))
  );
  const largest = shapes.reduce((a, b2) => polygonArea(b2) > polygonArea(a) ? b2 : a, []);
  return polygonArea(largest) < LEAST_AREA ? [] : [{ from, to, shape: largest, gap: Math.max(0, gap) }];
}
function outward3({ pose, face }) {
  return face === "marked" ? pose.z : scale3(pose.z, -1);
}
function onFace({ pose, face, placed: placed2 }, [x, y]) {
  return place3(pose, [x, y, face === "marked" ? placed2.part.formed.thickness : 0]);
}
function seenOn({ pose }, at) {
  const d = sub3(at, pose.origin);
  return [dot3(d, pose.x), dot3(d, pose.y)];
}
var counterClockwise = (shape) => polygonArea(shape) < 0 ? shape.toReversed() : shape;

// packages/core/src/assembly/fastener.ts
var SAME_PLACE = 0.01;
function fastenerAt({ joint }, overlap2, p, holes3) {
  const at = onFace(overlap2.from, p);
  const end2 = (face, i) => ({
    piece: face.placed.piece,
    panel: face.panel.id,
    at: seenOn(face, at),
    hole: holes3[i] ?? null
  });
  return {
    joint: joint.name,
    kind: joint.by?.kind.name ?? "",
    at,
    on: [end2(overlap2.from, 0), end2(overlap2.to, 1)]
  };
}

// packages/core/src/assembly/keep-off.ts
function keepOffs({ from, to }, needs) {
  const own2 = sidesOf(from, (p) => p);
  const other = sidesOf(to, (p) => seenOn(from, onFace(to, p)));
  return [...own2, ...other].map(({ from: a, to: b2, bent }) => ({
    from: a,
    to: b2,
    keep: bent ? needs.bend : needs.edge,
    what: bent ? "bend" : "edge"
  }));
}
function sidesOf(face, see2) {
  const { shape, edges } = face.panel;
  const turned = polygonArea(shape.map(see2)) < 0;
  return shape.map((p, i) => {
    const [a, b2] = [see2(p), see2(shape[(i + 1) % shape.length])];
    const bent = isBent(face.placed, face.panel, edges[i] ?? "");
    return turned ? { from: b2, to: a, bent } : { from: a, to: b2, bent };
  });
}
function isBent({ part }, panel2, edge) {
  if (edge === "near") return part.formed.bends.some((b2) => b2.id === panel2.id);
  return part.part.panels.some((p) => p.hang?.bend.parent === panel2.id && p.hang.bend.edge === edge);
}

// packages/core/src/joining/layout.ts
function fieldOf(overlap2, keeps) {
  const cut = (share2) => keeps.reduce((rest, k) => clipOff(rest, k, share2), overlap2);
  const whole2 = cut(1);
  if (whole2.length > 0) return { shape: whole2, share: 1 };
  let [low, high] = [0, 1];
  for (let i = 0; i < 40; i++) {
    const middle = (low + high) / 2;
    if (cut(middle).length > 0) low = middle;
    else high = middle;
  }
  return { shape: cut(low), share: low };
}
function clipOff(shape, { from, to, keep }, share2) {
  if (shape.length === 0) return shape;
  const d = unit(sub(to, from));
  const n2 = [-d[1], d[0]];
  return clipPolygon(shape, n2, n2[0] * from[0] + n2[1] * from[1] + keep * share2);
}
function runOf(overlap2, field) {
  const sides = overlap2.map((p, i) => sub(overlap2[(i + 1) % overlap2.length], p));
  const longest = sides.reduce((a, b2) => b2[0] ** 2 + b2[1] ** 2 > a[0] ** 2 + a[1] ** 2 + 1e-6 ? b2 : a);
  const along3 = unit(longest);
  const reach2 = field.shape.map((p) => p[0] * along3[0] + p[1] * along3[1]);
  return { field, along: along3, from: Math.min(...reach2), to: Math.max(...reach2) };
}
function pointsOn(run, count3) {
  const { from, to } = run;
  return Array.from(
    { length: count3 },
    (_, i) => middleOf(run, count3 === 1 ? (from + to) / 2 : from + (to - from) * i / (count3 - 1))
  );
}
function middleOf({ field, along: along3 }, s) {
  const across2 = [-along3[1], along3[0]];
  const t = middleAt(field.shape, along3, across2, s);
  return [along3[0] * s + across2[0] * t, along3[1] * s + across2[1] * t];
}
function middleAt(shape, along3, across2, s) {
  const local = shape.map(
    (p) => [p[0] * along3[0] + p[1] * along3[1], p[0] * across2[0] + p[1] * across2[1]]
  );
  const cuts = local.flatMap((a, i) => {
    const b2 = local[(i + 1) % local.length];
    const [u, v] = [a[0] - s, b2[0] - s];
    if (Math.abs(u) < 1e-7) return [a[1]];
    return u < 0 !== v < 0 && Math.abs(v) >= 1e-7 ? [a[1] + (b2[1] - a[1]) * u / (u - v)] : [];
  });
  return (Math.min(...cuts) + Math.max(...cuts)) / 2;
}
var capacity = ({ from, to }, pitch) => Math.max(1, Math.floor((to - from) / pitch + 1e-6) + 1);
function share(runs, ask, needs) {
  if (ask.count !== null) return shareOut(runs, ask.count);
  const counts = runs.map((r) => capacity(r, ask.pitch ?? needs.usualPitch));
  const [run] = runs;
  const alone = run !== void 0 && runs.length === 1 && counts[0] === 1 && ask.pitch === null;
  return alone && capacity(run, needs.pitch) > 1 ? [2] : counts;
}
function shareOut(runs, count3) {
  const length = (i) => Math.round((runs[i].to - runs[i].from) * 1e6) / 1e6;
  const order = runs.map((_, i) => i).toSorted((a, b2) => length(b2) - length(a) || a - b2);
  if (count3 < runs.length) return runs.map((_, i) => order.indexOf(i) < count3 ? 1 : 0);
  const counts = runs.map(() => 1);
  for (let left = count3 - runs.length; left > 0; left--) {
    const gaps = runs.map((_, i) => length(i) / counts[i]);
    const next = gaps.indexOf(gaps.reduce((a, b2) => b2 > a + 1e-6 ? b2 : a));
    counts[next] = counts[next] + 1;
  }
  return counts;
}

// packages/core/src/assembly/clear-run.ts
var STEPS = 16;
var FINE = 1e-6;
function clearRun(run, others, pitch) {
  if (others.length === 0) return run;
  const clear = (s) => {
    const at = middleOf(run, s);
    return others.every((p) => distance(p, at) >= pitch - FINE);
  };
  const from = firstClear(clear, run.from, run.to, pitch);
  const to = firstClear(clear, run.to, run.from, pitch);
  if (from === null || to === null || from > to) return null;
  return from === run.from && to === run.to ? run : { ...run, from, to };
}
function firstClear(clear, start, end2, pitch) {
  if (clear(start)) return start;
  const step = Math.sign(end2 - start) * (pitch / STEPS);
  const count3 = Math.floor(Math.abs((end2 - start) * STEPS) / pitch);
  for (let i = 1; i <= count3; i++) {
    let [near2, far] = [start + (i - 1) * step, start + i * step];
    if (!clear(far)) continue;
    while (Math.abs(far - near2) > FINE) {
      const middle = (near2 + far) / 2;
      if (clear(middle)) far = middle;
      else near2 = middle;
    }
    return far;
  }
  return null;
}

// packages/core/src/assembly/spread.ts
function spread(seated2, overlaps, by) {
  const { ask, needs, before } = by;
  const runs = overlaps.map((o) => runIn(o, needs));
  const stood = (asked2) => {
    const counts = share(runs, asked2, needs);
    const done = [];
    overlaps.forEach((o, i) => {
      const others = before.concat(done).filter((f) => goesThrough(f, o));
      const places = others.map((f) => seenOn(o.from, f.at));
      const run = clearRun(runs[i], places, needs.pitch);
      if (run === null) return;
      const whole2 = run === runs[i] || asked2.count !== null;
      const most = whole2 ? Infinity : capacity(run, asked2.pitch ?? needs.usualPitch);
      const points = pointsOn(run, Math.min(counts[i], most));
      for (const p of points) done.push(fastenerAt(seated2, o, p, needs.holes));
    });
    return done;
  };
  const fasteners = stood(ask);
  const left = share(runs, ask, needs).reduce((a, b2) => a + b2, 0) - fasteners.length;
  const works2 = () => {
    const capacities = runs.reduce((sum, r) => sum + capacity(r, needs.pitch), 0);
    let count3 = Math.min(fasteners.length - 1, capacities);
    while (count3 > 1 && closeRemarks(stood({ ...ask, count: count3, pitch: null }), needs, null).length > 0)
      count3 -= 1;
    return count3;
  };
  return {
    fasteners,
    remarks: [
      ...tightRemarks(overlaps, runs, needs),
      ...left > 0 ? [leftRemark(left, needs)] : [],
      ...closeRemarks(fasteners, needs, works2)
    ]
  };
}
var runIn = (o, needs) => runOf(o.shape, fieldOf(o.shape, keepOffs(o, needs)));
var goesThrough = ({ on }, { from, to }) => on.some((e) => [from, to].some((f) => f.placed.piece === e.piece && f.panel.id === e.panel));
function turnRemarks([only, ...others], overlaps, needs) {
  if (only === void 0 || others.length > 0) return [];
  const overlap2 = overlaps.find((o) => goesThrough(only, o));
  if (overlap2 === void 0) return [];
  const { from, to } = overlap2;
  const { pitch, pitchSource } = needs;
  const run = runIn(overlap2, needs);
  const room = run.to - run.from;
  return [
    remark("joint-turns", "warning", {
      value: 1,
      limit: 2,
      values: { faces: [from.panel.id, to.panel.id], more: room >= pitch - 1e-6 ? null : pitch - room },
      source: [...COMMON_PRACTICE, ...pitchSource]
    })
  ];
}
function tightRemarks(overlaps, runs, needs) {
  const shares = runs.map((r) => r.field.share);
  const least = Math.min(...shares);
  return least >= 1 - 1e-9 ? [] : [narrow(overlaps[shares.indexOf(least)], needs, least)];
}
function narrow({ from, to }, needs, part, cut = "free") {
  return remark("overlap-narrow", "warning", {
    value: part * needs.edge,
    limit: needs.edge,
    unit: "mm",
    values: {
      faces: [from.panel.id, to.panel.id],
      toBend: part * needs.bend,
      bend: needs.bend,
      more: cut === "cut" ? null : (1 - part) * (needs.edge + needs.bend)
    },
    source: [...needs.edgeSource, ...needs.bendSource]
  });
}
function leftRemark(left, { pitch, pitchSource }) {
  return remark("fastener-left-out", "note", {
    value: left,
    limit: 0,
    values: { pitch },
    source: pitchSource
  });
}
function closeRemarks(fasteners, { pitch, pitchSource }, most) {
  let least = Infinity;
  fasteners.forEach((a, i) => {
    for (const b2 of fasteners.slice(i + 1))
      if (shareSheet(a, b2)) least = Math.min(least, length3(sub3(a.at, b2.at)));
  });
  if (least >= pitch - 1e-6) return [];
  return [
    remark("pitch-close", "warning", {
      value: least,
      limit: pitch,
      unit: "mm",
      values: { count: fasteners.length, most: most?.() ?? null },
      source: pitchSource
    })
  ];
}
var shareSheet = (a, b2) => a.on.some((e) => b2.on.some((f) => e.piece === f.piece && e.panel === f.panel));

// packages/core/src/assembly/carry.ts
var APART = 0.3;
function carried(seated2, overlaps, cut, needs) {
  const first = seated2.from.part.made ? 0 : 1;
  const both = seated2.from.part.made && seated2.to.part.made;
  const landed = cut.map((f) => land(seated2, overlaps, f, first, both, needs));
  const lost = landed.filter((l) => l === null).length;
  const there = landed.filter((l) => l !== null);
  const least = there.reduce((a, b2) => a === null || b2.share < a.share ? b2 : a, null);
  const apart3 = Math.max(0, ...there.map((l) => l.apart));
  return {
    fasteners: there.map((l) => l.fastener),
    remarks: [
      ...lost === 0 ? [] : [lostRemark(seated2, first, lost)],
      ...apart3 <= APART ? [] : [apartRemark(seated2, apart3)],
      ...least === null || least.share >= 1 - 1e-6 ? [] : [narrow(least.overlap, needs, least.share, "cut")],
      ...closeRemarks(
        there.map((l) => l.fastener),
        needs,
        null
      )
    ]
  };
}
function land(seated2, overlaps, { on }, first, both, needs) {
  const [own2, other] = [on[first], on[1 - first]];
  for (const overlap2 of overlaps.filter((o) => (first === 0 ? o.from : o.to).panel.id === own2.panel)) {
    const onFirst = (p2) => first === 0 ? p2 : seenOn(overlap2.from, onFace(overlap2.to, p2));
    const p = onFirst(own2.at);
    const share2 = Math.min(...keepOffs(overlap2, needs).map((k) => inward2(k, p) / k.keep), 1);
    if (share2 <= 0) continue;
    const fresh = fastenerAt(seated2, overlap2, p, needs.holes);
    const facing = fresh.on[1 - first];
    const mate2 = both ? other : facing;
    const ends = first === 0 ? [own2, mate2] : [mate2, own2];
    const apart3 = both ? distance(facing.at, other.at) : 0;
    return { fastener: { ...fresh, on: ends }, overlap: overlap2, share: share2, apart: apart3 };
  }
  return null;
}
function inward2({ from, to }, p) {
  const d = unit(sub(to, from));
  const r = sub(p, from);
  return d[0] * r[1] - d[1] * r[0];
}
function lostRemark({ from, to }, first, lost) {
  const [made, other] = first === 0 ? [from.piece, to.piece] : [to.piece, from.piece];
  return remark("fastener-lost", "error", {
    value: lost,
    limit: 0,
    values: { made, other },
    source: [cite("measured", { basis: "computed" })]
  });
}
function apartRemark({ from, to }, apart3) {
  return remark("fastener-apart", "error", {
    value: apart3,
    limit: APART,
    unit: "mm",
    values: { pieces: [from.piece, to.piece] },
    source: [cite("measured", { basis: "computed" }), ...COMMON_PRACTICE]
  });
}

// packages/core/src/plane/loop.ts
function segments(loop) {
  return loop.map((v, i) => ({ from: v.at, to: loop[(i + 1) % loop.length].at, bulge: v.bulge }));
}
function isArc({ bulge }) {
  return Math.abs(bulge) > 1e-9;
}
function arcOf({ from, to, bulge }) {
  const h = (1 - bulge * bulge) / (4 * bulge);
  const centre = [
    (from[0] + to[0]) / 2 - (to[1] - from[1]) * h,
    (from[1] + to[1]) / 2 + (to[0] - from[0]) * h
  ];
  return {
    centre,
    radius: distance(from, centre),
    start: Math.atan2(from[1] - centre[1], from[0] - centre[0]),
    sweep: 4 * Math.atan(bulge)
  };
}
function bulgeAround(centre, from, to, turn4) {
  const a = Math.atan2(from[1] - centre[1], from[0] - centre[0]);
  const b2 = Math.atan2(to[1] - centre[1], to[0] - centre[0]);
  const full = 2 * Math.PI;
  const sweep = turn4 === "ccw" ? ((b2 - a) % full + full) % full : -(((a - b2) % full + full) % full);
  return Math.tan(sweep / 4);
}
function circleLoop(centre, radius) {
  return [
    { at: [centre[0] + radius, centre[1]], bulge: 1 },
    { at: [centre[0] - radius, centre[1]], bulge: 1 }
  ];
}
function segmentLength(s) {
  if (!isArc(s)) return distance(s.from, s.to);
  const { radius, sweep } = arcOf(s);
  return radius * Math.abs(sweep);
}
function loopLength(loop) {
  return segments(loop).reduce((sum, s) => sum + segmentLength(s), 0);
}
function loopArea(loop) {
  return segments(loop).reduce((sum, s) => {
    const chord = (s.from[0] * s.to[1] - s.to[0] * s.from[1]) / 2;
    if (!isArc(s)) return sum + chord;
    const { radius, sweep } = arcOf(s);
    return sum + chord + radius * radius * (sweep - Math.sin(sweep)) / 2;
  }, 0);
}
function reach(s) {
  if (!isArc(s)) return [s.from, s.to];
  const { centre, radius, start, sweep } = arcOf(s);
  const full = 2 * Math.PI;
  const compass = [
    [1, 0],
    [0, 1],
    [-1, 0],
    [0, -1]
  ];
  const passed = compass.filter((_, k) => {
    const turn4 = ((k * Math.PI / 2 - start) % full + full) % full;
    return (sweep > 0 ? turn4 : full - turn4) <= Math.abs(sweep);
  });
  return [s.from, s.to, ...passed.map(([x, y]) => [centre[0] + radius * x, centre[1] + radius * y])];
}
function boxOf2(points) {
  let [x0, y0, x1, y1] = [Infinity, Infinity, -Infinity, -Infinity];
  for (const [x, y] of points) {
    if (x < x0) x0 = x;
    if (y < y0) y0 = y;
    if (x > x1) x1 = x;
    if (y > y1) y1 = y;
  }
  return { min: [x0, y0], max: [x1, y1] };
}
function loopBox(loop) {
  const arcs = segments(loop).filter(isArc);
  return boxOf2([...loop.map((v) => v.at), ...arcs.flatMap(reach)]);
}
function tidy(loop) {
  const kept = [];
  for (const v of loop) {
    const last = kept.at(-1);
    if (last !== void 0 && distance(last.at, v.at) < SAME) kept[kept.length - 1] = v;
    else kept.push(v);
  }
  if (kept.length > 1 && distance(kept[0].at, kept.at(-1).at) < SAME) kept.pop();
  const corners2 = [];
  kept.forEach((v, i) => {
    const before = corners2.at(-1) ?? kept.at(-1);
    const after = kept[(i + 1) % kept.length];
    if (isArc(before) || isArc(v) || !between2(before.at, v.at, after.at)) corners2.push(v);
  });
  return corners2;
}
function between2(a, p, b2) {
  const [ux, uy, vx, vy] = [p[0] - a[0], p[1] - a[1], b2[0] - p[0], b2[1] - p[1]];
  return Math.abs(ux * vy - uy * vx) < SAME * (Math.sqrt(ux * ux + uy * uy) + Math.sqrt(vx * vx + vy * vy)) && ux * vx + uy * vy > 0;
}

// packages/core/src/plane/inside.ts
function distanceToSegment(p, s) {
  if (isArc(s)) {
    const { centre, radius, start, sweep } = arcOf(s);
    const full = 2 * Math.PI;
    const turn4 = ((Math.atan2(p[1] - centre[1], p[0] - centre[0]) - start) % full + full) % full;
    const on = (sweep > 0 ? turn4 : full - turn4) <= Math.abs(sweep) || turn4 === 0;
    if (on) return Math.abs(distance(p, centre) - radius);
    return Math.min(distance(p, s.from), distance(p, s.to));
  }
  const d = sub(s.to, s.from);
  const l2 = d[0] * d[0] + d[1] * d[1];
  const t = l2 === 0 ? 0 : Math.max(0, Math.min(1, ((p[0] - s.from[0]) * d[0] + (p[1] - s.from[1]) * d[1]) / l2));
  return distance(p, [s.from[0] + d[0] * t, s.from[1] + d[1] * t]);
}
function distanceToLoop(p, loop) {
  let least = Infinity;
  for (const s of segments(loop)) least = Math.min(least, distanceToSegment(p, s));
  return least;
}
function contains(loop, p) {
  let odd = false;
  let last = loop.at(-1);
  for (const next of loop) {
    const { at, bulge } = last;
    const between3 = at[1] > p[1] !== next.at[1] > p[1];
    if (between3 && westOf(at, next.at, p)) odd = !odd;
    if (isArc({ bulge }) && inSegmentOfCircle({ from: at, to: next.at, bulge }, p)) odd = !odd;
    last = next;
  }
  return odd;
}
function westOf(a, b2, p) {
  return p[0] < (b2[0] - a[0]) * (p[1] - a[1]) / (b2[1] - a[1]) + a[0];
}
function inSegmentOfCircle(s, p) {
  const { centre, radius } = arcOf(s);
  if (distance(p, centre) >= radius) return false;
  const { from: a, to: b2 } = s;
  const left = a[1] === b2[1] ? p[1] >= a[1] === b2[0] > a[0] : westOf(a, b2, p) === b2[1] > a[1];
  return s.bulge > 0 ? !left : left;
}

// packages/core/src/assembly/layers.ts
var NEAR = 0.6;
function standingSheets(pieces) {
  return pieces.flatMap(
    ({ part: { formed }, pose }) => formed.panels.map((panel2) => ({
      pose: compose3(pose, panel2.pose),
      thickness: formed.thickness,
      outline: panel2.shape.map((at) => ({ at, bulge: 0 }))
    }))
  );
}
function layersAt(at, normal, sheets) {
  const spans = sheets.flatMap(({ pose, thickness, outline }) => {
    const slope = dot3(normal, pose.z);
    if (Math.abs(slope) < 0.99) return [];
    const d = sub3(at, pose.origin);
    if (!contains(outline, [dot3(d, pose.x), dot3(d, pose.y)])) return [];
    const height = -dot3(d, pose.z) / slope;
    const other = height + thickness / slope;
    return [[Math.min(height, other), Math.max(height, other)]];
  });
  const sorted = spans.toSorted((a, b2) => a[0] - b2[0]);
  const stacks = [];
  for (const span of sorted) {
    const last = stacks.at(-1);
    if (last !== void 0 && span[0] - Math.max(...last.map((s) => s[1])) <= NEAR) last.push(span);
    else stacks.push([span]);
  }
  const here2 = stacks.find((s) => s.some(([a, b2]) => a <= 1e-3 && b2 >= -1e-3));
  return here2?.length ?? 0;
}

// packages/core/src/assembly/overhang.ts
var LET_PASS = 1;
var MOSTLY = 0.5;
function overhangRemarks({ sites: sites3 }, overlaps) {
  if (sites3.every((s) => s.width !== null)) return [];
  const found = overlaps.flatMap(
    ({ from, to, shape }) => [[from, to], [to, from]].filter(([face2]) => polygonArea(shape) > MOSTLY * Math.abs(polygonArea(face2.panel.shape))).map(([face2, other2]) => ({ face: face2, other: other2, past: pastEdge(face2, other2) }))
  );
  const worst = found.toSorted((a, b2) => b2.past - a.past)[0];
  if (worst === void 0 || worst.past <= LET_PASS) return [];
  const { face, other, past } = worst;
  return [
    remark("joint-overhang", "warning", {
      value: past,
      limit: LET_PASS,
      unit: "mm",
      values: { panel: face.panel.id, piece: face.placed.piece, over: other.placed.piece },
      source: COMPUTED
    })
  ];
}
function pastEdge(face, other) {
  const loop = other.panel.shape.map((at) => ({ at, bulge: 0 }));
  const seen = face.panel.shape.map((p) => seenOn(other, onFace(face, p)));
  return Math.max(0, ...seen.filter((p) => !contains(loop, p)).map((p) => distanceToLoop(p, loop)));
}

// packages/core/src/assembly/reach.ts
var DIRECTIONS = 16;
var ARM = 15;
function reachTo(at, normal, pieces) {
  const x = unit3(cross3(normal, Math.abs(normal[2]) < 0.9 ? [0, 0, 1] : [1, 0, 0]));
  const y = cross3(normal, x);
  const seen = (p) => {
    const d = sub3(p, at);
    return [dot3(d, x), dot3(d, y)];
  };
  const shapes = pieces.flatMap(
    ({ part, pose }) => part.formed.panels.flatMap((panel2) => {
      const stand2 = compose3(pose, panel2.pose);
      return convexPieces(panel2.shape).map((shape) => shape.map((p) => seen(place3(stand2, [...p, 0]))));
    })
  );
  const ways = Array.from({ length: DIRECTIONS }, (_, i) => {
    const turn4 = 2 * Math.PI * i / DIRECTIONS;
    return [Math.cos(turn4), Math.sin(turn4)];
  });
  return Math.min(...ways.map((way) => endOf(shapes, way)));
}
function endOf(shapes, way) {
  const across2 = [-way[1], way[0]];
  const ends = shapes.flatMap((shape) => {
    const strip = clipPolygon(clipPolygon(shape, across2, -ARM), [-across2[0], -across2[1]], -ARM);
    const left = strip.length > 0 ? strip : shape.filter((p) => Math.abs(dot(p, across2)) <= ARM);
    return left.map((p) => dot(p, way));
  });
  return Math.max(0, ...ends);
}

// packages/core/src/assembly/fasten.ts
function fasten(seated2, sheets, { cut, before }) {
  const { joint, from, to } = seated2;
  const told = { joint: joint.name, part: from.part.name, fasteners: [], holes: [] };
  if (joint.by === null) return { ...told, remarks: seated2.gap > WIDEST_GAP ? [nothingMeets(seated2)] : [] };
  const { kind, ask } = joint.by;
  const stack = [from, to].map(
    (p) => ({ part: p.piece, thickness: p.part.formed.thickness, material: p.part.material })
  );
  const overlaps = overlapsOf(seated2);
  if (overlaps.length === 0) return { ...told, remarks: [nothingMeets(seated2)] };
  const made = from.part.made || to.part.made;
  const others = before.filter((f) => f.kind === kind.name);
  const own2 = made ? cut.filter((f) => f.joint === joint.name && f.kind === kind.name) : [];
  const out = outward3(overlaps[0].from);
  const stood = (count3) => {
    const needs = kind.needs(stack, ask, count3);
    const done = own2.length > 0 ? carried(seated2, overlaps, own2, needs) : spread(seated2, overlaps, { ask, needs, before: others });
    return {
      ...done,
      remarks: [...done.remarks, ...turnRemarks(done.fasteners, overlaps, needs)],
      holes: needs.holes,
      layers: Math.max(2, ...done.fasteners.map((f) => layersAt(f.at, out, sheets)))
    };
  };
  const first = stood(stack.length);
  const { fasteners, holes: holes3, remarks: remarks4, layers } = first.layers > stack.length ? stood(first.layers) : first;
  const reach2 = () => Math.max(0, ...fasteners.map((f) => reachTo(f.at, out, [from, to])));
  const stacked = kind.remarks(stack, ask, { layers, reach: reach2 });
  return {
    ...told,
    fasteners,
    holes: holes3,
    remarks: [...stacked, ...remarks4, ...overhangRemarks(seated2, overlaps)]
  };
}
function nothingMeets({ joint, gap }) {
  const [a, b2] = [joint.from, joint.to].map(({ piece, site: site2 }) => `${piece}.${site2}`);
  return remark("joint-empty", joint.by === null ? "warning" : "error", {
    ...gap <= WIDEST_GAP ? {} : { value: gap, limit: WIDEST_GAP, unit: "mm" },
    values: { ends: [a, b2] },
    source: COMPUTED
  });
}

// packages/core/src/fold/prism-overlap.ts
var PARALLEL2 = 1e-6;
function overlapDepth(a, b2) {
  if (boxesApart(a, b2)) return 0;
  const depth = depthAlongAll(a, b2, a.normals, Infinity);
  const both = depth <= 0 ? depth : depthAlongAll(a, b2, b2.normals, depth);
  return both <= 0 ? 0 : Math.max(0, depthAcrossEdges(a, b2, both));
}
function depthAlongAll(a, b2, axes, known) {
  let depth = known;
  for (let i = 0; i < axes.length && depth > 0; i += 3)
    depth = Math.min(
      depth,
      depthAlong(a, b2, axes[i], axes[i + 1], axes[i + 2])
    );
  return depth;
}
function depthAcrossEdges(a, b2, known) {
  let depth = known;
  for (let i = 0; i < a.directions.length && depth > 0; i += 3)
    for (let k = 0; k < b2.directions.length && depth > 0; k += 3) {
      const ux = a.directions[i];
      const uy = a.directions[i + 1];
      const uz = a.directions[i + 2];
      const vx = b2.directions[k];
      const vy = b2.directions[k + 1];
      const vz = b2.directions[k + 2];
      const x = uy * vz - uz * vy;
      const y = uz * vx - ux * vz;
      const z = ux * vy - uy * vx;
      const size4 = Math.sqrt(x * x + y * y + z * z);
      if (size4 > PARALLEL2) depth = Math.min(depth, depthAlong(a, b2, x / size4, y / size4, z / size4));
    }
  return depth;
}
function depthAlong(a, b2, x, y, z) {
  const a0 = leastAlong(a, x, y, z);
  const b1 = -leastAlong(b2, -x, -y, -z);
  if (b1 <= a0) return b1 - a0;
  const a1 = -leastAlong(a, -x, -y, -z);
  const b0 = leastAlong(b2, x, y, z);
  return Math.min(a1 - b0, b1 - a0);
}

// packages/core/src/fold/lump.ts
function lumpsOf({ panels, bends, thickness }) {
  const flat = panels.map((panel2) => {
    const prisms = once(() => panelPrisms(panel2, thickness));
    return { id: panel2.id, bend: null, prisms, ...boxOfPieces([panel2], [], thickness) };
  });
  const round2 = bends.map((bend2) => {
    const prisms = once(() => shellStrips(bend2));
    return { id: bend2.id, bend: bend2, prisms, ...boxOfPieces([], [bend2], thickness) };
  });
  return [...flat, ...round2];
}
function once(make) {
  let made = null;
  return () => {
    made ??= { value: make() };
    return made.value;
  };
}
function lumpDepth(p, q) {
  if (boxDistance(p, q) >= 0) return 0;
  if (p.bend !== null && q.bend === null) return ringDepth(q.prisms(), p.bend);
  if (q.bend !== null && p.bend === null) return ringDepth(p.prisms(), q.bend);
  let depth = 0;
  for (const u of p.prisms()) for (const v of q.prisms()) depth = Math.max(depth, overlapDepth(u, v));
  return depth;
}
var ringDepth = (solids, bend2) => solids.reduce((depth, solid) => Math.max(depth, shellDepth(solid, bend2)), 0);

// packages/core/src/fold/prism-distance.ts
function prismDistanceUpTo(a, b2, enough) {
  if (boxDistance(a, b2) >= enough) return enough;
  const depth = overlapDepth(a, b2);
  if (depth > 0) return -depth;
  const edges = edgeDistance(a, b2, enough);
  return cornerDistance(b2, a, cornerDistance(a, b2, edges));
}
function edgeDistance(a, b2, enough) {
  const most = enough * enough;
  const own2 = edgesNear(a, b2, most);
  const other = edgesNear(b2, a, most);
  let best = most;
  for (let i = 0; i < own2.length; i += 2)
    for (let k = 0; k < other.length; k += 2) {
      const p = own2[i];
      const q = own2[i + 1];
      const r = other[k];
      const s = other[k + 1];
      const square2 = segmentDistance(a.corners, p, q, b2.corners, r, s);
      if (square2 < best) best = square2;
    }
  return best < most ? Math.sqrt(best) : enough;
}
function edgesNear(a, b2, square2) {
  const { corners: corners2, sides } = a;
  const near2 = [];
  const look = (p, q) => {
    if (spanDistance(corners2, p, q, b2) < square2) near2.push(p, q);
  };
  for (let i = 0; i < sides; i++) {
    const low = 3 * i;
    const high = 3 * (sides + i);
    const last = i + 1 === sides;
    look(low, last ? 0 : low + 3);
    look(high, last ? 3 * sides : high + 3);
    look(low, high);
  }
  return near2;
}
function spanDistance(corners2, p, q, { min, max }) {
  let sum = 0;
  for (let axis = 0; axis < 3; axis++) {
    const u = corners2[p + axis];
    const v = corners2[q + axis];
    const gap = Math.max(Math.min(u, v) - max[axis], min[axis] - Math.max(u, v), 0);
    sum += gap * gap;
  }
  return sum;
}
function cornerDistance(a, b2, enough) {
  let best = enough;
  for (let c = 0; c < a.corners.length; c += 3) {
    if (spanDistance(a.corners, c, c, b2) >= best * best) continue;
    for (let face = 0; face < b2.sides + 2; face++) {
      const height = Math.abs(heightOver(b2, face, a.corners, c));
      if (height < best && isOver(b2, face, a.corners, c)) best = height;
    }
  }
  return best;
}
function heightOver(solid, face, points, p) {
  const { normals, corners: corners2, sides } = solid;
  const at = 3 * faceCorner(sides, face, 0);
  let height = 0;
  for (let axis = 0; axis < 3; axis++)
    height += normals[3 * face + axis] * (points[p + axis] - corners2[at + axis]);
  return height;
}
function isOver({ sides, corners: corners2, normals }, face, points, p) {
  const size4 = faceSize(sides, face);
  for (let k = 0; k < size4; k++) {
    const a = 3 * faceCorner(sides, face, k);
    const b2 = 3 * faceCorner(sides, face, k + 1 === size4 ? 0 : k + 1);
    const ux = corners2[b2] - corners2[a];
    const uy = corners2[b2 + 1] - corners2[a + 1];
    const uz = corners2[b2 + 2] - corners2[a + 2];
    const vx = points[p] - corners2[a];
    const vy = points[p + 1] - corners2[a + 1];
    const vz = points[p + 2] - corners2[a + 2];
    const side = (uy * vz - uz * vy) * normals[3 * face] + (uz * vx - ux * vz) * normals[3 * face + 1] + (ux * vy - uy * vx) * normals[3 * face + 2];
    if (side < 0) return false;
  }
  return true;
}
function segmentDistance(a, p, q, b2, r, s) {
  const px = a[p];
  const py = a[p + 1];
  const pz = a[p + 2];
  const rx = b2[r];
  const ry = b2[r + 1];
  const rz = b2[r + 2];
  const ux = a[q] - px;
  const uy = a[q + 1] - py;
  const uz = a[q + 2] - pz;
  const vx = b2[s] - rx;
  const vy = b2[s + 1] - ry;
  const vz = b2[s + 2] - rz;
  const wx = px - rx;
  const wy = py - ry;
  const wz = pz - rz;
  const uu = ux * ux + uy * uy + uz * uz;
  const uv = ux * vx + uy * vy + uz * vz;
  const vv = vx * vx + vy * vy + vz * vz;
  const uw = ux * wx + uy * wy + uz * wz;
  const vw = vx * wx + vy * wy + vz * wz;
  const det = uu * vv - uv * uv;
  let t = det > 1e-12 * uu * vv ? clamp((uv * vw - vv * uw) / det) : 0;
  let k = vv === 0 ? 0 : (uv * t + vw) / vv;
  if (k < 0 || k > 1) {
    k = clamp(k);
    t = uu === 0 ? 0 : clamp((uv * k - uw) / uu);
  }
  const x = px + ux * t - (rx + vx * k);
  const y = py + uy * t - (ry + vy * k);
  const z = pz + uz * t - (rz + vz * k);
  return x * x + y * y + z * z;
}
var clamp = (x) => Math.max(0, Math.min(1, x));

// packages/core/src/assembly/fit.ts
var CLASH = 0.01;
var TIGHT = 5e-3;
function fitsOf(joints, placed2, open) {
  const lumps = new Map(placed2.map((p) => [p.piece, lumpsOf(stand(p.part.formed, p.pose))]));
  const of = ({ piece }) => lumps.get(piece);
  const rows2 = joints.map((s) => fitRow(s, matingOf(s, joints), of(s.from), of(s.to)));
  const tight = rows2.flatMap((r, i) => tightFinding(r, joints[i]));
  const clashes2 = placed2.flatMap(
    (a, i) => placed2.slice(i + 1).flatMap((b2) => clashFindings(a, b2, of(a), of(b2), open))
  );
  return { rows: rows2, findings: [...clashes2, ...tight] };
}
var spotOf = ({ piece }, { id, bend: bend2 }) => ({
  piece,
  panel: id,
  what: bend2 === null ? "panel" : "bend"
});
function matingOf({ from, to }, all) {
  return all.flatMap((s) => {
    const forward = s.from === from && s.to === to;
    if (!forward && !(s.from === to && s.to === from)) return [];
    const faces = s.sites.map((site2) => site2.faces.map((f) => f.panel));
    const { normal, origin } = siteFrame(s.from.part.formed, s.sites[0], s.from.pose);
    const out = forward ? normal : scale3(normal, -1);
    return [
      { faces: forward ? faces : [faces[1], faces[0]], normal: out, at: dot3(out, origin), gap: s.gap }
    ];
  });
}
var seated = (p, q, { faces }) => faces[0].includes(p.id) && faces[1].includes(q.id);
function parted(p, q, { normal, at }) {
  const least = (l, [x, y, z]) => Math.min(...l.prisms().map((solid) => leastAlong(solid, x, y, z)));
  return -least(p, scale3(normal, -1)) - at <= CLASH && least(q, normal) - at >= -CLASH;
}
function fitRow({ joint, from, to, gap }, matings, a, b2) {
  const pairs = a.flatMap((p) => b2.map((q) => ({ p, q, far: boxDistance(p, q) })));
  let best = {
    found: Infinity,
    between: [spotOf(from, a[0]), spotOf(to, b2[0])]
  };
  for (const { p, q, far } of pairs.toSorted((x, y) => x.far - y.far)) {
    if (far >= best.found) break;
    if (matings.some((m) => seated(p, q, m))) continue;
    const found = lumpDistance(p, q, best.found);
    if (found >= best.found || matings.some((m) => found <= m.gap + CLASH && parted(p, q, m))) continue;
    best = { found, between: [spotOf(from, p), spotOf(to, q)] };
  }
  return { joint: joint.name, asked: joint.clearance, ...best, gap };
}
function lumpDistance(p, q, enough) {
  const depth = lumpDepth(p, q);
  if (depth > CLASH) return -depth;
  let best = enough;
  for (const u of p.prisms())
    for (const v of q.prisms()) best = Math.min(best, Math.max(0, prismDistanceUpTo(u, v, best)));
  return best;
}
function tightFinding(row, { from }) {
  if (row.found < 0 || row.found >= row.asked - TIGHT) return [];
  return [
    {
      part: from.part.name,
      ...remark("fit-tight", "warning", {
        value: row.found,
        limit: row.asked,
        unit: "mm",
        where: { joints: [row.joint] },
        values: { between: row.between },
        source: [cite("joints")]
      })
    }
  ];
}
function deepestPair(p, q) {
  let worst = null;
  for (const u of p)
    for (const v of q) {
      const depth = lumpDepth(u, v);
      if (depth > (worst?.depth ?? CLASH)) worst = { u, v, depth };
    }
  return worst;
}
function clashFindings(a, b2, p, q, open) {
  const worst = deepestPair(p, q);
  if (worst === null) return [];
  const joined = open.filter((m) => m.pieces.includes(a.piece) && m.pieces.includes(b2.piece));
  const by = Math.max(worst.depth, ...joined.map((m) => m.into));
  return [
    {
      part: b2.part.name,
      ...remark("clash", "error", {
        value: worst.depth,
        limit: 0,
        unit: "mm",
        values: { between: [spotOf(a, worst.u), spotOf(b2, worst.v)], by },
        source: [cite(null, { basis: "computed" })]
      })
    }
  ];
}

// packages/core/src/assembly/room.ts
var WEB = 0.5;
function withRoom(fastened, placed2) {
  const cut = /* @__PURE__ */ new Map();
  const partOf = ({ piece }) => placed2.find((p) => p.piece === piece).part;
  const fits = (end2, diameter) => {
    const { name, formed } = partOf(end2);
    const { shape, holes: holes3 } = formed.panels.find((p) => p.id === end2.panel);
    const others = cut.get(`${name}.${end2.panel}`) ?? [...holes3];
    cut.set(`${name}.${end2.panel}`, others);
    if (others.some((h) => distance(h.at, end2.at) < SAME_PLACE && h.diameter === diameter)) return true;
    const loop = shape.map((at) => ({ at, bulge: 0 }));
    const room = Math.min(
      contains(loop, end2.at) ? distanceToLoop(end2.at, loop) : 0,
      ...others.map((h) => distance(h.at, end2.at) - h.diameter / 2)
    );
    if (room < diameter / 2 + WEB) return false;
    others.push({ at: end2.at, diameter });
    return true;
  };
  return fastened.map((joint) => {
    const crowded = [];
    const fasteners = joint.fasteners.map((f) => {
      const on = f.on.map((end2, i) => {
        const wanted = joint.holes[i] ?? null;
        if (wanted === null || end2.hole !== null && fits(end2, end2.hole)) return end2;
        crowded.push(partOf(end2).name);
        return { ...end2, hole: null };
      });
      return { ...f, on };
    });
    return { ...joint, fasteners, remarks: [...joint.remarks, ...crowdRemarks(crowded)] };
  });
}
function crowdRemarks(parts2) {
  if (parts2.length === 0) return [];
  return [
    remark("hole-crowded", "warning", {
      value: parts2.length,
      limit: 0,
      values: { parts: [...new Set(parts2)] },
      source: COMPUTED
    })
  ];
}

// packages/core/src/assembly/assemble.ts
function assemble(parts2, joints, cut = []) {
  const { placed: placed2, seated: seated2, loose, open } = placePieces(parts2, joints);
  const sheets = standingSheets(placed2);
  const fastened = withRoom(fastenAll(seated2, sheets, cut), placed2);
  const { rows: rows2, findings } = fitsOf(seated2, placed2, open);
  const fasteners = fastened.flatMap((f) => f.fasteners);
  return {
    placed: placed2,
    seated: seated2,
    fasteners,
    fits: rows2,
    findings: [
      ...open.map((o) => o.finding),
      ...findings,
      ...fastenerFindings(fastened.map((f) => withoutTurn(f, fasteners))),
      ...looseFindings(parts2, loose),
      ...unevenFindings(parts2, fasteners)
    ]
  };
}
function fastenAll(seated2, sheets, cut) {
  const done = [];
  for (const s of seated2) done.push(fasten(s, sheets, { cut, before: done.flatMap((f) => f.fasteners) }));
  return done;
}
function withParts(assembly, parts2) {
  const fresh = new Map(
    assembly.placed.map((p) => [
      p.piece,
      { ...p, part: parts2.find((a) => a.name === p.part.name) ?? p.part }
    ])
  );
  const of = ({ piece }) => fresh.get(piece);
  return {
    ...assembly,
    placed: assembly.placed.map(of),
    seated: assembly.seated.map((s) => ({ ...s, from: of(s.from), to: of(s.to) }))
  };
}
function withoutTurn(joint, all) {
  const [own2] = joint.fasteners;
  const pair2 = own2?.on.map((e) => e.piece) ?? [];
  const held = all.filter((f) => pair2.every((p) => f.on.some((e) => e.piece === p)));
  return held.length <= 1 ? joint : { ...joint, remarks: joint.remarks.filter((r) => r.code !== "joint-turns") };
}
function fastenerFindings(fastened) {
  const all = fastened.flatMap(
    ({ joint, part, remarks: remarks4 }) => remarks4.map((remark2) => ({ joint, part, remark: remark2 }))
  );
  const round2 = (_, v) => typeof v === "number" ? Math.round(v * 100) / 100 : v;
  const keys = all.map(({ remark: r }) => JSON.stringify([r.code, r.values, r.value, r.limit], round2));
  return [...new Set(keys)].map((key) => {
    const group2 = all.filter((_, i) => keys[i] === key);
    const { remark: first, part } = group2[0];
    const joints = group2.map((g) => g.joint);
    return {
      ...first,
      where: { ...first.where, joints },
      part: group2.every((g) => g.part === part) ? part : null
    };
  });
}
function looseFindings(parts2, loose) {
  return loose.map((piece) => ({
    part: parts2.find((p) => pieceNames(p).includes(piece))?.name ?? null,
    ...remark("piece-loose", "warning", { values: { piece }, source: [cite("joints")] })
  }));
}
function marksOf({ name, quantity }, fasteners) {
  const pieces = pieceNames({ name, quantity });
  const found = [];
  for (const { kind, joint, on } of fasteners)
    for (const end2 of on.filter((e) => pieces.includes(e.piece)))
      if (!found.some((m) => sameMark(m, end2, kind)))
        found.push({ kind, at: end2.at, joint, hole: end2.hole, panel: end2.panel });
  return found;
}
var sameMark = (mark, { panel: panel2, at, hole: hole2 }, kind) => mark.kind === kind && mark.panel === panel2 && mark.hole === hole2 && distance(mark.at, at) < SAME_PLACE;
function withMarks(part, marks) {
  if (marks.length === 0) return part;
  const panels = part.panels.map((p) => {
    const own2 = marks.filter((m) => m.panel === p.id).map(({ panel: _, ...m }) => m);
    return own2.length === 0 ? p : { ...p, marks: [...p.marks, ...own2] };
  });
  return { ...part, panels };
}
function unevenFindings(parts2, fasteners) {
  return parts2.flatMap((part) => {
    const counts = pieceNames(part).map(
      (piece) => fasteners.filter((f) => f.on.some((e) => e.piece === piece)).length
    );
    const marks = marksOf(part, fasteners).length;
    if (part.quantity === 1 || marks === Math.max(...counts)) return [];
    return [
      {
        part: part.name,
        ...remark("pieces-differ", "warning", {
          value: marks,
          limit: Math.max(...counts),
          values: { quantity: part.quantity },
          source: [cite("joints")]
        })
      }
    ];
  });
}

// packages/core/src/units/angle.ts
function radians(degrees2) {
  return degrees2 * Math.PI / 180;
}
function degrees(radian) {
  return radian * 180 / Math.PI;
}

// packages/core/src/bending/working.ts
var SCALE = 1e4;
var FINEST = 1e9;
function workingNumber(v) {
  return String(Math.round(v * SCALE) / SCALE);
}
function workingLine(formula, numbers2, value2) {
  const result = Math.round(value2(...numbers2) * SCALE);
  for (let scale2 = SCALE; ; scale2 *= 10) {
    const printed = numbers2.map((v) => Math.round(v * scale2) / scale2);
    if (scale2 === FINEST || Math.round(value2(...printed) * SCALE) === result) {
      const words = formula.split("#").reduce((text2, part, i) => `${text2}${printed[i - 1]}${part}`);
      return `${words} = ${result / SCALE}`;
    }
  }
}

// packages/core/src/bending/rule.ts
function outsideSetback({ thickness, insideRadius, angle: angle2 }) {
  return (angle2 <= 90 ? Math.tan(radians(angle2) / 2) : 1) * (insideRadius + thickness);
}
function allowanceAtK({ thickness, insideRadius, angle: angle2 }, k) {
  return radians(angle2) * (insideRadius + k * thickness);
}
function termsFromAllowance(bend2, allowance, working, source) {
  const setback2 = outsideSetback(bend2);
  const deduction = 2 * setback2 - allowance;
  return {
    allowance,
    setback: setback2,
    deduction,
    get working() {
      return [...working(), setbackLine(bend2), deductionLine(setback2, allowance)];
    },
    source
  };
}
function setbackLine({ insideRadius, thickness, angle: angle2 }) {
  const sum = insideRadius + thickness;
  return angle2 <= 90 ? workingLine("SB = tan(#\xB0/2) \xD7 #", [angle2, sum], (a, s) => Math.tan(radians(a) / 2) * s) : `SB = R + T (outer tangent) = ${workingNumber(sum)}`;
}
function deductionLine(setback2, allowance) {
  return workingLine("BD = 2 \xD7 # \u2212 #", [setback2, allowance], (s, b2) => 2 * s - b2);
}

// packages/core/src/bending/folded-flat.ts
function foldedFlat(bend2) {
  const k = bend2.insideRadius === 0 ? 0.5 : 0.45;
  const allowance = allowanceAtK(bend2, k);
  const { thickness: T, insideRadius: R, angle: A } = bend2;
  const working = () => [
    workingLine(
      `folded flat: BA = \u03C0/180 \xD7 #\xB0 \xD7 (# + ${k} \xD7 #)`,
      [A, R, T],
      (a, r, t) => radians(a) * (r + k * t)
    )
  ];
  return termsFromAllowance(bend2, allowance, working, "hem figures: common practice, no source");
}

// packages/core/src/bending/din-6935.ts
var SOURCE = "DIN 6935";
var ROUNDING = 1e-9;
var LEAST_RATIO = 0.05;
function dinFactor(ratio) {
  return ratio > 5 ? 1 : 0.65 + 0.5 * Math.log10(ratio);
}
var din6935 = frozen({
  name: "din-6935",
  title: "DIN 6935",
  source: SOURCE,
  compensates: true,
  terms: (bend2) => {
    const { thickness: s, insideRadius: r, angle: angle2 } = bend2;
    if (r === 0 && angle2 === 180) return foldedFlat(bend2);
    if (r / s < LEAST_RATIO - ROUNDING)
      return fail(
        "din-6935-range",
        ["insideRadius"],
        `r/s = ${workingNumber(r / s)} given; DIN 6935 can be used from r/s = ${LEAST_RATIO}`,
        (say) => `Use an inside radius of ${say.least(LEAST_RATIO * s)} or more, or another rule`
      );
    return angle2 < 15 ? nearlyFlat(bend2) : corrected(bend2);
  }
});
function nearlyFlat(bend2) {
  return termsFromAllowance(
    bend2,
    2 * outsideSetback(bend2),
    () => [`\u03B2 = ${workingNumber(180 - bend2.angle)}\xB0 > 165\xB0: v = 0`],
    SOURCE
  );
}
function corrected(bend2) {
  const { thickness: s, insideRadius: r, angle: angle2 } = bend2;
  const k = dinFactor(r / s);
  const allowance = radians(angle2) * (r + s * k / 2);
  return termsFromAllowance(
    bend2,
    allowance,
    () => [
      r / s > 5 ? "k = 1 (r/s > 5)" : workingLine("k = 0.65 + 0.5 \xD7 log10(#)", [r / s], (q) => dinFactor(q)),
      workingLine(
        "BA = \u03C0/180 \xD7 #\xB0 \xD7 (# + # \xD7 #/2)",
        [angle2, r, s, k],
        (a, b2, t, f) => radians(a) * (b2 + t * f / 2)
      )
    ],
    SOURCE
  );
}

// packages/core/src/bending/handbook.ts
var HANDBOOK_GROUPS = frozen({
  soft: { c: 0.55, metals: "soft brass, soft copper" },
  medium: { c: 0.64, metals: "half-hard copper and brass, soft steel, aluminium" },
  hard: { c: 0.71, metals: "bronze, hard copper, cold-rolled and spring steel" }
});
var SOURCE2 = "Machinery's Handbook, 31st ed., p. 1421";
var PER_RADIUS = 1.57;
function handbook(group2) {
  const { c, metals } = HANDBOOK_GROUPS[group2];
  return {
    name: "handbook",
    title: `handbook, ${group2} group (${metals})`,
    source: SOURCE2,
    compensates: true,
    terms: (bend2) => {
      const { thickness: T, insideRadius: R, angle: A } = bend2;
      const allowance = (c * T + PER_RADIUS * R) * A / 90;
      const working = () => [
        workingLine(
          `BA = (${c} \xD7 # + ${PER_RADIUS} \xD7 #) \xD7 #/90`,
          [T, R, A],
          (t, r, a) => (c * t + PER_RADIUS * r) * a / 90
        )
      ];
      return termsFromAllowance(bend2, allowance, working, SOURCE2);
    }
  };
}

// packages/core/src/bending/hem.ts
var TEARDROP_OPENING = 0.25;
function hemFold(hem3, thickness) {
  if (hem3.type === "closed") return { angle: 180, insideRadius: 0, leg: hem3.length };
  const insideRadius = (hem3.gap ?? (hem3.type === "open" ? 1 : 2) * thickness) / 2;
  if (hem3.type === "open") return { angle: 180, insideRadius, leg: hem3.length };
  return teardrop(hem3.length, insideRadius, thickness);
}
function teardropShape(R, T) {
  const opening = Math.min(TEARDROP_OPENING * T, R);
  const past = (s) => 2 * Math.atan((2 * R - opening) / (s + Math.sqrt(s * s + opening * (2 * R - opening))));
  const width = (s) => (R + T) * (1 + Math.sin(past(s))) + s * Math.cos(past(s));
  return { past, width, least: Math.max(T, 2 * R) };
}
function teardrop(length, R, T) {
  const { past, width, least } = teardropShape(R, T);
  let [low, high] = [least, length + least];
  for (let i = 0; i < 200 && high - low > 1e-13 * high; i++) {
    const s2 = (low + high) / 2;
    if (width(s2) < length) low = s2;
    else high = s2;
  }
  const s = (low + high) / 2;
  return { angle: 180 + degrees(past(s)), insideRadius: R, leg: s + R + T };
}
function leastHemLength({ type, gap }, thickness) {
  const { insideRadius: R } = hemFold({ type, gap, length: 100 * thickness }, thickness);
  if (type !== "teardrop") return R + 2 * thickness;
  const shape = teardropShape(R, thickness);
  return shape.width(shape.least);
}

// packages/core/src/bending/k-factor.ts
function kFactor(k, source = "k given in the job") {
  return {
    name: "k-factor",
    title: `k-factor, K = ${workingNumber(k)}`,
    source,
    compensates: true,
    terms: (bend2) => {
      const { thickness: T, insideRadius: R, angle: A } = bend2;
      const allowance = allowanceAtK(bend2, k);
      const working = () => [
        workingLine("BA = \u03C0/180 \xD7 #\xB0 \xD7 (# + # \xD7 #)", [A, R, k, T], (a, r, f, t) => radians(a) * (r + f * t))
      ];
      return termsFromAllowance(bend2, allowance, working, source);
    }
  };
}

// node_modules/.pnpm/zod@4.6.7/node_modules/zod/v4/core/util.js
function getEnumValues(entries) {
  const numericValues = Object.values(entries).filter((v) => typeof v === "number");
  const values11 = Object.entries(entries).filter(([k, _]) => numericValues.indexOf(+k) === -1).map(([_, v]) => v);
  return values11;
}
function jsonStringifyReplacer(_, value2) {
  if (typeof value2 === "bigint")
    return value2.toString();
  return value2;
}
var Cached = class {
  constructor(getter) {
    this._getter = getter;
    this._value = void 0;
  }
  get value() {
    const getter = this._getter;
    if (getter !== void 0) {
      this._value = getter();
      this._getter = void 0;
    }
    return this._value;
  }
};
function cached(getter) {
  return new Cached(getter);
}
function cleanRegex(source) {
  const start = source.startsWith("^") ? 1 : 0;
  const end2 = source.endsWith("$") ? source.length - 1 : source.length;
  return source.slice(start, end2);
}
function floatSafeRemainder(val, step) {
  const ratio = val / step;
  const roundedRatio = Math.round(ratio);
  const tolerance = 4 * Number.EPSILON * Math.max(Math.abs(ratio), 1);
  if (Math.abs(ratio - roundedRatio) < tolerance)
    return 0;
  return ratio - roundedRatio;
}
function assignProp(target, prop, value2) {
  Object.defineProperty(target, prop, {
    value: value2,
    writable: true,
    enumerable: true,
    configurable: true
  });
}
function rawShape(def) {
  const desc = Object.getOwnPropertyDescriptor(def, "shape");
  return desc?.get ? desc.get.raw : desc?.value;
}
function mergeDefs(...defs) {
  const mergedDescriptors = {};
  for (const def of defs) {
    const descriptors = Object.getOwnPropertyDescriptors(def);
    Object.assign(mergedDescriptors, descriptors);
  }
  return Object.defineProperties({}, mergedDescriptors);
}
var captureStackTrace = "captureStackTrace" in Error ? Error.captureStackTrace : (..._args) => {
};
function isObject(data2) {
  return typeof data2 === "object" && data2 !== null && !Array.isArray(data2);
}
function isPlainObject(o) {
  if (isObject(o) === false)
    return false;
  const ctor = o.constructor;
  if (ctor === void 0)
    return true;
  if (typeof ctor !== "function")
    return true;
  const prot = ctor.prototype;
  if (isObject(prot) === false)
    return false;
  if (Object.prototype.hasOwnProperty.call(prot, "isPrototypeOf") === false) {
    return false;
  }
  return true;
}
function shallowClone(o) {
  if (isPlainObject(o))
    return { ...o };
  if (Array.isArray(o))
    return [...o];
  if (o instanceof Map)
    return new Map(o);
  if (o instanceof Set)
    return new Set(o);
  return o;
}
var propertyKeyTypes = /* @__PURE__ */ new Set(["string", "number", "symbol"]);
function escapeRegex(str) {
  return str.replace(/[.*+?^${}()|[\]\\]/g, "\\$&");
}
function clone(inst, def, params) {
  const cl = new inst._zod.constr(def ?? inst._zod.def);
  if (!def || params?.parent)
    cl._zod.parent = inst;
  return cl;
}
function normalizeParams(_params) {
  const params = _params;
  if (!params)
    return {};
  if (typeof params === "string")
    return { error: () => params };
  if (params?.message !== void 0) {
    if (params?.error !== void 0)
      throw new Error("Cannot specify both `message` and `error` params");
    params.error = params.message;
  }
  delete params.message;
  if (typeof params.error === "string")
    return { ...params, error: () => params.error };
  return params;
}
function optionalKeys(shape) {
  return Object.keys(shape).filter((k) => {
    return shape[k]._zod.optin !== void 0 && shape[k]._zod.optout === "optional";
  });
}
function aborted(x, startIndex = 0) {
  if (x.aborted === true)
    return true;
  for (let i = startIndex; i < x.issues.length; i++) {
    if (x.issues[i]?.continue !== true) {
      return true;
    }
  }
  return false;
}
function explicitlyAborted(x, startIndex = 0) {
  if (x.aborted === true)
    return true;
  for (let i = startIndex; i < x.issues.length; i++) {
    if (x.issues[i]?.continue === false) {
      return true;
    }
  }
  return false;
}
function prefixIssues(path, issues) {
  return issues.map((iss) => {
    var _a3;
    (_a3 = iss).path ?? (_a3.path = []);
    iss.path.unshift(path);
    return iss;
  });
}
function unwrapMessage(message) {
  return typeof message === "string" ? message : message?.message;
}
function sizeCaps(defChecks) {
  const caps = [];
  for (const ch of defChecks ?? []) {
    const d = ch._zod.def;
    if (!/_(length|size)$|_equals$/.test(d.check))
      break;
    const max = d.maximum ?? d.length ?? d.size;
    if (max >= 0)
      caps.push([max, ch]);
  }
  return caps;
}
function attachSchema(issues, start, inst) {
  var _a3;
  for (let i = start; i < issues.length; i++) {
    (_a3 = issues[i]).schema ?? (_a3.schema = inst);
  }
}
function finalizeIssue(iss, ctx, config2) {
  var _a3;
  const traits = iss.inst?._zod?.traits;
  if (traits?.has("$ZodType")) {
    if (traits.has("$ZodCheck"))
      (_a3 = iss).schema ?? (_a3.schema = iss.inst);
    else
      iss.schema = iss.inst;
  }
  const schemaError = iss.schema !== iss.inst ? iss.schema?._zod.def?.error : void 0;
  const message = iss.message ? iss.message : unwrapMessage(iss.inst?._zod.def?.error?.(iss)) ?? unwrapMessage(schemaError?.(iss)) ?? unwrapMessage(ctx?.error?.(iss)) ?? unwrapMessage(config2.customError?.(iss)) ?? unwrapMessage(config2.localeError?.(iss)) ?? "Invalid input";
  const full = {};
  for (const k of Object.keys(iss)) {
    if (k === "inst" || k === "schema" || k === "continue" || k === "input" || k === "__proto__")
      continue;
    full[k] = iss[k];
  }
  full.path ?? (full.path = []);
  full.message = message;
  if (ctx?.reportInput) {
    full.input = iss.input;
  }
  return full;
}
function issue(...args) {
  const [iss, input, inst] = args;
  if (typeof iss === "string") {
    return {
      message: iss,
      code: "custom",
      input,
      inst
    };
  }
  return { ...iss };
}
function members(proto, table) {
  for (const key in table) {
    const desc = Object.getOwnPropertyDescriptor(table, key);
    if (desc.get)
      Object.defineProperty(proto, key, { ...desc, enumerable: false });
    else
      defineBound(proto, key, desc.value);
  }
}
function own(inst, key, value2, enumerable = true) {
  Object.defineProperty(inst, key, { configurable: true, writable: true, enumerable, value: value2 });
  return value2;
}
function hide(inst, key, value2) {
  return own(inst, key, value2, false);
}
function defineBound(proto, key, fn) {
  Object.defineProperty(proto, key, {
    configurable: true,
    get() {
      return this == null ? fn : own(this, key, fn.bind(this));
    },
    set(value2) {
      own(this, key, value2);
    }
  });
}
function claim(inst, sentinel) {
  const proto = Object.getPrototypeOf(inst);
  return sentinel in proto ? void 0 : proto;
}
var installing;
var broke = false;
var breaker = {
  configurable: true,
  get() {
    broke = true;
    return void 0;
  }
};
function defineLazyInternal(inst, key, compute) {
  const proto = Object.getPrototypeOf(inst._zod);
  if (key in proto && installing !== inst._zod) {
    installing = void 0;
    return;
  }
  installing = inst._zod;
  Object.defineProperty(proto, key, {
    configurable: true,
    get() {
      Object.defineProperty(this, key, breaker);
      const outer = broke;
      broke = false;
      try {
        const value2 = compute(this);
        if (broke)
          delete this[key];
        else
          Object.defineProperty(this, key, { configurable: true, writable: true, value: value2 });
        broke = broke || outer;
        return value2;
      } catch (err) {
        delete this[key];
        broke = broke || outer;
        throw err;
      }
    },
    set(value2) {
      Object.defineProperty(this, key, { configurable: true, writable: true, value: value2 });
    }
  });
}
function installLazyProp(inst, key, make, enumerable) {
  const proto = claim(inst, key);
  if (!proto)
    return;
  Object.defineProperty(proto, key, {
    configurable: true,
    get() {
      const desc = { configurable: true, writable: true, enumerable, value: void 0 };
      Object.defineProperty(this, key, desc);
      desc.value = make(this);
      Object.defineProperty(this, key, desc);
      return desc.value;
    },
    set(value2) {
      Object.defineProperty(this, key, { configurable: true, writable: true, enumerable, value: value2 });
    }
  });
}

// node_modules/.pnpm/zod@4.6.7/node_modules/zod/v4/core/core.js
var _a;
var NEVER = /* @__PURE__ */ Object.freeze({
  status: "aborted"
});
var _zodDesc = { value: void 0, enumerable: false };
var _E = "captureStackTrace" in Error ? Error : null;
function newError(Definition) {
  const E = _E;
  if (E) {
    const saved = E.stackTraceLimit;
    if (typeof saved === "number") {
      try {
        E.stackTraceLimit = 0;
      } catch {
        _E = null;
        return new Definition();
      }
      try {
        return new Definition();
      } finally {
        E.stackTraceLimit = saved;
      }
    }
  }
  return new Definition();
}
// @__NO_SIDE_EFFECTS__
function $constructor(name, initializer2, proto, params) {
  const zodProto = {};
  function Internals(def) {
    this.def = def;
    this.constr = _;
    this.traits = /* @__PURE__ */ new Set();
  }
  Internals.prototype = zodProto;
  const protoMembers = proto;
  const initialized = protoMembers && /* @__PURE__ */ new WeakSet();
  function init(inst, def) {
    if (!inst._zod) {
      _zodDesc.value = new Internals(def);
      try {
        Object.defineProperty(inst, "_zod", _zodDesc);
      } finally {
        _zodDesc.value = void 0;
      }
    } else if (inst._zod.traits.has(name)) {
      return;
    }
    inst._zod.traits.add(name);
    initializer2(inst, def);
    if (initialized) {
      const own2 = Object.getPrototypeOf(inst);
      const ctorProto = inst._zod.constr.prototype;
      let up = own2;
      while (up && up !== ctorProto)
        up = Object.getPrototypeOf(up);
      const target = up ?? own2;
      if (!initialized.has(target)) {
        initialized.add(target);
        members(target, protoMembers);
      }
    }
    const proto2 = _.prototype;
    for (const k in proto2) {
      if (!Object.prototype.hasOwnProperty.call(proto2, k))
        continue;
      if (!(k in inst)) {
        inst[k] = proto2[k].bind(inst);
      }
    }
  }
  const Parent = params?.Parent ?? Object;
  class Definition extends Parent {
  }
  Object.defineProperty(Definition, "name", { value: name });
  function _(def) {
    const inst = params?.Parent ? newError(Definition) : this;
    init(inst, def);
    const deferred = inst._zod.deferred;
    if (deferred) {
      for (const fn of deferred) {
        fn();
      }
      inst._zod.deferred = void 0;
    }
    const pp = globalThis.__zod_globalConfig?.postProcessor;
    if (pp)
      pp(inst);
    return inst;
  }
  Object.defineProperty(_, "init", { value: init });
  Object.defineProperty(_, Symbol.hasInstance, {
    value: (inst) => {
      if (params?.Parent && inst instanceof params.Parent)
        return true;
      return inst?._zod?.traits?.has(name);
    }
  });
  Object.defineProperty(_, "name", { value: name });
  return _;
}
var $ZodAsyncError = class extends Error {
  constructor() {
    super(`Encountered Promise during synchronous parse. Use .parseAsync() instead.`);
  }
};
var $ZodEncodeError = class extends Error {
  constructor(name) {
    super(`Encountered unidirectional transform during encode: ${name}`);
    this.name = "ZodEncodeError";
  }
};
(_a = globalThis).__zod_globalConfig ?? (_a.__zod_globalConfig = {});
var globalConfig = globalThis.__zod_globalConfig;
function config(newConfig) {
  if (newConfig)
    Object.assign(globalConfig, newConfig);
  return globalConfig;
}

// node_modules/.pnpm/zod@4.6.7/node_modules/zod/v4/core/errors.js
function _getMessage() {
  const internals = this._zod;
  internals.message ?? (internals.message = JSON.stringify(internals.def, jsonStringifyReplacer, 2));
  return internals.message;
}
function _setMessage(value2) {
  this._zod.message = value2;
}
var _messageDesc = {
  get: _getMessage,
  set: _setMessage,
  enumerable: true,
  configurable: true
};
var _issuesDesc = { value: void 0, enumerable: false };
var _installedToString = /* @__PURE__ */ new WeakSet([Object.prototype, Error.prototype]);
var initializer = (inst, def) => {
  inst.name = "$ZodError";
  _issuesDesc.value = def;
  Object.defineProperty(inst, "issues", _issuesDesc);
  _issuesDesc.value = void 0;
  Object.defineProperty(inst, "message", _messageDesc);
  const proto = Object.getPrototypeOf(inst);
  if (!_installedToString.has(proto)) {
    _installedToString.add(proto);
    Object.defineProperty(proto, "toString", {
      configurable: true,
      enumerable: false,
      get() {
        const value2 = () => this.message;
        Object.defineProperty(this, "toString", { value: value2, configurable: true, writable: true });
        return value2;
      },
      set(value2) {
        Object.defineProperty(this, "toString", { value: value2, configurable: true, writable: true });
      }
    });
  }
};
var $ZodError = $constructor("$ZodError", initializer);
var $ZodRealError = $constructor("$ZodError", initializer, void 0, {
  Parent: Error
});

// node_modules/.pnpm/zod@4.6.7/node_modules/zod/v4/core/parse.js
var _parse = (_Err) => {
  const fn = (schema, value2, _ctx, _params) => {
    const ctx = _ctx ? { ..._ctx, async: false } : { async: false };
    const result = schema._zod.run({ value: value2, issues: [] }, ctx);
    if (result instanceof Promise) {
      throw new $ZodAsyncError();
    }
    if (result.issues.length) {
      const e = new (_params?.Err ?? _Err)(result.issues.map((iss) => finalizeIssue(iss, ctx, config())));
      captureStackTrace(e, _params?.callee ?? fn);
      throw e;
    }
    return result.value;
  };
  return fn;
};
var parse = /* @__PURE__ */ _parse($ZodRealError);
var _parseAsync = (_Err) => {
  const fn = async (schema, value2, _ctx, params) => {
    const ctx = _ctx ? { ..._ctx, async: true } : { async: true };
    let result = schema._zod.run({ value: value2, issues: [] }, ctx);
    if (result instanceof Promise)
      result = await result;
    if (result.issues.length) {
      const e = new (params?.Err ?? _Err)(result.issues.map((iss) => finalizeIssue(iss, ctx, config())));
      captureStackTrace(e, params?.callee ?? fn);
      throw e;
    }
    return result.value;
  };
  return fn;
};
var parseAsync = /* @__PURE__ */ _parseAsync($ZodRealError);
var _safeParse = (_Err) => (schema, value2, _ctx) => {
  const ctx = _ctx ? { ..._ctx, async: false } : { async: false };
  const result = schema._zod.run({ value: value2, issues: [] }, ctx);
  if (result instanceof Promise) {
    throw new $ZodAsyncError();
  }
  return result.issues.length ? failure(_Err, result.issues, ctx) : { success: true, data: result.value };
};
var safeParse = /* @__PURE__ */ _safeParse($ZodRealError);
function failure(Err, issues, ctx) {
  let error;
  return {
    success: false,
    get error() {
      if (!error) {
        error = new Err(issues.map((iss) => finalizeIssue(iss, ctx, config())));
        issues = void 0;
        ctx = void 0;
      }
      return error;
    },
    set error(e) {
      error = e;
      issues = void 0;
      ctx = void 0;
    }
  };
}
var _safeParseAsync = (_Err) => async (schema, value2, _ctx) => {
  const ctx = _ctx ? { ..._ctx, async: true } : { async: true };
  let result = schema._zod.run({ value: value2, issues: [] }, ctx);
  if (result instanceof Promise)
    result = await result;
  return result.issues.length ? failure(_Err, result.issues, ctx) : { success: true, data: result.value };
};
var safeParseAsync = /* @__PURE__ */ _safeParseAsync($ZodRealError);

// node_modules/.pnpm/zod@4.6.7/node_modules/zod/v4/core/regexes.js
var anyString = /^[\s\S]{0,}$/;
var number = /^-?\d+(?:\.\d+)?$/;

// node_modules/.pnpm/zod@4.6.7/node_modules/zod/v4/core/checks.js
var $ZodCheck = /* @__PURE__ */ $constructor("$ZodCheck", (inst, def) => {
  var _a3;
  inst._zod ?? (inst._zod = {});
  inst._zod.def = def;
  (_a3 = inst._zod).onattach ?? (_a3.onattach = []);
});
var numericOriginMap = {
  number: "number",
  bigint: "bigint",
  object: "date"
};
var $ZodCheckLessThan = /* @__PURE__ */ $constructor("$ZodCheckLessThan", (inst, def) => {
  $ZodCheck.init(inst, def);
  const origin = numericOriginMap[typeof def.value];
  inst._zod.check = (payload) => {
    if (def.inclusive ? payload.value <= def.value : payload.value < def.value) {
      return;
    }
    payload.issues.push({
      origin: numericOriginMap[typeof payload.value] ?? origin,
      code: "too_big",
      maximum: typeof def.value === "object" ? def.value.getTime() : def.value,
      input: payload.value,
      inclusive: def.inclusive,
      inst,
      continue: !def.abort
    });
  };
});
var $ZodCheckGreaterThan = /* @__PURE__ */ $constructor("$ZodCheckGreaterThan", (inst, def) => {
  $ZodCheck.init(inst, def);
  const origin = numericOriginMap[typeof def.value];
  inst._zod.check = (payload) => {
    if (def.inclusive ? payload.value >= def.value : payload.value > def.value) {
      return;
    }
    payload.issues.push({
      origin: numericOriginMap[typeof payload.value] ?? origin,
      code: "too_small",
      minimum: typeof def.value === "object" ? def.value.getTime() : def.value,
      input: payload.value,
      inclusive: def.inclusive,
      inst,
      continue: !def.abort
    });
  };
});
var $ZodCheckMultipleOf = /* @__PURE__ */ $constructor("$ZodCheckMultipleOf", (inst, def) => {
  $ZodCheck.init(inst, def);
  inst._zod.check = (payload) => {
    if (typeof payload.value !== typeof def.value)
      throw new Error("Cannot mix number and bigint in multiple_of check.");
    const isMultiple = typeof payload.value === "bigint" ? (
      // `value % 0n` throws, and nothing is a multiple of zero — the number branch already fails this way via NaN
      def.value !== BigInt(0) && payload.value % def.value === BigInt(0)
    ) : floatSafeRemainder(payload.value, def.value) === 0;
    if (isMultiple)
      return;
    payload.issues.push({
      origin: typeof payload.value,
      code: "not_multiple_of",
      divisor: def.value,
      input: payload.value,
      inst,
      continue: !def.abort
    });
  };
});

// node_modules/.pnpm/zod@4.6.7/node_modules/zod/v4/core/versions.js
var version = {
  major: 4,
  minor: 6,
  patch: 7
};

// node_modules/.pnpm/zod@4.6.7/node_modules/zod/v4/core/schemas.js
var $ZodType = /* @__PURE__ */ $constructor("$ZodType", (inst, def) => {
  var _a3;
  inst ?? (inst = {});
  inst._zod.def = def;
  inst._zod.bag = inst._zod.bag || {};
  inst._zod.version = version;
  const defChecks = inst._zod.def.checks;
  const checks = inst._zod.traits.has("$ZodCheck") ? [inst, ...defChecks ?? []] : defChecks?.length ? [...defChecks] : [];
  for (const ch of checks) {
    for (const fn of ch._zod.onattach) {
      fn(inst);
    }
  }
  if (checks.length === 0) {
    (_a3 = inst._zod).deferred ?? (_a3.deferred = []);
    inst._zod.deferred?.push(() => {
      inst._zod.run = inst._zod.parse;
    });
  } else {
    const runChecks = (payload, checks2, ctx) => {
      if (payload.memo)
        return payload;
      let isAborted = aborted(payload);
      let asyncResult;
      for (const ch of checks2) {
        if (ch._zod.def.when) {
          if (explicitlyAborted(payload))
            continue;
          const shouldRun = ch._zod.def.when(payload);
          if (!shouldRun)
            continue;
        } else if (isAborted) {
          continue;
        }
        const currLen = payload.issues.length;
        const _ = ch._zod.check(payload);
        if (_ instanceof Promise && ctx?.async === false) {
          throw new $ZodAsyncError();
        }
        if (asyncResult || _ instanceof Promise) {
          asyncResult = (asyncResult ?? Promise.resolve()).then(async () => {
            await _;
            const nextLen = payload.issues.length;
            if (nextLen === currLen)
              return;
            attachSchema(payload.issues, currLen, inst);
            if (!isAborted)
              isAborted = aborted(payload, currLen);
          });
        } else {
          const nextLen = payload.issues.length;
          if (nextLen === currLen)
            continue;
          attachSchema(payload.issues, currLen, inst);
          if (!isAborted)
            isAborted = aborted(payload, currLen);
        }
      }
      if (asyncResult) {
        return asyncResult.then(() => {
          return payload;
        });
      }
      return payload;
    };
    const handleCanaryResult = (canary, payload, ctx) => {
      if (aborted(canary)) {
        canary.aborted = true;
        return canary;
      }
      const checkResult = runChecks(payload, checks, ctx);
      if (checkResult instanceof Promise) {
        if (ctx.async === false)
          throw new $ZodAsyncError();
        return checkResult.then((checkResult2) => inst._zod.parse(checkResult2, ctx));
      }
      return inst._zod.parse(checkResult, ctx);
    };
    inst._zod.run = (payload, ctx) => {
      if (ctx.skipChecks) {
        return inst._zod.parse(payload, ctx);
      }
      if (ctx.direction === "backward") {
        const canary = inst._zod.parse({ value: payload.value, issues: [] }, { ...ctx, skipChecks: true });
        if (canary instanceof Promise) {
          return canary.then((canary2) => {
            return handleCanaryResult(canary2, payload, ctx);
          });
        }
        return handleCanaryResult(canary, payload, ctx);
      }
      const result = inst._zod.parse(payload, ctx);
      if (result instanceof Promise) {
        if (ctx.async === false)
          throw new $ZodAsyncError();
        return result.then((result2) => runChecks(result2, checks, ctx));
      }
      return runChecks(result, checks, ctx);
    };
  }
}, {
  // Wrappers extend this by installing a richer factory over it; reading it eagerly would defeat the laziness.
  get "~standard"() {
    return hide(this, "~standard", standardProps(this));
  },
  set "~standard"(value2) {
    own(this, "~standard", value2);
  }
});
var toStandardResult = (r, ctx) => r.issues.length ? { issues: r.issues.map((iss) => finalizeIssue(iss, ctx, config())) } : { value: r.value };
async function validateAsync(inst, value2) {
  const ctx = { async: true };
  return toStandardResult(await inst._zod.run({ value: value2, issues: [] }, ctx), ctx);
}
function standardProps(inst) {
  return {
    validate: (value2) => {
      const ctx = { async: false };
      try {
        const r = inst._zod.run({ value: value2, issues: [] }, ctx);
        if (!(r instanceof Promise))
          return toStandardResult(r, ctx);
      } catch (_) {
      }
      return validateAsync(inst, value2);
    },
    vendor: "zod",
    version: 1
  };
}
var $ZodString = /* @__PURE__ */ $constructor("$ZodString", (inst, def) => {
  $ZodType.init(inst, def);
  inst._zod.pattern = def.pattern ?? anyString;
  inst._zod.parse = (payload, _) => {
    if (def.coerce)
      try {
        payload.value = String(payload.value);
      } catch (_2) {
      }
    if (typeof payload.value === "string")
      return payload;
    payload.issues.push({
      expected: "string",
      code: "invalid_type",
      input: payload.value,
      inst
    });
    return payload;
  };
});
var $ZodNumber = /* @__PURE__ */ $constructor("$ZodNumber", (inst, def) => {
  $ZodType.init(inst, def);
  inst._zod.pattern = number;
  inst._zod.parse = (payload, _ctx) => {
    if (def.coerce)
      try {
        payload.value = Number(payload.value);
      } catch (_) {
      }
    const input = payload.value;
    if (typeof input === "number" && !Number.isNaN(input) && Number.isFinite(input)) {
      return payload;
    }
    const received = typeof input === "number" ? Number.isNaN(input) ? "NaN" : !Number.isFinite(input) ? String(input) : void 0 : void 0;
    payload.issues.push({
      expected: "number",
      code: "invalid_type",
      input,
      inst,
      ...received ? { received } : {}
    });
    return payload;
  };
});
var $ZodUnknown = /* @__PURE__ */ $constructor("$ZodUnknown", (inst, def) => {
  $ZodType.init(inst, def);
  inst._zod.parse = (payload) => payload;
});
var $ZodNever = /* @__PURE__ */ $constructor("$ZodNever", (inst, def) => {
  $ZodType.init(inst, def);
  inst._zod.parse = (payload, _ctx) => {
    payload.issues.push({
      expected: "never",
      code: "invalid_type",
      input: payload.value,
      inst
    });
    return payload;
  };
});
function capSize(inst, size4) {
  const caps = sizeCaps(inst._zod.def.checks);
  if (!caps.length)
    return;
  const cap = Math.min(...caps.map((c) => c[0]));
  const parse4 = inst._zod.parse;
  inst._zod.parse = (payload, ctx) => {
    const n2 = size4(payload.value);
    if (n2 > cap && !ctx?.skipChecks && ctx?.direction !== "backward") {
      for (const [max, ch] of sizeCaps(inst._zod.def.checks)) {
        if (n2 > max && ch._zod.def.when(payload)) {
          const start = payload.issues.length;
          ch._zod.check(payload);
          payload.issues[start].continue = false;
          attachSchema(payload.issues, start, inst);
          return payload;
        }
      }
    }
    return parse4(payload, ctx);
  };
}
var arraySize = (input) => Array.isArray(input) ? input.length : -1;
function handleArrayResult(result, final, index) {
  if (result.issues.length) {
    final.issues.push(...prefixIssues(index, result.issues));
  }
  final.value[index] = result.value;
}
var $ZodArray = /* @__PURE__ */ $constructor("$ZodArray", (inst, def) => {
  $ZodType.init(inst, def);
  const memo = globalConfig.memoizer;
  memo?.attach(inst);
  inst._zod.parse = (payload, ctx) => {
    const input = payload.value;
    if (!Array.isArray(input)) {
      payload.issues.push({
        expected: "array",
        code: "invalid_type",
        input,
        inst
      });
      return payload;
    }
    payload.value = memo ? memo.alloc(inst, payload, Array(input.length), ctx) : Array(input.length);
    const proms = [];
    const abortEarly = ctx?.abortEarly;
    for (let i = 0; i < input.length; i++) {
      const item = input[i];
      const result = def.element._zod.run({
        value: item,
        issues: []
      }, ctx);
      if (result instanceof Promise) {
        proms.push(result.then((result2) => handleArrayResult(result2, payload, i)));
      } else {
        handleArrayResult(result, payload, i);
        if (abortEarly && result.issues.length !== 0 && aborted(result))
          break;
      }
    }
    if (proms.length) {
      return Promise.all(proms).then(() => payload);
    }
    return payload;
  };
  capSize(inst, arraySize);
});
function handlePropertyResult(result, final, key, input, optin, optout) {
  const isPresent = key in input;
  const isOptionalOut = optout === "optional";
  if (!isPresent && isOptionalOut && optin === "optional") {
    return;
  }
  if (result.issues.length) {
    if (optin !== void 0 && isOptionalOut && !isPresent) {
      return;
    }
    final.issues.push(...prefixIssues(key, result.issues));
  }
  if (!isPresent && optin === void 0) {
    if (!result.issues.length) {
      final.issues.push({
        code: "invalid_type",
        expected: "nonoptional",
        input: void 0,
        path: [key]
      });
    }
    return;
  }
  if (result.value === void 0) {
    if (isPresent || optin === "defaulted" && !isOptionalOut) {
      final.value[key] = void 0;
    }
  } else {
    final.value[key] = result.value;
  }
}
var NO_SYMBOL_KEYS = [];
function normalizeDef(def) {
  const keys = Object.keys(def.shape);
  const ownSymbols = Object.getOwnPropertySymbols(def.shape);
  const symbolKeys = ownSymbols.length ? ownSymbols : NO_SYMBOL_KEYS;
  const allKeys = symbolKeys.length ? [...keys, ...symbolKeys] : keys;
  for (const k of allKeys) {
    if (!def.shape?.[k]?._zod?.traits?.has("$ZodType")) {
      throw new Error(`Invalid element at key "${String(k)}": expected a Zod schema`);
    }
  }
  const okeys = optionalKeys(def.shape);
  return {
    ...def,
    allKeys,
    symbolKeys,
    // string-only: handleCatchall matches it against `for...in`, which never yields a symbol
    keySet: new Set(keys),
    numKeys: keys.length,
    optionalKeys: new Set(okeys)
  };
}
function handleCatchall(proms, input, payload, ctx, def, inst, abortEarly) {
  const unrecognized = [];
  const keySet = def.keySet;
  const _catchall = def.catchall._zod;
  const t = _catchall.def.type;
  const optin = _catchall.optin;
  const optout = _catchall.optout;
  let seen = 0;
  for (const key in input) {
    if (abortEarly && payload.issues.length !== seen) {
      if (aborted(payload, seen))
        break;
      seen = payload.issues.length;
    }
    if (keySet.has(key))
      continue;
    if (key === "__proto__") {
      if (t === "never")
        unrecognized.push(key);
      continue;
    }
    if (t === "never") {
      unrecognized.push(key);
      continue;
    }
    const r = _catchall.run({ value: input[key], issues: [] }, ctx);
    if (r instanceof Promise) {
      proms.push(r.then((r2) => handlePropertyResult(r2, payload, key, input, optin, optout)));
    } else {
      handlePropertyResult(r, payload, key, input, optin, optout);
    }
  }
  if (unrecognized.length) {
    payload.issues.push({
      code: "unrecognized_keys",
      keys: unrecognized,
      input,
      inst,
      // Describes the shape of the input, not the validity of the parsed value, so it never aborts. The parse still fails; the schema's own checks just get to run first, and an enclosing intersection can reconcile the key against a sibling operand.
      continue: true
    });
  }
  if (!proms.length)
    return payload;
  return Promise.all(proms).then(() => {
    return payload;
  });
}
var $ZodObject = /* @__PURE__ */ $constructor("$ZodObject", (inst, def) => {
  $ZodType.init(inst, def);
  const desc = Object.getOwnPropertyDescriptor(def, "shape");
  const sh = desc?.get ? desc.get.raw : def.shape ?? {};
  if (sh) {
    const get = () => {
      const newSh = { ...sh };
      Object.defineProperty(def, "shape", { value: newSh });
      get.raw = newSh;
      return newSh;
    };
    get.raw = sh;
    Object.defineProperty(def, "shape", { get });
  }
  const _normalized = cached(() => normalizeDef(def));
  defineLazyInternal(inst, "propValues", (zod) => {
    const shape = zod.def.shape;
    const propValues = {};
    for (const key in shape) {
      const field = shape[key]._zod;
      if (field.values) {
        if (!Object.prototype.hasOwnProperty.call(propValues, key)) {
          assignProp(propValues, key, /* @__PURE__ */ new Set());
        }
        for (const v of field.values)
          propValues[key].add(v);
        if (field.optin !== void 0)
          propValues[key].add(void 0);
      }
    }
    return propValues;
  });
  const isObject2 = isObject;
  const catchall2 = def.catchall;
  let value2;
  const memo = globalConfig.memoizer;
  memo?.attach(inst);
  inst._zod.parse = (payload, ctx) => {
    value2 ?? (value2 = _normalized.value);
    const input = payload.value;
    if (!isObject2(input)) {
      payload.issues.push({
        expected: "object",
        code: "invalid_type",
        input,
        inst
      });
      return payload;
    }
    payload.value = memo ? memo.alloc(inst, payload, {}, ctx) : {};
    const proms = [];
    const shape = value2.shape;
    const abortEarly = ctx?.abortEarly;
    let seen = payload.issues.length;
    for (const key of value2.allKeys) {
      if (abortEarly && payload.issues.length !== seen) {
        if (aborted(payload, seen))
          break;
        seen = payload.issues.length;
      }
      if (key === "__proto__")
        continue;
      const el = shape[key];
      const optin = el._zod.optin;
      const optout = el._zod.optout;
      const r = el._zod.run({ value: input[key], issues: [] }, ctx);
      if (r instanceof Promise) {
        proms.push(r.then((r2) => handlePropertyResult(r2, payload, key, input, optin, optout)));
      } else {
        handlePropertyResult(r, payload, key, input, optin, optout);
      }
    }
    if (!catchall2) {
      return proms.length ? Promise.all(proms).then(() => payload) : payload;
    }
    return handleCatchall(proms, input, payload, ctx, _normalized.value, inst, abortEarly === true);
  };
});
function handleUnionResults(results, final, inst, ctx) {
  for (const result of results) {
    if (result.issues.length === 0) {
      final.value = result.value;
      return final;
    }
  }
  const nonaborted = results.filter((r) => !aborted(r));
  if (nonaborted.length === 1) {
    final.value = nonaborted[0].value;
    return nonaborted[0];
  }
  final.issues.push({
    code: "invalid_union",
    input: final.value,
    inst,
    errors: results.map((result) => result.issues.map((iss) => finalizeIssue(iss, ctx, config())))
  });
  return final;
}
var $ZodUnion = /* @__PURE__ */ $constructor("$ZodUnion", (inst, def) => {
  $ZodType.init(inst, def);
  defineLazyInternal(inst, "optin", (zod) => zod.def.options.some((o) => o._zod.optin === "defaulted") ? "defaulted" : zod.def.options.some((o) => o._zod.optin !== void 0) ? "optional" : void 0);
  defineLazyInternal(inst, "optout", (zod) => zod.def.options.some((o) => o._zod.optout === "optional") ? "optional" : void 0);
  defineLazyInternal(inst, "values", (zod) => {
    if (zod.def.options.every((o) => o._zod.values)) {
      return new Set(zod.def.options.flatMap((option) => Array.from(option._zod.values)));
    }
    return void 0;
  });
  defineLazyInternal(inst, "pattern", (zod) => {
    if (zod.def.options.every((o) => o._zod.pattern)) {
      const patterns = zod.def.options.map((o) => o._zod.pattern);
      return new RegExp(`^(${patterns.map((p) => cleanRegex(p.source)).join("|")})$`);
    }
    return void 0;
  });
  const first = def.options.length === 1 ? def.options[0]._zod.run : null;
  inst._zod.parse = (payload, ctx) => {
    if (first) {
      return first(payload, ctx);
    }
    let async = false;
    const results = [];
    for (const option of def.options) {
      const result = option._zod.run({
        value: payload.value,
        issues: []
      }, ctx);
      if (result instanceof Promise) {
        results.push(result);
        async = true;
      } else {
        if (result.issues.length === 0)
          return result;
        results.push(result);
      }
    }
    if (!async)
      return handleUnionResults(results, payload, inst, ctx);
    return Promise.all(results).then((results2) => {
      return handleUnionResults(results2, payload, inst, ctx);
    });
  };
});
function discriminatorMap(def) {
  const map = /* @__PURE__ */ new Map();
  for (const option of def.options) {
    const values11 = option._zod.propValues?.[def.discriminator];
    if (!values11 || values11.size === 0)
      throw new Error(`Invalid discriminated union option at index "${def.options.indexOf(option)}"`);
    for (const value2 of values11) {
      if (map.has(value2)) {
        if (value2 !== void 0)
          throw new Error(`Duplicate discriminator value "${String(value2)}"`);
        map.set(value2, null);
      } else {
        map.set(value2, option);
      }
    }
  }
  return map;
}
var $ZodDiscriminatedUnion = /* @__PURE__ */ $constructor("$ZodDiscriminatedUnion", (inst, def) => {
  def.inclusive = false;
  $ZodUnion.init(inst, def);
  const _super = inst._zod.parse;
  defineLazyInternal(inst, "propValues", (zod) => {
    const propValues = {};
    let undefinedCount = 0;
    for (const option of zod.def.options) {
      const pv = option._zod.propValues;
      if (!pv || Object.keys(pv).length === 0)
        throw new Error(`Invalid discriminated union option at index "${zod.def.options.indexOf(option)}"`);
      if (pv[zod.def.discriminator]?.has(void 0))
        undefinedCount++;
      for (const [k, v] of Object.entries(pv)) {
        if (!Object.prototype.hasOwnProperty.call(propValues, k)) {
          assignProp(propValues, k, /* @__PURE__ */ new Set());
        }
        for (const val of v) {
          propValues[k].add(val);
        }
      }
    }
    if (!zod.def.unionFallback && undefinedCount > 1)
      propValues[zod.def.discriminator]?.delete(void 0);
    return propValues;
  });
  def.options.forEach((option, i) => {
    const propShape = rawShape(option._zod.def);
    if (propShape && !Object.prototype.hasOwnProperty.call(propShape, def.discriminator)) {
      throw new Error(`Invalid discriminated union option at index "${i}"`);
    }
  });
  const disc = cached(() => discriminatorMap(def));
  inst._zod.parse = (payload, ctx) => {
    const input = payload.value;
    if (!isObject(input)) {
      payload.issues.push({
        code: "invalid_type",
        expected: "object",
        input,
        inst
      });
      return payload;
    }
    const value2 = input?.[def.discriminator];
    const opt = disc.value.get(value2);
    if (opt && (value2 !== void 0 || ctx.direction !== "backward")) {
      return opt._zod.run(payload, ctx);
    }
    if (def.unionFallback || ctx.direction === "backward") {
      return _super(payload, ctx);
    }
    payload.issues.push({
      code: "invalid_union",
      errors: [],
      note: "No matching discriminator",
      discriminator: def.discriminator,
      options: Array.from(disc.value.keys()).filter((value3) => disc.value.get(value3) !== null),
      input,
      path: [def.discriminator],
      inst
    });
    return payload;
  };
});
var $ZodEnum = /* @__PURE__ */ $constructor("$ZodEnum", (inst, def) => {
  $ZodType.init(inst, def);
  const values11 = getEnumValues(def.entries);
  const valuesSet = new Set(values11);
  inst._zod.values = valuesSet;
  defineLazyInternal(inst, "pattern", (zod) => {
    const patternValues = getEnumValues(zod.def.entries).filter((k) => propertyKeyTypes.has(typeof k));
    return new RegExp(patternValues.length ? `^(${patternValues.map((o) => escapeRegex(o.toString())).join("|")})$` : "^[^\\s\\S]$");
  });
  inst._zod.parse = (payload, _ctx) => {
    const input = payload.value;
    if (valuesSet.has(input)) {
      return payload;
    }
    payload.issues.push({
      code: "invalid_value",
      values: values11,
      input,
      inst
    });
    return payload;
  };
});
var $ZodTransform = /* @__PURE__ */ $constructor("$ZodTransform", (inst, def) => {
  $ZodType.init(inst, def);
  inst._zod.optin = "optional";
  globalConfig.memoizer?.guard(inst);
  inst._zod.parse = (payload, ctx) => {
    if (ctx.direction === "backward") {
      throw new $ZodEncodeError(inst.constructor.name);
    }
    const _out = def.transform(payload.value, payload);
    if (ctx.async) {
      const output = _out instanceof Promise ? _out : Promise.resolve(_out);
      return output.then((output2) => {
        payload.value = output2;
        return payload;
      });
    }
    if (_out instanceof Promise) {
      throw new $ZodAsyncError();
    }
    payload.value = _out;
    return payload;
  };
});
function handleOptionalResult(payload, result) {
  payload.value = result.issues.length ? void 0 : result.value;
  return payload;
}
var $ZodOptional = /* @__PURE__ */ $constructor("$ZodOptional", (inst, def) => {
  $ZodType.init(inst, def);
  defineLazyInternal(inst, "optin", (zod) => zod.def.innerType._zod.optin === "defaulted" ? "defaulted" : "optional");
  inst._zod.optout = "optional";
  defineLazyInternal(inst, "values", (zod) => {
    const values11 = zod.def.innerType._zod.values;
    return values11 ? /* @__PURE__ */ new Set([...values11, void 0]) : void 0;
  });
  defineLazyInternal(inst, "pattern", (zod) => {
    const pattern = zod.def.innerType._zod.pattern;
    return pattern ? new RegExp(`^(${cleanRegex(pattern.source)})?$`) : void 0;
  });
  inst._zod.parse = (payload, ctx) => {
    if (payload.value === void 0) {
      if (def.innerType._zod.optin !== "defaulted")
        return payload;
      const result = def.innerType._zod.run({ value: payload.value, issues: [] }, ctx);
      if (result instanceof Promise)
        return result.then((result2) => handleOptionalResult(payload, result2));
      return handleOptionalResult(payload, result);
    }
    return def.innerType._zod.run(payload, ctx);
  };
});
var $ZodPrefault = /* @__PURE__ */ $constructor("$ZodPrefault", (inst, def) => {
  $ZodType.init(inst, def);
  inst._zod.optin = "defaulted";
  defineLazyInternal(inst, "values", (zod) => zod.def.innerType._zod.values);
  inst._zod.parse = (payload, ctx) => {
    if (ctx.direction === "backward") {
      return def.innerType._zod.run(payload, ctx);
    }
    if (payload.value === void 0) {
      payload.value = def.defaultValue;
    }
    return def.innerType._zod.run(payload, ctx);
  };
});
var $ZodPipe = /* @__PURE__ */ $constructor("$ZodPipe", (inst, def) => {
  $ZodType.init(inst, def);
  defineLazyInternal(inst, "values", (zod) => zod.def.in._zod.values);
  defineLazyInternal(inst, "optin", (zod) => zod.def.in._zod.optin);
  defineLazyInternal(inst, "optout", (zod) => zod.def.out._zod.optout);
  defineLazyInternal(inst, "propValues", (zod) => zod.def.in._zod.propValues);
  inst._zod.parse = (payload, ctx) => {
    if (ctx.direction === "backward") {
      const right = def.out._zod.run(payload, ctx);
      if (right instanceof Promise) {
        return right.then((right2) => handlePipeResult(right2, def.in, ctx));
      }
      return handlePipeResult(right, def.in, ctx);
    }
    const left = def.in._zod.run(payload, ctx);
    if (left instanceof Promise) {
      return left.then((left2) => handlePipeResult(left2, def.out, ctx));
    }
    return handlePipeResult(left, def.out, ctx);
  };
});
function handlePipeResult(left, next, ctx) {
  if (left.issues.some((iss) => iss.code !== "unrecognized_keys")) {
    left.aborted = true;
    return left;
  }
  return next._zod.run({ value: left.value, issues: left.issues }, ctx);
}
var $ZodCustom = /* @__PURE__ */ $constructor("$ZodCustom", (inst, def) => {
  $ZodCheck.init(inst, def);
  $ZodType.init(inst, def);
  inst._zod.parse = (payload, _) => {
    return payload;
  };
  inst._zod.check = (payload) => {
    const input = payload.value;
    const r = def.fn(input);
    if (r instanceof Promise) {
      return r.then((r2) => handleRefineResult(r2, payload, input, inst));
    }
    handleRefineResult(r, payload, input, inst);
    return;
  };
});
function handleRefineResult(result, payload, input, inst) {
  if (!result) {
    const _iss = {
      code: "custom",
      input,
      inst,
      // incorporates params.error into issue reporting
      path: [...inst._zod.def.path ?? []],
      // incorporates params.error into issue reporting
      continue: !inst._zod.def.abort
      // params: inst._zod.def.params,
    };
    if (inst._zod.def.params)
      _iss.params = inst._zod.def.params;
    payload.issues.push(issue(_iss));
  }
}

// node_modules/.pnpm/zod@4.6.7/node_modules/zod/v4/core/registries.js
var _a2;
var $ZodRegistry = class {
  constructor() {
    this._map = /* @__PURE__ */ new WeakMap();
    this._idmap = /* @__PURE__ */ new Map();
  }
  add(schema, ..._meta) {
    const meta2 = _meta[0];
    this._map.set(schema, meta2);
    if (meta2 && typeof meta2 === "object" && "id" in meta2) {
      this._idmap.set(meta2.id, schema);
    }
    return this;
  }
  clear() {
    this._map = /* @__PURE__ */ new WeakMap();
    this._idmap = /* @__PURE__ */ new Map();
    return this;
  }
  remove(schema) {
    const meta2 = this._map.get(schema);
    if (meta2 && typeof meta2 === "object" && "id" in meta2) {
      this._idmap.delete(meta2.id);
    }
    this._map.delete(schema);
    return this;
  }
  get(schema) {
    const p = schema._zod.parent;
    if (p) {
      const pm = { ...this.get(p) ?? {} };
      delete pm.id;
      const f = { ...pm, ...this._map.get(schema) };
      return Object.keys(f).length ? f : void 0;
    }
    return this._map.get(schema);
  }
  has(schema) {
    return this._map.has(schema);
  }
};
function registry() {
  return new $ZodRegistry();
}
(_a2 = globalThis).__zod_globalRegistry ?? (_a2.__zod_globalRegistry = registry());
var globalRegistry = globalThis.__zod_globalRegistry;

// node_modules/.pnpm/zod@4.6.7/node_modules/zod/v4/core/api.js
function snapshotChecks(def) {
  if (def.checks)
    def.checks = [...def.checks];
  return def;
}
// @__NO_SIDE_EFFECTS__
function _string(Class, params) {
  return new Class(snapshotChecks({ type: "string", ...normalizeParams(params) }));
}
// @__NO_SIDE_EFFECTS__
function _number(Class, params) {
  return new Class(snapshotChecks({ type: "number", checks: [], ...normalizeParams(params) }));
}
// @__NO_SIDE_EFFECTS__
function _unknown(Class) {
  return new Class({
    type: "unknown"
  });
}
// @__NO_SIDE_EFFECTS__
function _never(Class, params) {
  return new Class({
    type: "never",
    ...normalizeParams(params)
  });
}
// @__NO_SIDE_EFFECTS__
function _lte(value2, params) {
  return new $ZodCheckLessThan({
    check: "less_than",
    ...normalizeParams(params),
    value: value2,
    inclusive: true
  });
}
// @__NO_SIDE_EFFECTS__
function _gt(value2, params) {
  return new $ZodCheckGreaterThan({
    check: "greater_than",
    ...normalizeParams(params),
    value: value2,
    inclusive: false
  });
}
// @__NO_SIDE_EFFECTS__
function _gte(value2, params) {
  return new $ZodCheckGreaterThan({
    check: "greater_than",
    ...normalizeParams(params),
    value: value2,
    inclusive: true
  });
}
// @__NO_SIDE_EFFECTS__
function _multipleOf(value2, params) {
  return new $ZodCheckMultipleOf({
    check: "multiple_of",
    ...normalizeParams(params),
    value: value2
  });
}
// @__NO_SIDE_EFFECTS__
function _refine(Class, fn, _params) {
  const schema = new Class({
    type: "custom",
    check: "custom",
    fn,
    ...normalizeParams(_params)
  });
  return schema;
}

// node_modules/.pnpm/zod@4.6.7/node_modules/zod/v4/mini/schemas.js
var ZodMiniType = /* @__PURE__ */ $constructor("ZodMiniType", (inst, def) => {
  if (!inst._zod)
    throw new Error("Uninitialized schema in ZodMiniType.");
  $ZodType.init(inst, def);
  inst.def = def;
  inst.type = def.type;
}, {
  // `with` is an alias for `check`: the same function object, not a wrapper.
  get with() {
    return this.check;
  },
  set with(value2) {
    own(this, "with", value2);
  },
  parse(data2, params) {
    return parse(this, data2, params, { callee: this.parse });
  },
  parseAsync(data2, params) {
    return parseAsync(this, data2, params, { callee: this.parseAsync });
  },
  safeParse(data2, params) {
    return safeParse(this, data2, params);
  },
  safeParseAsync(data2, params) {
    return safeParseAsync(this, data2, params);
  },
  check(...checks) {
    const def = this.def;
    return this.clone({
      ...def,
      checks: [
        ...def.checks ?? [],
        ...checks.map((ch) => typeof ch === "function" ? { _zod: { check: ch, def: { check: "custom" }, onattach: [] } } : ch)
      ]
    }, { parent: true });
  },
  clone(_def, params) {
    return clone(this, _def, params);
  },
  brand() {
    return this;
  },
  register(reg, meta2) {
    reg.add(this, meta2);
    return this;
  },
  apply(fn, ...args) {
    return args.length === 0 ? fn(this) : fn(this, ...args);
  }
});
var ZodMiniString = /* @__PURE__ */ $constructor("ZodMiniString", (inst, def) => {
  $ZodString.init(inst, def);
  ZodMiniType.init(inst, def);
});
// @__NO_SIDE_EFFECTS__
function string2(params) {
  return _string(ZodMiniString, params);
}
var ZodMiniNumber = /* @__PURE__ */ $constructor("ZodMiniNumber", (inst, def) => {
  $ZodNumber.init(inst, def);
  ZodMiniType.init(inst, def);
});
// @__NO_SIDE_EFFECTS__
function number2(params) {
  return _number(ZodMiniNumber, params);
}
var ZodMiniUnknown = /* @__PURE__ */ $constructor("ZodMiniUnknown", (inst, def) => {
  $ZodUnknown.init(inst, def);
  ZodMiniType.init(inst, def);
});
// @__NO_SIDE_EFFECTS__
function unknown() {
  return _unknown(ZodMiniUnknown);
}
var ZodMiniNever = /* @__PURE__ */ $constructor("ZodMiniNever", (inst, def) => {
  $ZodNever.init(inst, def);
  ZodMiniType.init(inst, def);
});
// @__NO_SIDE_EFFECTS__
function never(params) {
  return _never(ZodMiniNever, params);
}
var ZodMiniArray = /* @__PURE__ */ $constructor("ZodMiniArray", (inst, def) => {
  $ZodArray.init(inst, def);
  ZodMiniType.init(inst, def);
});
// @__NO_SIDE_EFFECTS__
function array(element, params) {
  return new ZodMiniArray({
    type: "array",
    element,
    ...normalizeParams(params)
  });
}
var ZodMiniObject = /* @__PURE__ */ $constructor("ZodMiniObject", (inst, def) => {
  $ZodObject.init(inst, def);
  ZodMiniType.init(inst, def);
  installLazyProp(inst, "shape", (self) => self._zod.def.shape, false);
});
// @__NO_SIDE_EFFECTS__
function object(shape, params) {
  const def = {
    type: "object",
    shape: shape ?? {},
    ...normalizeParams(params)
  };
  return new ZodMiniObject(def);
}
// @__NO_SIDE_EFFECTS__
function strictObject(shape, params) {
  return new ZodMiniObject({
    type: "object",
    shape,
    catchall: /* @__PURE__ */ never(),
    ...normalizeParams(params)
  });
}
// @__NO_SIDE_EFFECTS__
function catchall(inst, catchall2) {
  return inst.clone(mergeDefs(inst._zod.def, { catchall: catchall2 }));
}
var ZodMiniUnion = /* @__PURE__ */ $constructor("ZodMiniUnion", (inst, def) => {
  $ZodUnion.init(inst, def);
  ZodMiniType.init(inst, def);
});
// @__NO_SIDE_EFFECTS__
function union(options, params) {
  return new ZodMiniUnion({
    type: "union",
    options,
    ...normalizeParams(params)
  });
}
var ZodMiniDiscriminatedUnion = /* @__PURE__ */ $constructor("ZodMiniDiscriminatedUnion", (inst, def) => {
  $ZodDiscriminatedUnion.init(inst, def);
  ZodMiniType.init(inst, def);
});
// @__NO_SIDE_EFFECTS__
function discriminatedUnion(discriminator, options, params) {
  return new ZodMiniDiscriminatedUnion({
    type: "union",
    options,
    discriminator,
    ...normalizeParams(params)
  });
}
var ZodMiniEnum = /* @__PURE__ */ $constructor("ZodMiniEnum", (inst, def) => {
  $ZodEnum.init(inst, def);
  ZodMiniType.init(inst, def);
  inst.options = [...inst._zod.values];
});
// @__NO_SIDE_EFFECTS__
function _enum(values11, params) {
  const entries = Array.isArray(values11) ? Object.fromEntries(values11.map((v) => [v, v])) : values11;
  return new ZodMiniEnum({
    type: "enum",
    entries,
    ...normalizeParams(params)
  });
}
var ZodMiniTransform = /* @__PURE__ */ $constructor("ZodMiniTransform", (inst, def) => {
  $ZodTransform.init(inst, def);
  ZodMiniType.init(inst, def);
});
// @__NO_SIDE_EFFECTS__
function transform(fn) {
  return new ZodMiniTransform({
    type: "transform",
    transform: fn
  });
}
var ZodMiniOptional = /* @__PURE__ */ $constructor("ZodMiniOptional", (inst, def) => {
  $ZodOptional.init(inst, def);
  ZodMiniType.init(inst, def);
});
// @__NO_SIDE_EFFECTS__
function optional(innerType) {
  return new ZodMiniOptional({
    type: "optional",
    innerType
  });
}
var ZodMiniPrefault = /* @__PURE__ */ $constructor("ZodMiniPrefault", (inst, def) => {
  $ZodPrefault.init(inst, def);
  ZodMiniType.init(inst, def);
});
// @__NO_SIDE_EFFECTS__
function prefault(innerType, defaultValue) {
  return new ZodMiniPrefault({
    type: "prefault",
    innerType,
    get defaultValue() {
      return typeof defaultValue === "function" ? defaultValue() : shallowClone(defaultValue);
    }
  });
}
var ZodMiniPipe = /* @__PURE__ */ $constructor("ZodMiniPipe", (inst, def) => {
  $ZodPipe.init(inst, def);
  ZodMiniType.init(inst, def);
});
// @__NO_SIDE_EFFECTS__
function pipe(in_, out) {
  return new ZodMiniPipe({
    type: "pipe",
    in: in_,
    out
  });
}
var ZodMiniCustom = /* @__PURE__ */ $constructor("ZodMiniCustom", (inst, def) => {
  $ZodCustom.init(inst, def);
  ZodMiniType.init(inst, def);
});
// @__NO_SIDE_EFFECTS__
function refine(fn, _params = {}) {
  return _refine(ZodMiniCustom, fn, _params);
}

// packages/core/src/units/range.ts
function numberBetween(least, most, unit2 = "") {
  const error = (issue2) => `${issue2.input}${unit2} given, ${least} to ${most}${unit2} allowed`;
  return number2().check(_gte(least, { error }), _lte(most, { error }));
}
var whole = () => _multipleOf(1, { error: ({ input }) => `${input} given, a whole number allowed`, abort: true });
function wholeNumber() {
  return number2().check(whole());
}
function countBetween(least, most) {
  const error = (issue2) => `${issue2.input} given, ${least} to ${most} allowed`;
  return number2().check(whole(), _gte(least, { error }), _lte(most, { error }));
}
function numberAbove(least, most, unit2 = "") {
  const error = (issue2) => `${issue2.input}${unit2} given, more than ${least} to ${most}${unit2} allowed`;
  return number2().check(_gt(least, { error }), _lte(most, { error }));
}

// packages/core/src/bending/kind.ts
function ruleKind(kind) {
  return kind;
}

// packages/core/src/bending/linear.ts
var NOTHING = 1e-9;
function linear(perRadius, perThickness) {
  const source = "linear deduction given in the job";
  return {
    name: "linear",
    title: `linear, v = ${workingNumber(perRadius)}\xB7R + ${workingNumber(perThickness)}\xB7T at 90\xB0`,
    source,
    compensates: true,
    terms: (bend2) => {
      const { thickness: T, insideRadius: R, angle: A } = bend2;
      if (A >= 180) return foldedFlat(bend2);
      const v = (perRadius * R + perThickness * T) * A / 90;
      const allowance = 2 * outsideSetback(bend2) - v;
      if (allowance <= NOTHING * T)
        return fail(
          "linear-range",
          [],
          (say) => `v = ${say.size(v)} at ${workingNumber(A)}\xB0, R ${say.size(R)}, T ${say.size(T)}: more than both setbacks (${say.size(2 * outsideSetback(bend2))}) leave`,
          "Use smaller constants, or the k-factor rule for this angle"
        );
      const working = () => [
        workingLine(
          "v = (# \xD7 # + # \xD7 #) \xD7 #/90",
          [perRadius, R, perThickness, T, A],
          (p, r, q, t, a) => (p * r + q * t) * a / 90
        ),
        workingLine("BA = 2 \xD7 SB \u2212 v = 2 \xD7 # \u2212 #", [outsideSetback(bend2), v], (s, w) => 2 * s - w)
      ];
      return termsFromAllowance(bend2, allowance, working, source);
    }
  };
}

// packages/core/src/bending/nominal.ts
var nominal = frozen({
  name: "nominal",
  title: "nominal, no compensation",
  source: "common practice, no source",
  compensates: false,
  terms: () => ({
    allowance: 0,
    setback: 0,
    deduction: 0,
    working: ["no compensation: the line stands at the nominal size"],
    source: "common practice, no source"
  })
});

// packages/core/src/units/length.ts
var MM_PER_INCH = 25.4;
var FACTORS = {
  mm: 1,
  cm: 10,
  m: 1e3,
  in: MM_PER_INCH,
  '"': MM_PER_INCH,
  ft: 12 * MM_PER_INCH,
  "'": 12 * MM_PER_INCH
};
var VULGAR = /([¼½¾⅐-⅞])/g;
var QUANTITY = /^(?:(\d+)(?:\s+|\s*-\s*)(\d+)\/(\d+)|(\d+)\/(\d+)|(\d+(?:\.\d*)?|\.\d+))\s*(mm|cm|m|in|ft|"|')?/;
var EXAMPLES = 'write it like 12.5 mm, 4 cm, 3/4 in, 15-1/2" or 1 ft 3 1/2 in';
var LONGEST2 = 40;
function parseLength(value2, unit2) {
  if (typeof value2 === "number") return finite(value2 * FACTORS[unit2], value2);
  const text2 = value2.trim();
  if (text2 === "") return refuse(`an empty text is not a length; ${EXAMPLES}`);
  if (text2.length > LONGEST2) return refuse(`"${text2.slice(0, 20)}\u2026" is too long for a length; ${EXAMPLES}`);
  if (/\d,\d/.test(text2)) return refuse(`"${text2}" is not a length (it has a comma); ${EXAMPLES}`);
  const gauge = /^(?:gauge\s*|#)?(\d{1,2})\s*(?:ga|gauge)?$/i.exec(text2);
  if (gauge !== null && /ga|#/i.test(text2))
    return refuse(`"${text2}" is a gauge, not a length; write gauge: ${gauge[1]} in place of the thickness`);
  const improper = /(\d+)[\s-]+(\d+)\/(\d+)/.exec(text2);
  if (improper !== null && Number(improper[3]) > 0 && Number(improper[2]) >= Number(improper[3]))
    return refuse(`"${text2}" has a fraction of 1 or more after a whole number; ${meant(improper)}`);
  const parts2 = quantities(plain(text2));
  if (parts2 === null) return refuse(`"${text2}" is not a length; ${EXAMPLES}`);
  const [first, second] = parts2;
  if (second === void 0) return finite(first.amount * FACTORS[first.unit ?? unit2], text2);
  const feet = first.unit === "ft" || first.unit === "'";
  const inches = second.unit === "in" || second.unit === '"';
  if (parts2.length === 2 && feet && inches)
    return finite(first.amount * 12 * MM_PER_INCH + second.amount * MM_PER_INCH, text2);
  if (parts2.every((p) => p.unit === void 0)) return refuse(`"${text2}" is not a length; ${EXAMPLES}`);
  return refuse(`"${text2}" mixes units; only feet followed by inches go together`);
}
var refuse = (why) => ({ ok: false, why });
function meant([, whole2, top, bottom]) {
  const [w, t, b2] = [Number(whole2), Number(top), Number(bottom)];
  const common = (x, y) => y === 0 ? x : common(y, x % y);
  const [rest, by] = [t % b2, common(t % b2, b2)];
  return `write ${w + Math.floor(t / b2)}${rest === 0 ? "" : ` ${rest / by}/${b2 / by}`} if that is meant`;
}
var WORDS = [
  [/(?:millimet(?:er|re)s?)/g, "mm"],
  [/(?:centimet(?:er|re)s?)/g, "cm"],
  [/(?:inch(?:es)?)/g, "in"],
  [/(?:feet|foot)/g, "ft"]
];
function plain(text2) {
  const spelled = text2.replace(VULGAR, (c) => ` ${c.normalize("NFKD").replace("\u2044", "/")}`);
  const marks = spelled.toLowerCase().replace(/[″”]/g, '"').replace(/[′’]/g, "'").replace(/""$/, '"');
  return WORDS.reduce((t, [word2, unit2]) => t.replace(word2, unit2), marks).trim();
}
function quantities(text2) {
  const found = [];
  for (let rest = text2; rest !== ""; ) {
    const m = QUANTITY.exec(rest);
    if (m === null) return null;
    const [all, whole2, top, bottom, onlyTop, onlyBottom, decimal, unit2] = m;
    const part = (n2, d) => n2 === void 0 ? 0 : Number(n2) / Number(d);
    const amount = Number(whole2 ?? 0) + part(top, bottom) + part(onlyTop, onlyBottom) + Number(decimal ?? 0);
    found.push({ amount, unit: unit2 });
    rest = rest.slice(all.length).trim().replace(unit2 === "'" || unit2 === "ft" ? /^-\s*/ : /^$/, "");
  }
  return found;
}
function finite(mm2, given2) {
  return Number.isFinite(mm2) ? { ok: true, mm: mm2 } : refuse(`${given2} is not a finite length`);
}

// packages/core/src/units/format.ts
function plainNumber(value2, digits) {
  const text2 = (value2 * (1 + 4 * Number.EPSILON)).toFixed(digits);
  const short2 = text2.includes(".") ? text2.replace(/0+$/, "").replace(/\.$/, "") : text2;
  return short2 === "-0" ? "0" : short2;
}
var MOST_DIGITS = 12;
function formatApart(mm2, others, unit2) {
  const [value2, least] = unit2 === "mm" ? [mm2, 2] : [mm2 / MM_PER_INCH, 4];
  const taken = value2 === 0 ? others : [...others, `0 ${unit2}`];
  for (let digits = least; digits <= MOST_DIGITS; digits++) {
    const text2 = `${plainNumber(value2, digits)} ${unit2}`;
    if (!taken.includes(text2)) return text2;
  }
  return `${value2} ${unit2}`;
}

// packages/core/src/bending/test-strip.ts
var metal = (material, { thickness, insideRadius }) => `${material} T ${plainNumber(thickness, 2)} R ${plainNumber(insideRadius, 2)}`;
function stripOf(strips, material, bend2) {
  return strips.find((s) => metal(s.material, s) === metal(material, bend2));
}
function testStrip(material, strips) {
  return {
    name: "test-strip",
    title: "test-strip",
    source: "shop file",
    compensates: true,
    terms: (bend2) => {
      if (bend2.angle >= 180) return foldedFlat(bend2);
      const row = stripOf(strips, material, bend2);
      if (row) return kFactor(row.k, `test-strip ${row.name}, K \xB1 ${workingNumber(row.kError)}`).terms(bend2);
      return fail(
        "strip-missing",
        ["insideRadius"],
        `no test-strip of ${metal(material, bend2)} mm`,
        `Known: ${strips.map((s) => metal(s.material, s)).join(", ") || "none; --shop FILE gives them"}`
      );
    }
  };
}

// packages/core/src/bending/kinds.ts
var RULE_KINDS = frozen([
  ruleKind({
    name: "k-factor",
    summary: "BA = \u03C0/180\xB7A\xB7(R + K\xB7T); k from the material when left out",
    constants: { k: optional(numberAbove(0, 1)) },
    make: ({ k }, stock) => k === void 0 ? kFactor(stock.k, stock.kSource) : kFactor(k)
  }),
  ruleKind({
    name: "din-6935",
    summary: "k from r/s by the standard; not below r/s = 0.05",
    constants: {},
    make: () => din6935
  }),
  ruleKind({
    name: "handbook",
    summary: "L = c\xB7T + 1.57\xB7R at 90\xB0, group soft, medium or hard",
    constants: { group: _enum(Object.keys(HANDBOOK_GROUPS)) },
    make: ({ group: group2 }) => handbook(group2)
  }),
  ruleKind({
    name: "linear",
    summary: "v = perRadius\xB7R + perThickness\xB7T at 90\xB0, \xD7 A/90 otherwise",
    constants: {
      perRadius: numberBetween(0, 2),
      perThickness: numberBetween(0, 3)
    },
    make: ({ perRadius, perThickness }) => linear(perRadius, perThickness)
  }),
  ruleKind({
    name: "test-strip",
    summary: "K of strips bent in the shop, from its file",
    constants: {},
    make: (_, { name }, strips) => testStrip(name, strips)
  }),
  ruleKind({ name: "nominal", summary: "no compensation", constants: {}, make: () => nominal })
]);

// packages/core/src/bending/wired-edge.ts
var SOURCE3 = "NAVEDTRA 14251 (Steelworker vol. 2): 2.5 times the wire";
var TIMES = 2.5;
var LEAST_ANGLE = 180;
var GREATEST_ANGLE = 270;
var LIP = 0.5;
var LIP_ROOM = 0.9;
function wireAllowance({ diameter, allowance }) {
  return allowance ?? TIMES * diameter;
}
function wireAllowanceRange(diameter, thickness) {
  const middle = (diameter + thickness) / 2;
  return [
    radians(LEAST_ANGLE) * middle + LIP * thickness,
    radians(GREATEST_ANGLE) * middle + Math.max(LIP * thickness, LIP_ROOM * diameter / 2)
  ];
}
function curlOf(edge, thickness) {
  const allowance = wireAllowance(edge);
  const insideRadius = edge.diameter / 2;
  const middle = insideRadius + thickness / 2;
  const angle2 = Math.min(degrees((allowance - LIP * thickness) / middle), GREATEST_ANGLE);
  const arc = radians(angle2) * middle;
  const setback2 = outsideSetback({ thickness, insideRadius, angle: angle2 });
  return {
    angle: angle2,
    insideRadius,
    lip: allowance - arc,
    terms: {
      allowance: arc,
      setback: setback2,
      deduction: 2 * setback2 - arc,
      working: [
        `wired edge: ${edge.allowance === null ? `${TIMES} \xD7 ${workingNumber(edge.diameter)}` : "allowance given"} = ${workingNumber(allowance)}`,
        `rolled through ${workingNumber(angle2)}\xB0, ${workingNumber(allowance - arc)} left straight at the end`
      ],
      source: edge.allowance === null ? SOURCE3 : "allowance given in the job"
    }
  };
}

// packages/core/src/checks/least-radius.ts
var leastRadius = ({ sheet, material, flat }) => {
  const least = ({ angle: angle2 }) => material.leastRadius.at(sheet.thickness, angle2);
  const tight = flat.bends.filter((b2) => b2.hem === null && b2.insideRadius < least(b2) - 1e-9);
  const worst = tight.toSorted((a, b2) => a.insideRadius - least(a) - (b2.insideRadius - least(b2)))[0];
  if (worst === void 0) return [];
  const limit = least(worst);
  return [
    remark("radius-small", "warning", {
      where: { at: worst.line[0], names: tight.map((b2) => b2.id) },
      value: worst.insideRadius,
      limit,
      unit: "mm",
      values: { material: material.name, thickness: sheet.thickness },
      source: [cite(material.leastRadius.source)]
    })
  ];
};

// packages/core/src/checks/no-compensation.ts
var noCompensation = ({ sheet, material, flat }) => {
  if (sheet.rule.compensates || flat.bends.length === 0) return [];
  const growth = Math.max(
    ...flat.bends.map(({ insideRadius, angle: angle2 }) => {
      const bend2 = { thickness: sheet.thickness, insideRadius, angle: angle2 };
      return 2 * outsideSetback(bend2) - allowanceAtK(bend2, material.k);
    })
  );
  return [
    remark("no-compensation", "note", {
      value: growth,
      unit: "mm",
      values: {},
      source: [cite(material.kSource, { rule: `K (${material.name})` })]
    })
  ];
};

// packages/core/src/checks/index.ts
var CHECKS = frozen([leastRadius, noCompensation]);
function findingsOf(subject) {
  return CHECKS.flatMap((check9) => check9(subject)).map((remark2) => ({ ...remark2, part: subject.name }));
}

// packages/core/src/families/derived.ts
var derivedSize = (name, value2, follows2, words) => ({
  name,
  value: value2,
  follows: follows2,
  words
});

// packages/core/src/fold/lookup.ts
function lookupOf({ panels }) {
  const byId = new Map(panels.map((p) => [p.id, p]));
  const hanging = /* @__PURE__ */ new Map();
  for (const p of panels) {
    if (p.bend === null) continue;
    const list2 = hanging.get(p.bend.parent);
    if (list2 === void 0) hanging.set(p.bend.parent, [p]);
    else list2.push(p);
  }
  return {
    panel: (id) => byId.get(id),
    on: (panel2, edge) => hanging.get(panel2)?.find((p) => p.bend?.edge === edge) ?? null
  };
}

// packages/core/src/fold/outline.ts
function rectangle(length, width) {
  return [
    { name: "south", from: [0, 0] },
    { name: "east", from: [length, 0] },
    { name: "north", from: [length, width] },
    { name: "west", from: [0, width] }
  ];
}
function polygon(points, names) {
  return points.map((from, i) => ({ name: names[i] ?? `edge-${i + 1}`, from }));
}
function nip(outline, between3, leg2, name) {
  if (leg2 === 0) return outline;
  const [i, j] = between3.map((edge) => edgeIndex(outline, edge));
  const k = (i + 1) % outline.length === j ? j : i;
  const n2 = outline.length;
  const at = (m) => outline[(m + n2) % n2].from;
  const towards = (q) => mix(at(k), q, leg2 / distance(at(k), q));
  return [
    ...outline.slice(0, k),
    { name, from: towards(at(k - 1)) },
    { name: outline[k].name, from: towards(at(k + 1)) },
    ...outline.slice(k + 1)
  ];
}
function slot(outline, edge, at, width, depth) {
  const near2 = (i2) => {
    const [p, q] = [outline[i2].from, outline[(i2 + 1) % outline.length].from];
    const d = sub(q, p);
    const s = dot(sub(at, p), d) / dot(d, d);
    return s > 0 && s < 1 && Math.abs(cross(d, sub(at, p))) / size(d) < SAME;
  };
  const i = outline.findIndex((e, k) => e.name === edge && near2(k));
  if (i < 0) return fail("slot-off", [], `there is no edge "${edge}" at ${at[0]}, ${at[1]}`);
  const from = outline[i].from;
  const along3 = unit(sub(outline[(i + 1) % outline.length].from, from));
  const inwards = scale(outward2(along3), -depth);
  const [first, last] = [add(at, scale(along3, -width / 2)), add(at, scale(along3, width / 2))];
  const cut = [
    { name: "slot", from: first },
    { name: "slot", from: add(first, inwards) },
    { name: "slot", from: add(last, inwards) },
    { name: edge, from: last }
  ];
  return [...outline.slice(0, i + 1), ...cut, ...outline.slice(i + 1)];
}
function edgeIndex(outline, name) {
  const i = outline.findIndex((e) => e.name === name);
  if (i >= 0) return i;
  const names = outline.map((e) => e.name);
  return fail("edge-unknown", [], `there is no edge "${name}"`, suggestion(name, names));
}
function clip(outline, half, name) {
  const { x, y, c } = half;
  const size4 = Math.sqrt(x * x + y * y);
  const depths = outline.map(({ from: [u, v] }) => (x * u + y * v - c) / size4);
  if (depths.every((depth) => depth >= -SAME)) return outline;
  const kept = [];
  outline.forEach((edge, i) => {
    const j = (i + 1) % outline.length;
    const [p, q] = [edge.from, outline[j].from];
    const [a, b2] = [depths[i], depths[j]];
    const crossing = () => [
      p[0] + (q[0] - p[0]) * a / (a - b2),
      p[1] + (q[1] - p[1]) * a / (a - b2)
    ];
    if (a >= -SAME) {
      kept.push(edge);
      if (b2 < -SAME) kept.push({ name, from: a < SAME ? p : crossing() });
    } else if (b2 >= SAME) kept.push({ name: edge.name, from: crossing() });
  });
  const tidy2 = kept.filter((e, i) => distance(e.from, kept[(i + 1) % kept.length].from) >= SAME);
  return tidy2.length < 3 ? [] : tidy2;
}
function inside(outline, i, inset) {
  const p = outline[i].from;
  const q = outline[(i + 1) % outline.length].from;
  const l = distance(p, q);
  const n2 = [-(q[1] - p[1]) / l, (q[0] - p[0]) / l];
  return { x: n2[0], y: n2[1], c: n2[0] * p[0] + n2[1] * p[1] + inset };
}

// packages/core/src/fold/least.ts
var LEAST_METAL = 0.5;
var ROUND = 1e-9;
var reaches = (value2, least) => value2 >= least - ROUND;
function shortLegs(draft) {
  const lookup = lookupOf(draft);
  return draft.panels.flatMap((panel2) => {
    const { id, outline, bend: bend2 } = panel2;
    const bent = outline.flatMap((edge, i) => {
      const own2 = edge.name === "near" ? bend2 : lookup.on(id, edge.name)?.bend;
      return own2 == null ? [] : [{ half: inside(outline, i, 0), setback: own2.setback, finish: own2.hem }];
    });
    return bent.flatMap((edge, i) => {
      const { x, y, c } = edge.half;
      const depths = outline.map(({ from }) => x * from[0] + y * from[1] - c);
      const depth = Math.max(...depths);
      const next = bent.find((o) => x * o.half.x + y * o.half.y < -SQUARE);
      if (next !== void 0 && bent.indexOf(next) < i) return [];
      if (next === void 0 && edge.finish !== null && bend2?.hem === edge.finish) return [];
      const least = edge.setback + (next?.setback ?? 0) + LEAST_METAL;
      return reaches(depth, least) ? [] : [short(panel2, Math.abs(x) > Math.abs(y) ? 0 : 1, least)];
    });
  });
}
var SQUARE = 1 - 1e-9;
function short({ id, by }, axis, least) {
  const message = (say) => `panel "${id}" has to reach past its bends, which take ${say.least(least)}`;
  return { code: "leg-short", path: by[axis], message, fix: "" };
}
function legOf({ outline }) {
  const far = outline.flatMap(
    (e, i) => e.name === "far" ? [e.from[1], (outline[(i + 1) % outline.length] ?? e).from[1]] : []
  );
  return far.length > 0 ? Math.min(...far) : Math.max(...outline.map((e) => e.from[1]));
}

// packages/core/src/fold/hinge.ts
function hingeAt(outline, i) {
  const from = outline[i].from;
  const to = outline[(i + 1) % outline.length].from;
  const along3 = unit(sub(to, from));
  return { frame: { origin: to, x: scale(along3, -1), y: outward2(along3) }, length: distance(from, to) };
}
function flatFrame(hinge, deduction) {
  const { origin, x, y } = hinge.frame;
  return { origin: add(origin, scale(y, -deduction)), x, y };
}
function axisHeight(turn4, thickness) {
  return turn4.angle > 0 ? thickness + turn4.insideRadius : -turn4.insideRadius;
}
function bentPose(parent, hinge, turn4, thickness) {
  const a = radians(turn4.angle);
  const [c, s] = [Math.cos(a), Math.sin(a)];
  const [h, sb] = [axisHeight(turn4, thickness), turn4.setback];
  const folded = {
    origin: [0, -sb * c + h * s - sb, -sb * s - h * c + h],
    x: [1, 0, 0],
    y: [0, c, s],
    z: [0, -s, c]
  };
  const { origin, x, y } = hinge.frame;
  const edge = {
    origin: [origin[0], origin[1], 0],
    x: [x[0], x[1], 0],
    y: [y[0], y[1], 0],
    z: [0, 0, 1]
  };
  return compose3(parent, compose3(edge, folded));
}
function bendAxis(parent, hinge, turn4, thickness) {
  const { origin, x, y } = hinge.frame;
  const edge = compose3(parent, {
    origin: [origin[0], origin[1], 0],
    x: [x[0], x[1], 0],
    y: [y[0], y[1], 0],
    z: [0, 0, 1]
  });
  const over = add3(scale3(edge.y, -turn4.setback), scale3(edge.z, axisHeight(turn4, thickness)));
  return {
    origin: add3(edge.origin, over),
    x: edge.x,
    y: turn4.angle > 0 ? scale3(edge.z, -1) : edge.z,
    z: edge.y
  };
}

// packages/core/src/fold/corner-arms.ts
function sidesAt(lookup, host, i) {
  const n2 = host.outline.length;
  return [sideOn(lookup, host, i, (i + n2 - 1) % n2, "low"), sideOn(lookup, host, i, i, "high")];
}
function sideOn(lookup, host, i, index, end2) {
  const edge = host.outline[index].name;
  const flange2 = lookup.on(host.id, edge);
  if (flange2 === null) return null;
  const { frame, length } = hingeAt(host.outline, index);
  const inwards = end2 === "low" ? frame.x : scale(frame.x, -1);
  const start = dot(sub(setBackCorner(lookup, host, i), host.outline[i].from), inwards);
  const arm = { flange: flange2, edge, end: end2, length, start };
  return { arm, tab: tabBeside(lookup, arm) };
}
function tabBeside(lookup, { flange: flange2, end: end2 }) {
  const { outline } = flange2;
  const near2 = edgeIndex(outline, "near");
  const index = (near2 + (end2 === "high" ? 1 : outline.length - 1)) % outline.length;
  const tab = lookup.on(flange2.id, outline[index].name);
  if (tab === null) return null;
  const { length } = hingeAt(outline, index);
  return { flange: tab, edge: "", end: end2, length, start: flange2.bend?.terms.setback ?? 0 };
}
function setBackCorner(lookup, host, i) {
  const n2 = host.outline.length;
  const at = (k) => host.outline[(k + n2) % n2];
  const inset = (k) => lookup.on(host.id, at(k).name)?.bend?.terms.setback ?? 0;
  const v = at(i).from;
  const [u, w] = [unit(sub(v, at(i - 1).from)), unit(sub(at(i + 1).from, v))];
  const [a, b2] = [inset(i - 1), inset(i)];
  const s = (a * dot(u, w) - b2) / cross(u, w);
  return add(v, add(scale(u, s), scale([-u[1], u[0]], a)));
}

// packages/core/src/fold/separate.ts
var FOLDED_BACK = 150;
var isFoldedBack = ({ angle: angle2 }) => angle2 > FOLDED_BACK;
var PARALLEL3 = 1e-9;
var IN_PLANE = 1e-6;
function bisect(a, b2, gap) {
  if (isFoldedBack(a) !== isFoldedBack(b2)) return null;
  const [na, nb] = [a.pose.z, b2.pose.z];
  const [pa, pb] = [place3(a.pose, a.corner), place3(b2.pose, b2.corner)];
  const [ua, ub] = [turn3(a.pose, a.along), turn3(b2.pose, b2.along)];
  const line = cross3(na, nb);
  if (length3(line) < PARALLEL3) {
    if (!sharesPlane(a, b2)) return null;
    const through2 = rootCrossing(pa, ua, pb, ub);
    return through2 === null ? null : pair(ua, ub, through2, gap);
  }
  const l = unit3(line);
  const across2 = (u) => sub3(u, scale3(l, dot3(u, l)));
  const [wa, wb] = [across2(ua), across2(ub)];
  if (length3(wa) < PARALLEL3 || length3(wb) < PARALLEL3) return null;
  return pair(unit3(wa), unit3(wb), planesMeet(pa, na, pb, nb), gap);
}
function sharesPlane(a, b2) {
  const apart3 = sub3(place3(b2.pose, b2.corner), place3(a.pose, a.corner));
  return length3(cross3(a.pose.z, b2.pose.z)) < PARALLEL3 && Math.abs(dot3(apart3, a.pose.z)) < IN_PLANE;
}
function pair(ua, ub, through2, gap) {
  const d = sub3(ua, ub);
  if (length3(d) < PARALLEL3) return null;
  const n2 = unit3(d);
  const at = dot3(n2, through2);
  return [
    { n: n2, c: at + gap / 2 },
    { n: scale3(n2, -1), c: -at + gap / 2 }
  ];
}
function rootCrossing(pa, ua, pb, ub) {
  const n2 = cross3(ua, ub);
  const n22 = dot3(n2, n2);
  if (n22 < PARALLEL3) return null;
  return add3(pa, scale3(ua, dot3(cross3(sub3(pb, pa), ub), n2) / n22));
}
function planesMeet(pa, na, pb, nb) {
  const c = dot3(na, nb);
  const db = dot3(sub3(pb, pa), nb);
  return add3(pa, scale3(sub3(nb, scale3(na, c)), db / (1 - c * c)));
}
function onPanel(half, pose, thickness) {
  const { n: n2, c } = half;
  return {
    x: dot3(n2, pose.x),
    y: dot3(n2, pose.y),
    c: c - dot3(n2, pose.origin) - Math.min(0, dot3(n2, pose.z) * thickness)
  };
}

// packages/core/src/fold/corner-cuts.ts
function cornerWork(scene, host, style) {
  const n2 = host.outline.length;
  return host.outline.flatMap((next, i) => {
    const prev = host.outline[(i + n2 - 1) % n2];
    if (next.name === "near" || prev.name === "near") return [];
    const [before, after] = sidesAt(scene.lookup, host, i);
    const arms = [before, after].flatMap((s) => s?.tab ?? []);
    if (before !== null && after !== null) {
      const root = setBackCorner(scene.lookup, host, i);
      return pairWork(scene, style, before, after, root);
    }
    const cuts = arms.flatMap((tab) => styleCuts(scene, style, tab, false));
    return arms.length === 0 ? [] : { cuts, toRoot: slanting(style, arms), root: null };
  });
}
function pairWork(scene, style, before, after, root) {
  const [a, b2] = [before.tab ?? before.arm, after.tab ?? after.arm];
  const [keepA, keepB] = apart(scene, style, a, b2);
  const mitred = style.meet === "mitre";
  const beyond = bisect(meeting(scene, before.arm), meeting(scene, after.arm), style.gap);
  const cuts = [
    ...styleCuts(scene, style, a, mitred && keepA !== null),
    ...styleCuts(scene, style, b2, mitred && keepB !== null),
    ...keepA === null ? [] : spaceCuts(scene, a.flange, keepA),
    ...keepB === null ? [] : spaceCuts(scene, b2.flange, keepB),
    ...overCuts(scene, a, b2, style.gap),
    ...overCuts(scene, b2, a, style.gap),
    ...beyond === null ? [] : beyondCuts(scene, before.arm, beyond[0]),
    ...beyond === null ? [] : beyondCuts(scene, after.arm, beyond[1])
  ];
  return { cuts, toRoot: slanting(style, [a, b2]), root };
}
function slanting(style, arms) {
  if (style.root !== "apex") return [];
  const upright = arms.filter(({ flange: flange2 }) => Math.abs(flange2.bend?.angle ?? 0) <= 90);
  return upright.map(({ flange: flange2, end: end2 }) => ({ panel: flange2.id, end: end2 }));
}
function apart(scene, style, a, b2) {
  if (style.meet === "none") return [null, null];
  const [ma, mb] = [meeting(scene, a), meeting(scene, b2)];
  const tab = a.edge === "" ? a : b2.edge === "" ? b2 : null;
  if (style.meet === "mitre" || tab === null) return bisect(ma, mb, style.gap) ?? [null, null];
  if (!sharesPlane(ma, mb)) return [null, null];
  const above = beyondFar(scene, tab === a ? b2.flange : a.flange, style.gap);
  return tab === a ? [above, null] : [null, above];
}
function overCuts(scene, own2, other, gap) {
  const [m, o] = [meeting(scene, own2), meeting(scene, other)];
  const [folded, upright] = [own2.flange.bend?.angle ?? 0, other.flange.bend?.angle ?? 0];
  if (!isFoldedBack(m) || isFoldedBack(o) || folded > 0 !== upright > 0) return [];
  const up = upright > 0 ? 1 : -1;
  const n2 = scale3(o.pose.z, up);
  const inside2 = place3(o.pose, [0, 0, up > 0 ? scene.thickness : 0]);
  return spaceCuts(scene, own2.flange, { n: n2, c: dot3(n2, inside2) + gap });
}
function beyondFar(scene, flange2, gap) {
  const pose = scene.pose(flange2.id);
  const height = Math.max(...flange2.outline.map((e) => e.from[1]));
  return { n: pose.y, c: dot3(pose.y, place3(pose, [0, height, 0])) + gap };
}
function meeting(scene, arm) {
  const angle2 = arm.flange.bend?.angle ?? 0;
  const outside = angle2 > 0 ? 0 : scene.thickness;
  return {
    angle: Math.abs(angle2),
    pose: scene.pose(arm.flange.id),
    corner: [arm.end === "low" ? 0 : arm.length, 0, outside],
    along: [arm.end === "low" ? 1 : -1, 0, 0]
  };
}
function spaceCuts(scene, flange2, half) {
  return chain(scene, flange2).map(({ id }) => ({
    panel: id,
    half: onPanel(half, scene.pose(id), scene.thickness)
  }));
}
function beyondCuts(scene, { flange: flange2 }, half) {
  const [, ...rest] = chain(scene, flange2);
  return rest.flatMap((panel2) => [
    { panel: panel2.id, half: onPanel(half, scene.pose(panel2.id), scene.thickness) },
    ...foldCut(scene, panel2, half)
  ]);
}
function foldCut({ lookup, pose, thickness }, panel2, { n: n2, c }) {
  const { bend: bend2 } = panel2;
  if (bend2 === null) return [];
  const parent = lookup.panel(bend2.parent).outline;
  const axis = bendAxis(pose(bend2.parent), hingeAt(parent, edgeIndex(parent, bend2.edge)), bend2, thickness);
  const along3 = dot3(n2, axis.x);
  if (Math.abs(along3) < 1e-6) return [];
  const least = ringReach(
    dot3(n2, axis.y),
    dot3(n2, axis.z),
    radians(Math.abs(bend2.angle)),
    bend2.insideRadius,
    thickness
  );
  return [{ panel: panel2.id, half: { x: along3, y: 0, c: c - dot3(n2, axis.origin) - least } }];
}
function ringReach(y, z, sweep, insideRadius, thickness) {
  const lowest = ((Math.atan2(z, y) + Math.PI) % (2 * Math.PI) + 2 * Math.PI) % (2 * Math.PI);
  const turns2 = lowest < sweep ? [0, sweep, lowest] : [0, sweep];
  const values11 = turns2.flatMap(
    (phi) => [insideRadius, insideRadius + thickness].map((r) => r * (y * Math.cos(phi) + z * Math.sin(phi)))
  );
  return Math.min(...values11);
}
function chain(scene, flange2) {
  const next = scene.lookup.on(flange2.id, "far");
  return next === null ? [flange2] : [flange2, ...chain(scene, next)];
}
function styleCuts(scene, style, arm, meets) {
  const { bend: bend2 } = arm.flange;
  if (bend2 === null) return [];
  const cuts = style.cuts({
    edge: arm.edge,
    start: arm.start,
    tangent: bend2.terms.setback,
    angle: Math.abs(bend2.angle),
    thickness: scene.thickness,
    meets
  });
  return cuts.flatMap((cut) => {
    if (cut.d !== 0) return [{ panel: arm.flange.id, half: inFlange(cut, arm, 0) }];
    let shift = 0;
    return chain(scene, arm.flange).map((panel2, i, list2) => {
      if (i > 0) shift += Math.min(...list2[i - 1].outline.map((e) => e.from[0]));
      return { panel: panel2.id, half: inFlange(cut, arm, shift) };
    });
  });
}
function inFlange({ t, d, c }, arm, shift) {
  const low = { x: t, y: d, c: c - t * shift };
  return arm.end === "low" ? low : { x: -t, y: d, c: c - t * (arm.length - shift) };
}

// packages/core/src/fold/set-back.ts
function setBack(outline, name, half) {
  const n2 = outline.length;
  const i = outline.findIndex((e) => e.name === name);
  if (i < 0) return outline;
  const corner = (k) => outline[k % n2];
  const depth = ([x, y]) => half.x * x + half.y * y - half.c;
  const level = depth(corner(i).from);
  if (level >= -SAME) return outline;
  const endFrom = (start, step) => {
    for (let k = start; Math.abs(k - start) < n2 - 2; k += step) {
      const [p, q] = [corner(k).from, corner(k + step).from];
      const [a, b2] = [depth(p), depth(q)];
      if (b2 >= SAME) return { at: mix(p, q, a / (a - b2)), keep: k + step, stepped: false };
      if (b2 >= -SAME) return { at: null, keep: k + step, stepped: false };
      if (b2 < level + SAME && k !== start) return overrun(name);
      if (b2 < level + SAME) return { at: [p[0] - a * half.x, p[1] - a * half.y], keep: k, stepped: true };
    }
    return null;
  };
  const [first, last] = [endFrom(i + n2, -1), endFrom(i + 1, 1)];
  if (first === null || last === null || last.keep > first.keep) return [];
  const moved3 = [];
  if (last.at !== null)
    moved3.push({ name: last.stepped ? "relief" : corner(last.keep + n2 - 1).name, from: last.at });
  for (let k = last.keep; k < first.keep; k++) moved3.push(corner(k));
  const before = corner(first.keep);
  if (first.at === null) moved3.push({ name, from: before.from });
  else
    moved3.push({ name: first.stepped ? "relief" : before.name, from: before.from }, { name, from: first.at });
  return moved3.length < 3 ? [] : moved3;
}
function overrun(name) {
  return fail(
    "edge-overrun",
    [],
    `edge "${name}" cannot be set back for its bend: the outline comes out past it again`,
    "Make the stretch beside the bend longer than the bend is wide"
  );
}

// packages/core/src/fold/settle.ts
function settle(draft) {
  const lookup = lookupOf(draft);
  const poses = mouldPoses(draft);
  const scene = { lookup, pose: (id) => poses.get(id), thickness: draft.sheet.thickness };
  const work2 = draft.corners.flatMap(
    (request) => cornerWork(scene, lookup.panel(request.panel), request.style).map((w) => ({ ...w, request }))
  );
  const cuts = grouped(work2.flatMap((w) => w.cuts));
  const shapes = /* @__PURE__ */ new Map();
  for (const p of draft.panels) {
    const own2 = work2.filter((w) => w.request.panel === p.id);
    shapes.set(p.id, own2.reduce(slotted, shapeOf(lookup, p, cuts.get(p.id) ?? [])));
  }
  const toRoot = work2.flatMap((w) => w.toRoot);
  return {
    sheet: draft.sheet,
    panels: draft.panels.map((p) => settlePanel(lookup, p, shapes, toRoot)),
    rootHoles: work2.flatMap(rootHole),
    asked: draft.asked,
    sites: draft.sites
  };
}
function grouped(cuts) {
  const byPanel = /* @__PURE__ */ new Map();
  for (const { panel: panel2, half } of cuts) {
    const list2 = byPanel.get(panel2);
    if (list2 === void 0) byPanel.set(panel2, [half]);
    else list2.push(half);
  }
  return byPanel;
}
function mouldPoses(draft) {
  const poses = /* @__PURE__ */ new Map();
  const outlines = new Map(draft.panels.map((p) => [p.id, p.outline]));
  for (const { id, bend: bend2 } of draft.panels) {
    if (bend2 === null) poses.set(id, HOME);
    else {
      const hinge = hingeOf(outlines.get(bend2.parent), bend2);
      poses.set(id, bentPose(poses.get(bend2.parent), hinge, bend2, draft.sheet.thickness));
    }
  }
  return poses;
}
var hingeOf = (parent, bend2) => hingeAt(parent, edgeIndex(parent, bend2.edge));
function shapeOf(lookup, panel2, cuts) {
  const { id, outline, bend: bend2 } = panel2;
  const trimmed = cuts.reduce((o, half) => clip(o, half, "cut"), outline);
  const shape = outline.reduce((rest, edge, i) => {
    const terms = edge.name === "near" ? bend2?.terms : lookup.on(id, edge.name)?.bend?.terms;
    return terms === void 0 ? rest : setBack(rest, edge.name, inside(outline, i, terms.setback));
  }, trimmed);
  if (shape.length === 0)
    return vanishes(`nothing is left of panel "${id}" between its bends and corner cuts`);
  const far = shape.findIndex((e) => e.name === "far");
  if (outline.some((e) => e.name === "far") && !reaches(edgeLength(shape, far), LEAST_METAL))
    return fail(
      "panel-cut",
      panel2.by[1],
      `the cuts at the ends of panel "${id}" leave nothing of its far edge`
    );
  return shape;
}
function edgeLength(outline, i) {
  const [a, b2] = [outline[i], outline[(i + 1) % outline.length]];
  return i < 0 || a === void 0 || b2 === void 0 ? 0 : distance(a.from, b2.from);
}
function slotted(shape, { root, request }) {
  const { relief } = request.style;
  if (root === null || relief?.kind !== "slot") return shape;
  const i = shape.findIndex((e) => distance(e.from, root) < SAME);
  if (i < 0) return shape;
  const n2 = shape.length;
  const towards = (q) => {
    const l = distance(root, q);
    return [(q[0] - root[0]) / l * relief.depth, (q[1] - root[1]) / l * relief.depth];
  };
  const u = towards(shape[(i + n2 - 1) % n2].from);
  const w = towards(shape[(i + 1) % n2].from);
  const bite = [
    { name: "relief", from: [root[0] + u[0], root[1] + u[1]] },
    { name: "relief", from: [root[0] + u[0] + w[0], root[1] + u[1] + w[1]] },
    { name: shape[i].name, from: [root[0] + w[0], root[1] + w[1]] }
  ];
  return [...shape.slice(0, i), ...bite, ...shape.slice(i + 1)];
}
function rootHole({ root, request }) {
  const { relief } = request.style;
  if (root === null || relief?.kind !== "hole") return [];
  return [{ panel: request.panel, at: root, diameter: relief.diameter }];
}
function settlePanel(lookup, panel2, shapes, toRoot) {
  const { id, outline, bend: bend2, holes: holes3, marks } = panel2;
  const shape = shapes.get(id);
  if (bend2 === null) return { id, outline, shape, hang: null, holes: holes3, marks };
  const hinge = hingeOf(lookup.panel(bend2.parent).outline, bend2);
  const ends = (end2) => bend2.terms.allowance > 0 && toRoot.some((b2) => b2.panel === id && b2.end === end2);
  const zone = zoneOf(id, shapes.get(bend2.parent), shape, hinge, bend2, ends);
  return { id, outline, shape, hang: { bend: bend2, hinge, zone }, holes: holes3, marks };
}
function zoneOf(id, parent, child, hinge, bend2, toRoot) {
  const [b2, a] = edgeEnds(parent, bend2.edge, bend2.parent).map(
    (p) => dot(sub(p, hinge.frame.origin), hinge.frame.x)
  );
  const [childLow, childHigh] = edgeEnds(child, "near", id).map((p) => p[0]);
  const [low, high] = [Math.max(a, childLow), Math.min(b2, childHigh)];
  if (!reaches(high - low, LEAST_METAL))
    return vanishes(`nothing is left to bend at "${id}" between the corner cuts`);
  const near2 = (corner, end2) => Math.abs(corner - end2) <= bend2.terms.allowance;
  return {
    parentSide: [toRoot("low") && near2(a, low) ? a : low, toRoot("high") && near2(b2, high) ? b2 : high],
    childSide: [low, high]
  };
}
function edgeEnds(outline, name, panel2) {
  const i = outline.findIndex((e) => e.name === name);
  if (i < 0) return vanishes(`the corner cuts remove the whole edge "${name}" of "${panel2}"`);
  return [outline[i].from, outline[(i + 1) % outline.length].from];
}
function vanishes(message) {
  return fail("panel-vanishes", [], message);
}

// packages/core/src/fold/build.ts
function fold(sheet, ...steps) {
  const empty = { sheet, panels: [], corners: [], asked: [], sites: [], refused: [] };
  const draft = steps.reduce((d, step) => step(d), empty);
  const refused2 = [...draft.refused, ...shortLegs(draft)];
  if (refused2.length > 0) throw new JobError(firstOfEach(refused2));
  return settle(draft);
}
function firstOfEach(refused2) {
  const key = ({ path, code }) => path.length === 0 ? code : path.join(".");
  const named2 = refused2.filter((r) => r.path.length > 0);
  const told = named2.length > 0 ? named2 : refused2;
  return told.filter((r, i) => told.findIndex((q) => key(q) === key(r)) === i);
}

// packages/core/src/schema/kit.ts
var LONGEST3 = 1e4;
var LEAST = 0.01;
function paramKit(unit2) {
  const size4 = (range = {}) => sizeSchema(unit2, range);
  const fallback = (schema, value2) => pipe(
    optional(schema),
    transform((v) => v === void 0 ? value2 : v)
  );
  return {
    unit: unit2,
    size: size4,
    sizeOf: (is, known) => {
      const error = (issue2) => `${sayIn(unit2).size(issue2.input)} given; there are ${known()}`;
      return pipe(size4(), number2().check(refine(is, { error })));
    },
    angle: (least, most) => numberBetween(least, most, " deg"),
    hem: () => hemSchema(size4),
    oneOf: (words) => _enum(words),
    count: countBetween,
    maybe: (schema) => fallback(schema, null),
    or: fallback,
    instead: (schema, written) => prefault(schema, written),
    list: (schema, least, most) => {
      const error = (issue2) => `${issue2.input.length} in the list, ${least} to ${most} allowed`;
      return array(schema).check(refine(({ length }) => length >= least && length <= most, { error })).register(globalRegistry, { minItems: least, maxItems: most });
    },
    group: (shape) => strictGroup(shape),
    byName: (key, options) => discriminatedUnion(key, options),
    either: (a, b2, what) => union([a, b2], { error: () => what })
  };
}
function strictGroup(shape) {
  const known = Object.keys(shape).join(", ");
  return strictObject(shape, {
    error: (issue2) => issue2.code === "unrecognized_keys" ? known : void 0
  });
}
function sizeSchema(unit2, { min, max = LONGEST3 }) {
  const say = sayIn(unit2);
  const [low, high] = [min === void 0 ? null : say.least(min), say.most(max)];
  return pipe(
    union([number2(), string2()], { error: () => 'a length such as 12.5 or "15 1/2 in"' }).register(globalRegistry, publishedRange(min, max)),
    transform((value2, context) => {
      const refuse2 = (message) => {
        context.issues.push({ code: "custom", input: value2, message });
        return NEVER;
      };
      const read2 = parseLength(value2, unit2);
      if (!read2.ok) return refuse2(read2.why);
      const short2 = min === void 0 ? read2.mm <= 0 : read2.mm < min - 1e-9;
      const tiny = read2.mm > 0 && read2.mm < LEAST - 1e-9;
      if (tiny && !short2) {
        const least = say.least(LEAST);
        const given3 = formatApart(read2.mm, [least], unit2);
        return refuse2(`${given3} given, ${min === 0 ? "0, or " : ""}${least} or more allowed`);
      }
      if (!short2 && read2.mm <= max + 1e-9) return read2.mm;
      const given2 = formatApart(read2.mm, low === null ? [high] : [low, high], unit2);
      return refuse2(`${given2} given, ${low ?? "more than 0"} to ${high} allowed`);
    })
  );
}
function publishedRange(min, max) {
  const least = min === void 0 || min === 0 ? {} : { minimum: Number((min / MM_PER_INCH).toFixed(6)) };
  return { ...min === void 0 ? { exclusiveMinimum: 0 } : { minimum: 0, ...least }, maximum: max };
}
function hemSchema(size4) {
  const folded = discriminatedUnion("type", [
    strictGroup({ type: _enum(["closed"]), length: size4() }),
    strictGroup({ type: _enum(["open"]), length: size4(), gap: optional(size4()) }),
    strictGroup({ type: _enum(["teardrop"]), length: size4(), gap: optional(size4()) }),
    // so that a hem can be taken off and put on again by its type alone
    strictGroup({ type: _enum(["none"]), length: optional(unknown()), gap: optional(unknown()) })
  ]);
  return pipe(
    folded,
    transform((hem3) => hem3.type === "none" ? null : hem3)
  );
}

// packages/core/src/schema/problems.ts
function problemsOf(issues, data2) {
  return issues.flatMap((issue2) => problems(issue2, issue2.path, data2));
}
function problems(issue2, path, data2) {
  const value2 = valueAt(data2, path);
  switch (issue2.code) {
    case "unrecognized_keys":
      return issue2.keys.map((key) => ({
        code: "key-unknown",
        path: [...path, key],
        message: `unknown key ${quoted(key)}`,
        fix: suggestion(key, issue2.message.split(", ")),
        at: "key"
      }));
    case "invalid_type":
      return [typeProblem(path, value2, issue2.expected)];
    case "invalid_value":
      return [wordProblem(path, value2, issue2.values.map(String))];
    case "invalid_union":
      return unionProblems(issue2, path, data2);
    default:
      return [{ code: "value-range", path, message: issue2.message, fix: "" }];
  }
}
function typeProblem(path, value2, expected) {
  const wanted = EXPECTED[expected] ?? expected;
  if (value2 === void 0) return { code: "value-missing", path, message: "missing", fix: `Give ${wanted}` };
  const plain3 = expected === "string" && ["number", "boolean"].includes(typeof value2);
  const fix = plain3 ? `Write it in quotes: "${String(value2)}"` : "";
  return { code: "value-type", path, message: `${described(value2)} given, ${wanted} allowed`, fix };
}
var EXPECTED = {
  number: "a number",
  string: "text",
  object: "a group of keys and values",
  array: "a list"
};
function wordProblem(path, value2, words) {
  if (value2 === void 0)
    return { code: "value-missing", path, message: "missing", fix: `One of ${words.join(", ")}` };
  const fix = typeof value2 === "string" ? suggestion(value2, words) : `Known: ${words.join(", ")}`;
  return { code: "word-unknown", path, message: `${described(value2)} given`, fix };
}
function unionProblems(issue2, path, data2) {
  if (issue2.discriminator !== void 0) {
    const at = [...path.slice(0, path.at(-1) === issue2.discriminator ? -1 : void 0), issue2.discriminator];
    const options = "options" in issue2 ? issue2.options : [];
    return [
      wordProblem(at, valueAt(data2, at), options.map(String)),
      ...misspelt(at, data2, options.map(String))
    ];
  }
  const branches = issue2.errors.map(
    (list2) => list2.flatMap((i) => problems(i, [...path, ...i.path], data2))
  );
  const read2 = branches.find((b2) => b2.some((p) => p.code === "value-range" || p.path.length > path.length));
  if (read2 !== void 0) return read2;
  const value2 = valueAt(data2, path);
  if (value2 === void 0)
    return [{ code: "value-missing", path, message: "missing", fix: `Give ${issue2.message}` }];
  const words = issue2.errors.flat().flatMap((i) => i.code === "invalid_value" ? i.values.map(String) : []);
  const near2 = typeof value2 === "string" ? nearest(value2, words) : null;
  const fix = near2 === null ? "" : `Write "${near2}"`;
  return [{ code: "value-type", path, message: `${described(value2)} given, ${issue2.message} allowed`, fix }];
}
function misspelt(at, data2, words) {
  const group2 = valueAt(data2, at.slice(0, -1));
  const wanted = String(at.at(-1));
  if (typeof group2 !== "object" || group2 === null || wanted in group2) return [];
  return Object.entries(group2).filter(([key]) => nearest(key, [wanted]) !== null).map(([key, value2]) => {
    const word2 = nearest(String(value2), words);
    return {
      code: "key-unknown",
      path: [...at.slice(0, -1), key],
      message: `unknown key ${quoted(key)}`,
      fix: word2 === null ? suggestion(key, [wanted]) : `Did you mean "${wanted}"? Write ${wanted}: ${word2}`,
      at: "key"
    };
  });
}
function described(value2) {
  if (value2 === null) return "nothing";
  if (Array.isArray(value2)) return "a list";
  if (typeof value2 === "object") return "a group of keys and values";
  return typeof value2 === "string" ? quoted(value2) : String(value2);
}

// packages/core/src/schema/value.ts
var plain2 = { words: "", unit: "", options: [], inner: {} };
var same2 = (value2) => value2;
var mm = (size4) => `${size4} mm`;
function size2(words, range = {}) {
  return { ...plain2, words, unit: "mm", read: (k) => k.size(range), write: mm };
}
function angle(words, least, most) {
  return { ...plain2, words, unit: "deg", read: (k) => k.angle(least, most), write: same2 };
}
function count(words, least, most) {
  return { ...plain2, words, read: (k) => k.count(least, most), write: same2 };
}
function word(words, options) {
  return { ...plain2, words, options, read: (k) => k.oneOf(options), write: same2 };
}
function sizeOr(words, other, range = {}) {
  return {
    ...plain2,
    words,
    unit: "mm",
    options: [other],
    read: (k) => k.either(k.oneOf([other]), k.size(range), `${other} or a length`),
    write: (value2) => typeof value2 === "number" ? mm(value2) : value2
  };
}
function group(words, inner) {
  return {
    ...plain2,
    words,
    inner,
    read: (k) => k.group(shapeOf2(inner, k)),
    write: (value2) => writtenBy(inner, value2)
  };
}
function list(words, entry, [least, most]) {
  return {
    ...plain2,
    words,
    inner: { "[]": entry },
    read: (k) => k.list(entry.read(k), least, most),
    write: (value2) => value2.map(entry.write)
  };
}
function choice(words, typeWords, choices) {
  const options = Object.keys(choices);
  const inner = Object.assign({ type: word(typeWords, options) }, ...Object.values(choices));
  return {
    ...plain2,
    words,
    inner,
    read: (k) => k.byName(
      "type",
      options.map((o) => k.group({ type: k.oneOf([o]), ...shapeOf2(choices[o], k) }))
    ),
    write: (value2) => writtenBy(inner, value2)
  };
}
var HEM = {
  type: word("closed, open, teardrop or none", ["closed", "open", "teardrop", "none"]),
  length: size2("finished width of the hem"),
  gap: size2("inside gap of an open hem, inside width of a teardrop")
};
function hem(words) {
  return {
    ...plain2,
    words,
    inner: HEM,
    read: (k) => k.or(k.hem(), null),
    write: (value2) => value2 === null ? void 0 : writtenBy(HEM, value2)
  };
}
function or(value2, fallback) {
  return { ...value2, read: (k) => k.instead(value2.read(k), value2.write(fallback)) };
}
function maybe(value2) {
  return {
    ...value2,
    read: (k) => k.maybe(value2.read(k)),
    write: (given2) => given2 === null ? void 0 : value2.write(given2)
  };
}
var kinds = { size: size2, sizeOr, angle, count, word, group, list, choice, hem, or, maybe };
var value = frozen(kinds);
function shapeOf2(values11, kit) {
  return Object.fromEntries(Object.entries(values11).map(([name, v]) => [name, v.read(kit)]));
}
function writtenBy(values11, given2) {
  const there = Object.entries(given2).filter(([, v]) => v !== null && v !== void 0);
  return Object.fromEntries(there.map(([name, v]) => [name, values11[name]?.write(v) ?? v]));
}
function declaredAt(values11, path) {
  const [step, ...rest] = path;
  if (step === void 0) return null;
  const found = values11[typeof step === "number" ? "[]" : step];
  if (found === void 0) return null;
  return rest.length === 0 ? found : declaredAt(found.inner, rest);
}
function wordsOf(values11, path = "") {
  const lines = Object.entries(values11).flatMap(([name, v]) => {
    const at = path === "" ? name : `${path}.${name}`;
    const own2 = v.words === "" || name === "[]" ? [] : [[at, v.words]];
    return [...own2, ...Object.entries(wordsOf(v.inner, at))];
  });
  return Object.fromEntries(lines);
}

// packages/core/src/families/refused.ts
function refused({ path, why, fix = "" }, params) {
  const plain3 = { code: "size-impossible", path, message: why, fix };
  return fix === "" ? withGiven(plain3, params) : plain3;
}
function withGiven(refusal2, params) {
  const given2 = refusal2.path.length === 0 ? null : valueAt(params, refusal2.path);
  if (typeof given2 !== "number") return refusal2;
  return { ...refusal2, message: (say) => `${say.size(given2)} given, ${inWords(refusal2.message, say)}` };
}

// packages/core/src/families/family.ts
var NAME = /^[a-z][a-z0-9]*(-[a-z0-9]+)*$/;
function defineFamily(family) {
  const { name, values: values11, describe: describe12 } = family;
  if (!NAME.test(name))
    throw new RangeError(`family name "${name}" given, lower-case words joined by hyphens allowed`);
  const fill = filling(values11);
  return {
    name,
    values: values11,
    describe: { ...describe12, sizes: wordsOf(values11) },
    params: (kit) => shapeOf2(values11, kit),
    part: (params, sheet) => {
      const filled = fill(params);
      const own2 = family.check?.(filled, sheet) ?? [];
      if (own2.length > 0) throw new JobError(own2.map((c) => refused(c, filled)));
      try {
        return fold(sheet, ...family.build(filled, sheet));
      } catch (error) {
        if (!(error instanceof JobError)) throw error;
        throw new JobError(error.refusals.map((r) => withGiven(r, filled)));
      }
    },
    // what arrives here went through the schemas, which give what the family declares
    derived: (params, sheet) => family.derived?.(params, sheet) ?? []
  };
}
function filling(values11) {
  let schema = null;
  return (params) => {
    schema ??= strictGroup(shapeOf2(values11, paramKit("mm")));
    const given2 = withoutNothing(params);
    const read2 = schema.safeParse(given2);
    if (!read2.success) throw new JobError(problemsOf(read2.error.issues, given2));
    return read2.data;
  };
}
function withoutNothing(value2) {
  if (Array.isArray(value2)) return value2.map(withoutNothing);
  if (typeof value2 !== "object" || value2 === null) return value2;
  const there = Object.entries(value2).filter(([, v]) => v !== null && v !== void 0);
  return Object.fromEntries(there.map(([k, v]) => [k, withoutNothing(v)]));
}

// packages/core/src/fold/verbs.ts
function panel(id, outline, by = [[], []]) {
  return (draft) => add2(draft, { id, outline, bend: null, holes: [], marks: [], by });
}
function flange(id, on, spec) {
  return hang(id, on, spec, null);
}
function hem2(id, on, { inset, by = [], ...spec }, side = "up") {
  return (draft) => {
    const { thickness } = draft.sheet;
    const refused2 = hemProblem(draft, on[0], spec, by);
    const fits = refused2 === null ? spec : { ...spec, length: leastHemLength(spec, thickness) };
    const { angle: angle2, insideRadius, leg: leg2 } = hemFold(fits, thickness);
    const turn4 = side === "up" ? angle2 : -angle2;
    const fold2 = { height: leg2, angle: turn4, insideRadius, by, ...inset === void 0 ? {} : { inset } };
    const hung = hang(id, on, fold2, { kind: spec.type })(draft);
    return refused2 === null ? hung : { ...hung, refused: [...hung.refused, refused2] };
  };
}
function wired(id, on, { inset = [0, 0], ...edge }, side = "down") {
  return (draft) => {
    const { thickness, rule } = draft.sheet;
    const { angle: angle2, insideRadius, lip, terms } = curlOf(edge, thickness);
    const sign = side === "up" ? 1 : -1;
    const roll = { height: terms.setback + lip, angle: sign * angle2, insideRadius, inset };
    const turned = { height: wireAllowance(edge), angle: sign * 180, insideRadius, inset };
    return rule.compensates ? hang(id, on, roll, { kind: "wired", terms })(draft) : hang(id, on, turned, { kind: "wired" })(draft);
  };
}
function hemProblem(draft, wall, hem3, by) {
  const { thickness } = draft.sheet;
  const panel2 = panelOf(draft, wall);
  const named2 = `${hem3.type === "open" ? "an" : "a"} ${hem3.type} hem`;
  const least = leastHemLength(hem3, thickness);
  const room = panel2.bend === null ? Infinity : legOf(panel2) - panel2.bend.setback - thickness;
  const refuse2 = (path, message) => ({ code: "hem-room", path, message, fix: "" });
  if (!reaches(room, least)) return refuse2(panel2.by[1], `panel "${wall}" is too low for ${named2} on it`);
  if (!reaches(hem3.length, least)) return refuse2(by, `${named2} needs a straight leg past its fold`);
  if (reaches(room, hem3.length)) return null;
  return refuse2(by, (say) => `longer than panel "${wall}" of ${say.size(legOf(panel2))} has room for`);
}
function hang(id, on, spec, finish) {
  return (draft) => {
    const parent = panelOf(draft, on[0]);
    const i = edgeIndex(parent.outline, on[1]);
    const { length } = hingeAt(parent.outline, i);
    const [west, east] = spec.inset ?? [0, 0];
    const spread2 = spec.spread ?? 0;
    const n2 = parent.outline.length;
    const before = parent.outline[(i + n2 - 1) % n2].name;
    const after = parent.outline[(i + 1) % n2].name;
    const end2 = (name) => name === "near" ? "inner" : name;
    const outline = [
      { name: "near", from: [west, 0] },
      { name: end2(before), from: [length - east, 0] },
      { name: "far", from: [length - east + spread2, spec.height] },
      { name: end2(after), from: [west - spread2, spec.height] }
    ];
    return add2(draft, {
      id,
      outline,
      bend: bendOf(draft, on, spec, finish),
      holes: [],
      marks: [],
      by: [[], spec.by ?? []]
    });
  };
}
function corners(panels, style) {
  return (draft) => ({
    ...draft,
    corners: [...draft.corners, ...panels.map((id) => ({ panel: panelOf(draft, id).id, style }))]
  });
}
function hole(id, at) {
  return (draft) => change(draft, id, (p) => ({ ...p, holes: [...p.holes, at] }));
}
function site(name, faces, seat2, width = null) {
  return (draft) => {
    for (const { panel: panel2 } of [...faces, seat2]) panelOf(draft, panel2);
    const looks = faces.find((f) => f.panel === seat2.panel)?.face ?? faces[0]?.face ?? "marked";
    return { ...draft, sites: [...draft.sites, { name, faces, seat: { looks, lift: 0, ...seat2 }, width }] };
  };
}
function asked(name, value2, axis, over = "all") {
  return (draft) => ({ ...draft, asked: [...draft.asked, { name, value: value2, axis, over }] });
}
function bendOf(draft, [parent, edge], spec, finish) {
  const { thickness, rule } = draft.sheet;
  const { angle: angle2 = 90, insideRadius = draft.sheet.insideRadius } = spec;
  const input = { thickness, insideRadius, angle: Math.abs(angle2) };
  if (!(input.angle > 0 && input.angle <= 270))
    return fail("bend-angle-range", ["angle"], `${angle2} deg given, -270 to 270 and not 0 allowed`);
  return {
    parent,
    edge,
    angle: angle2,
    insideRadius,
    terms: finish?.terms ?? within(["bending"], () => rule.terms(input)),
    setback: outsideSetback(input),
    hem: finish?.kind ?? null
  };
}
function panelOf(draft, id) {
  const found = draft.panels.find((p) => p.id === id);
  if (found !== void 0) return found;
  const known = draft.panels.map((p) => p.id);
  return fail("panel-unknown", [], `there is no panel "${id}"`, suggestion(id, known));
}
function add2(draft, panel2) {
  if (draft.panels.some((p) => p.id === panel2.id))
    return fail("panel-twice", [], `panel "${panel2.id}" is there already`);
  return { ...draft, panels: [...draft.panels, panel2] };
}
function change(draft, id, make) {
  const before = panelOf(draft, id);
  return { ...draft, panels: draft.panels.map((p) => p === before ? make(p) : p) };
}

// packages/core/src/families/bent-strip/describe.ts
var describe2 = {
  title: "strip with parallel bends",
  summary: "An angle, channel, Z, hat or any other strip bent across its width. x runs along the first leg, which stays put.",
  example: { width: 40, legs: [30, 60, 30], angles: [90, 90] }
};

// packages/core/src/families/bent-strip/params.ts
var MOST = 60;
var values = {
  width: value.size("along the bends", { min: 1 }),
  legs: value.list(
    "outside legs in order, one more than there are bends; over 90\xB0 to the outer tangent",
    value.size(""),
    [2, MOST + 1]
  ),
  angles: value.list("bent through from flat, positive up, -180 to 180", value.angle("", -180, 180), [1, MOST]),
  insideRadii: value.maybe(
    value.list("one for all bends, or one each; the sheet's when left out", value.size("", { min: 0, max: 1e3 }), [
      1,
      MOST
    ])
  )
};
function radiusAt({ insideRadii }, i, sheet) {
  return insideRadii?.[insideRadii.length === 1 ? 0 : i] ?? sheet.insideRadius;
}
function check(p) {
  const bends = p.angles.length;
  const radii = p.insideRadii?.length ?? 1;
  const many = (n2, one, more) => `${n2} ${n2 === 1 ? one : more}`;
  const counts = [
    ...p.legs.length === bends + 1 ? [] : [
      count2(
        ["legs"],
        `${many(p.legs.length, "leg", "legs")} given with ${many(bends, "angle", "angles")}`,
        `Give ${bends + 1} legs`
      )
    ],
    ...radii === 1 || radii === bends ? [] : [
      count2(
        ["insideRadii"],
        `${radii} radii given with ${many(bends, "angle", "angles")}`,
        `Give one, or ${bends}`
      )
    ],
    ...p.angles.flatMap(
      (a, i) => a === 0 ? [count2(["angles", i], "0 deg given", "Leave the bend out, or bend it")] : []
    )
  ];
  return counts;
}
function count2(path, why, fix) {
  return { path, why, fix };
}

// packages/core/src/families/bent-strip/build.ts
var leg = (i) => `leg-${i + 1}`;
function build(p, sheet) {
  return [
    panel(leg(0), rectangle(p.legs[0], p.width), [["legs", 0], ["width"]]),
    ...p.angles.map(
      (angle2, i) => flange(leg(i + 1), [leg(i), i === 0 ? "east" : "far"], {
        height: p.legs[i + 1],
        angle: angle2,
        insideRadius: radiusAt(p, i, sheet),
        by: ["legs", i + 1]
      })
    ),
    ...p.legs.flatMap((length, i) => legSites(p, length, i)),
    asked("width", p.width, "y"),
    ...squareLegs(p)
  ];
}
function legSites({ width }, length, i) {
  const seat2 = i === 0 ? { panel: leg(i), at: [length / 2, width / 2], up: [1, 0] } : { panel: leg(i), at: [width / 2, length / 2], up: [0, 1] };
  return [
    site(leg(i), [{ panel: leg(i), face: "marked" }], seat2),
    site(`${leg(i)}-back`, [{ panel: leg(i), face: "unmarked" }], seat2)
  ];
}
function squareLegs(p) {
  const square2 = (i) => Math.abs(p.angles[i] ?? 90) === 90;
  let heading = 0;
  return p.legs.flatMap((length, i) => {
    const axis = heading % 180 === 0 ? "x" : "z";
    const measurable = heading % 90 === 0 && square2(i - 1) && square2(i);
    heading += p.angles[i] ?? 0;
    const over = { panels: [leg(i)], bends: [leg(i), leg(i + 1)] };
    return measurable ? [asked(`legs[${i}]`, length, axis, over)] : [];
  });
}
var bentStrip = defineFamily({
  name: "bent-strip",
  values,
  check,
  build,
  describe: describe2
});

// packages/core/src/families/bracket/describe.ts
var describe3 = {
  title: "bracket with holes",
  summary: "An angle, a Z or a U to fix one thing to another, with a row of holes in its base and in its last leg. x runs from the free end of the base to the first bend, y along the bends.",
  example: { width: 60, base: 40, leg: 50, holes: { diameter: 5, count: 2, inset: 15 } }
};

// packages/core/src/families/limits.ts
var CORNER_GAP = 0.5;
function need(holds2, path, why) {
  return holds2 ? [] : [{ path, why }];
}
function setback(sheet, angle2 = 90, insideRadius = sheet.insideRadius) {
  return outsideSetback({ thickness: sheet.thickness, insideRadius, angle: angle2 });
}
function hemHeight(hem3, thickness) {
  return hem3 === null ? 0 : 2 * hemFold(hem3, thickness).insideRadius + thickness;
}

// packages/core/src/families/bracket/params.ts
var values2 = {
  profile: value.or(
    value.word("angle (one bend), z (two, the second back) or u (two the same way)", ["angle", "z", "u"]),
    "angle"
  ),
  width: value.size("along the bends"),
  base: value.size("outside leg that lies flat, from its free end to the first bend"),
  web: value.or(value.size("outside leg between the bends of a z or a u"), 40),
  leg: value.size("outside leg that ends the bracket"),
  angle: value.or(value.angle("every bend, bent through from flat", 1, 135), 90),
  holes: value.maybe(
    value.group("holes in a row across the base and the last leg; leave out for none", {
      diameter: value.size("of each hole", { max: 100 }),
      count: value.or(value.count("in each leg", 1, 40), 1),
      inset: value.size("from the free end of a leg to the middle of its holes"),
      edge: value.maybe(
        value.size("from the sides to the middle of the first and the last; evenly spread when left out")
      )
    })
  )
};
function across({ width }, { count: count3, edge }) {
  const first = edge ?? width / (2 * count3);
  if (count3 === 1) return [width / 2];
  const pitch = (width - 2 * first) / (count3 - 1);
  return Array.from({ length: count3 }, (_, i) => first + i * pitch);
}
function check2(p, sheet) {
  const { holes: holes3 } = p;
  if (holes3 === null) return [];
  const web = sheet.thickness;
  const half = holes3.diameter / 2;
  const middles = across(p, holes3);
  const pitch = middles.length < 2 ? Infinity : middles[1] - middles[0];
  const room = Math.min(p.base, p.leg) - setback(sheet, p.angle) - half - web;
  return [
    ...need(
      reaches(holes3.inset, half + web),
      ["holes", "inset"],
      "too little metal would be left at the end of the leg"
    ),
    ...need(reaches(room, holes3.inset), ["holes", "inset"], "too near the bend"),
    ...need(
      reaches(middles[0], half + web),
      holes3.edge === null ? ["holes", "diameter"] : ["holes", "edge"],
      "too little metal would be left at the sides"
    ),
    ...need(
      reaches(pitch, holes3.diameter + web),
      ["holes", "diameter"],
      "too little metal would be left between the holes"
    )
  ];
}
function derived(p, { thickness }) {
  if (p.profile !== "u" || p.angle !== 90) return [];
  return [
    derivedSize("insideWidth", p.web - 2 * thickness, "web", "between the inside faces of base and last leg")
  ];
}

// packages/core/src/families/bracket/build.ts
function build2(p, _sheet) {
  const { width, base, web, leg: leg2, angle: angle2 } = p;
  const back = p.profile === "z" ? -angle2 : angle2;
  const base0 = panel("base", rectangle(base, width), [["base"], ["width"]]);
  const legs = p.profile === "angle" ? [flange("leg", ["base", "east"], { height: leg2, angle: angle2, by: ["leg"] })] : [
    flange("web", ["base", "east"], { height: web, angle: angle2, by: ["web"] }),
    flange("leg", ["web", "far"], { height: leg2, angle: back, by: ["leg"] })
  ];
  return [base0, ...legs, ...holes(p), ...sites(p), asked("width", width, "y"), ...sizes(p)];
}
function holes(p) {
  const { holes: holes3 } = p;
  if (holes3 === null) return [];
  const { diameter, inset } = holes3;
  return across(p, holes3).flatMap((y) => [
    hole("base", { at: [inset, y], diameter }),
    hole("leg", { at: [y, p.leg - inset], diameter })
  ]);
}
function sites({ width, base, leg: leg2 }) {
  const seats = [
    { panel: "base", at: [base / 2, width / 2], up: [1, 0] },
    { panel: "leg", at: [width / 2, leg2 / 2], up: [0, 1] }
  ];
  return seats.flatMap((seat2) => [
    site(seat2.panel, [{ panel: seat2.panel, face: "marked" }], seat2),
    site(`${seat2.panel}-back`, [{ panel: seat2.panel, face: "unmarked" }], seat2)
  ]);
}
function sizes({ profile, angle: angle2, base, web, leg: leg2 }) {
  if (angle2 !== 90) return [];
  const over = (...panels) => ({ panels, bends: panels });
  const first = profile === "angle" ? "leg" : "web";
  return [
    asked("base", base, "x", { panels: ["base"], bends: [first] }),
    ...profile === "angle" ? [asked("leg", leg2, "z", over("leg"))] : [
      asked("web", web, "z", { panels: ["web"], bends: ["web", "leg"] }),
      asked("leg", leg2, "x", over("leg"))
    ]
  ];
}
var bracket = defineFamily({
  name: "bracket",
  values: values2,
  check: check2,
  build: build2,
  derived,
  describe: describe3
});

// packages/core/src/families/divider/describe.ts
var describe4 = {
  title: "divider for a box",
  summary: "A flat divider that stands in a box, with tabs at its ends to fasten it by and slots where others cross it. x runs along the length, y up.",
  example: { length: 316, height: 50, tabs: { length: 15 }, slots: { at: [106, 212], from: "top" } }
};

// packages/core/src/families/divider/params.ts
var USUAL_PLAY = 0.2;
var NIP_CLEARANCE = 0.3;
var LEAST_EDGE = 0.5;
var MOST_SLOTS = 50;
var values3 = {
  length: value.size("over the outside faces of the tabs, or from end to end"),
  height: value.size("of the plate"),
  tabs: value.maybe(
    value.group("tabs at both ends; leave out for none", { length: value.size("outside length of the tabs") })
  ),
  slots: value.maybe(
    value.group("slots for dividers that cross; leave out for none", {
      at: value.list("middle of each slot, from the west end, in order", value.size(""), [1, MOST_SLOTS]),
      from: value.or(
        value.word("top or bottom: the edge they are cut from; what crosses has the other", ["top", "bottom"]),
        "top"
      ),
      crossing: value.maybe(value.size("thickness of what crosses; one sheet when left out", { max: 20 })),
      clearance: value.or(value.size("play across a slot and below it", { min: 0, max: 10 }), USUAL_PLAY)
    })
  ),
  cornerNip: value.or(
    value.sizeOr(
      "how far the lower corners give way: auto clears the inside radius of the box, 0 for none",
      "auto",
      { min: 0 }
    ),
    "auto"
  )
};
function nipLeg({ cornerNip, tabs }, { insideRadius }) {
  if (cornerNip !== "auto") return cornerNip;
  return (tabs === null ? 2 - Math.SQRT2 : 1) * insideRadius + NIP_CLEARANCE;
}
function slotSize({ height }, slots, { thickness }) {
  return [(slots.crossing ?? thickness) + slots.clearance, (height + slots.clearance) / 2];
}
function check3(p, sheet) {
  const nip2 = nipLeg(p, sheet);
  const outer = [
    ...need(
      p.tabs !== null || reaches(p.length, 2 * (nip2 + LEAST_EDGE)),
      ["length"],
      "its ends take up more"
    ),
    ...need(reaches(p.height, nip2 + LEAST_EDGE), ["height"], "the cut at the lower corners reaches higher")
  ];
  return outer.length > 0 || p.slots === null ? outer : slotsFit(p, p.slots, sheet);
}
function slotsFit(p, slots, sheet) {
  const [width, depth] = slotSize(p, slots, sheet);
  const end2 = (p.tabs === null ? nipLeg(p, sheet) : setback(sheet) + sheet.thickness) + width / 2 + LEAST_EDGE;
  const apart3 = (i) => slots.at[i] - (slots.at[i - 1] ?? Number.NEGATIVE_INFINITY);
  return [
    ...need(
      reaches(p.height - depth, LEAST_EDGE),
      ["slots", "clearance"],
      "the slots would cut the divider in two"
    ),
    ...slots.at.flatMap((at, i) => [
      ...need(reaches(at, end2) && reaches(p.length - at, end2), ["slots", "at", i], "too near an end"),
      ...need(
        reaches(apart3(i), width + 2 * sheet.thickness),
        ["slots", "at", i],
        "too near the slot before it, or out of order"
      )
    ])
  ];
}

// packages/core/src/families/divider/build.ts
var ENDS = ["west", "east"];
function build3(p, sheet) {
  const { tabs } = p;
  const clear = nipLeg(p, sheet);
  return [
    panel("plate", slotted2(tabs === null ? nipped(p, clear) : rectangle(p.length, p.height), p, sheet), [
      ["length"],
      ["height"]
    ]),
    ...tabs === null ? [] : ENDS.map(
      (end2) => (
        // the tab's x runs up at the west end, down at the east end
        flange(`tab-${end2}`, ["plate", end2], {
          height: tabs.length,
          by: ["tabs", "length"],
          inset: end2 === "west" ? [clear, 0] : [0, clear]
        })
      )
    ),
    ...ENDS.map((end2) => endSite(p, end2, sheet)),
    ...p.slots === null ? [] : slotSites(p, p.slots, sheet),
    asked("length", p.length, "x"),
    asked("height", p.height, "y", { panels: ["plate"] }),
    ...tabs === null ? [] : [asked("tabs.length", tabs.length, "z", { panels: ["plate", "tab-west"] })]
  ];
}
var nipped = ({ length, height }, leg2) => nip(nip(rectangle(length, height), ["west", "south"], leg2, "nip-west"), ["south", "east"], leg2, "nip-east");
function slotted2(outline, p, sheet) {
  const { slots } = p;
  if (slots === null) return outline;
  const [width, depth] = slotSize(p, slots, sheet);
  const edge = slots.from === "top" ? "north" : "south";
  return slots.at.reduce(
    (o, at) => slot(o, edge, [at, slots.from === "top" ? p.height : 0], width, depth),
    outline
  );
}
function endSite(p, end2, { thickness }) {
  const middle = thickness / 2;
  if (p.tabs === null) {
    const out = end2 === "west" ? -1 : 1;
    const at = [end2 === "west" ? 0 : p.length, 0];
    return site(end2, [], { panel: "plate", looks: [out, 0], at, up: [0, 1], lift: middle }, p.length);
  }
  const panelId = `tab-${end2}`;
  const seat2 = end2 === "west" ? { panel: panelId, at: [0, middle], up: [1, 0] } : { panel: panelId, at: [p.height, middle], up: [-1, 0] };
  return site(end2, [{ panel: panelId, face: "unmarked" }], seat2, p.length);
}
function slotSites(p, { at, from }, { thickness }) {
  const looks = from === "top" ? { looks: [1, 0], lift: thickness / 2 } : { lift: -thickness / 2 };
  return at.map(
    (x, i) => site(`slot-${i + 1}`, [], { panel: "plate", at: [x, p.height / 2], up: [0, 1], ...looks })
  );
}
var divider = defineFamily({
  name: "divider",
  values: values3,
  check: check3,
  build: build3,
  describe: describe4
});

// packages/core/src/fold/corners/mitre.ts
function mitre(gap, relief = null) {
  return { name: "mitre", gap, meet: "mitre", root: "straight", relief, cuts: () => [] };
}

// packages/core/src/families/flared-pan/describe.ts
var describe5 = {
  title: "pan with walls that lean out",
  summary: "A bottom and four walls that lean out alike, the rim plain, hemmed or rolled round a wire; drip pans, scoops and trays that stack. x runs along the length.",
  example: {
    bottom: { length: 280, width: 180 },
    depth: 50,
    flare: 15,
    edge: { type: "wire", diameter: 3 }
  }
};

// packages/core/src/families/flared-pan/params.ts
var values4 = {
  bottom: value.group("of the bottom, between the lines where the outside faces of walls and bottom meet", {
    length: value.size("of the bottom, along x"),
    width: value.size("of the bottom, along y")
  }),
  depth: value.size("from under the bottom to the top of the finished rim"),
  flare: value.size("how far each wall leans out over the depth; 0 for upright walls", { min: 0 }),
  edge: value.or(
    value.choice("rim: plain, hem (folded in) or wire (rolled outwards)", "plain, hem or wire", {
      plain: {},
      hem: { length: value.size("finished width of the hem") },
      wire: {
        diameter: value.maybe(value.size("diameter of the wire", { max: 20 })),
        allowance: value.maybe(
          value.size("flat metal the roll takes; 2.5 wire diameters when left out", { max: 100 })
        )
      }
    }),
    { type: "plain" }
  ),
  corner: value.or(
    value.word("mitred, or folded (tabs of the north and south walls inside the other two)", [
      "mitred",
      "folded"
    ]),
    "mitred"
  ),
  tabs: value.or(
    value.group("corner tabs of folded corners", { length: value.size("outside length of the corner tabs") }),
    { length: 12 }
  ),
  gap: value.or(value.size("kept between neighbours at the corners", { min: 0, max: 20 }), CORNER_GAP)
};
function wireDiameter({ diameter, allowance }) {
  return diameter ?? (allowance ?? 0) / 2.5;
}
function panWall({ depth, flare, edge }, sheet) {
  const { thickness: T, insideRadius, rule } = sheet;
  const lean = Math.atan2(depth, flare);
  const [sin, cos] = [Math.sin(lean), flare === 0 ? 0 : Math.cos(lean)];
  const angle2 = flare === 0 ? 90 : degrees(lean);
  const setback2 = outsideSetback({ thickness: T, insideRadius, angle: angle2 });
  const round2 = edge.type === "hem" ? { radius: T, inside: T } : edge.type === "wire" ? { radius: wireDiameter(edge) / 2 + T, inside: -wireDiameter(edge) / 2 } : { radius: 0, inside: T };
  const leg2 = rule.compensates ? round2.radius + (depth - round2.radius - round2.inside * cos) / sin : depth / sin;
  const plain3 = edge.type === "plain";
  const reach2 = plain3 ? leg2 * cos : (leg2 - round2.radius) * cos - round2.inside * sin + round2.radius;
  const rimInset = plain3 || !rule.compensates ? 0 : round2.radius * cos;
  return { angle: angle2, leg: leg2, spread: leg2 * cos, reach: reach2, setback: setback2, rimInset };
}
function rimDepth({ edge }, thickness) {
  if (edge.type === "plain") return 0;
  return edge.type === "hem" ? edge.length : wireDiameter(edge) / 2 + thickness;
}
function tabRoom(p, wall, { thickness }) {
  const tilt = Math.atan(wall.spread / wall.leg);
  const raised = (2 * thickness + p.gap) / Math.tan(radians(wall.angle));
  return {
    low: wall.setback / Math.cos(tilt) + p.gap,
    high: (rimDepth(p, thickness) + raised + p.tabs.length * Math.sin(tilt)) / Math.cos(tilt) + p.gap,
    beside: Math.PI / 2 - 2 * tilt,
    off: wall.setback + p.gap
  };
}
function tabAngle({ angle: angle2 }) {
  return degrees(Math.acos(Math.cos(radians(angle2)) ** 2));
}
function tabSetback(wall, { thickness, insideRadius, rule }) {
  const across2 = outsideSetback({ thickness, insideRadius, angle: tabAngle(wall) });
  return rule.compensates ? across2 / Math.cos(Math.atan(wall.spread / wall.leg)) : 0;
}
function tabbedInset(p, wall, { thickness }) {
  return p.corner === "folded" ? (thickness + p.gap) / Math.sin(radians(wall.angle)) : 0;
}
function check4(p, sheet) {
  const edge = p.edge.type === "wire" ? wireFits(p.edge, sheet) : [];
  if (edge.length > 0) return edge;
  const rim3 = p.edge.type === "wire" ? wireDiameter(p.edge) / 2 + sheet.thickness : 0;
  return [
    ...need(reaches(p.depth, 2 * rim3), ["depth"], "the rim stands higher"),
    ...p.corner === "folded" ? tabsFit(p, panWall(p, sheet), sheet) : []
  ];
}
function wireFits(edge, { thickness }) {
  if (edge.diameter === null && edge.allowance === null)
    return [{ path: ["edge"], why: "a wired edge without a wire", fix: "Give diameter, or allowance" }];
  const diameter = wireDiameter(edge);
  const [least, most] = wireAllowanceRange(diameter, thickness);
  const takes = wireAllowance({ ...edge, diameter });
  const path = ["edge", edge.allowance === null ? "diameter" : "allowance"];
  return [
    ...need(reaches(takes, least), path, "the metal would not reach round the wire"),
    ...need(reaches(most, takes), path, "the metal would run on into the wall")
  ];
}
function tabsFit(p, wall, sheet) {
  const path = ["tabs", "length"];
  const { low, high, beside: beside2, off } = tabRoom(p, wall, sheet);
  const corner = Math.hypot(wall.leg, wall.spread);
  const outer = (p.tabs.length * Math.cos(beside2) + off) / Math.sin(beside2);
  return [
    ...need(
      beside2 > 0 && reaches(corner, Math.max(low, outer) + high + LEAST_METAL),
      path,
      "nothing would be left of it between bottom and rim"
    ),
    ...need(reaches(p.bottom.width / 2 - p.gap, p.tabs.length), path, "tabs from both sides would meet")
  ];
}
function derived2(p, sheet) {
  const { reach: reach2 } = panWall(p, sheet);
  return [
    derivedSize(
      "topLength",
      p.bottom.length + 2 * reach2,
      "bottom.length",
      "over the rim along the length, a roll round a wire included"
    ),
    derivedSize(
      "topWidth",
      p.bottom.width + 2 * reach2,
      "bottom.width",
      "over the rim along the width, a roll round a wire included"
    ),
    derivedSize(
      "insideHeight",
      p.depth - sheet.thickness,
      "depth",
      "from the inside of the bottom to the rim"
    )
  ];
}

// packages/core/src/families/flared-pan/build.ts
var SIDES = ["north", "south", "east", "west"];
var ENDS2 = ["west", "east"];
function build4(p, sheet) {
  const { length, width } = p.bottom;
  const wall = panWall(p, sheet);
  const folded = p.corner === "folded";
  const ends = (side) => tabbed(p, side) ? tabbedInset(p, wall, sheet) : 0;
  const middle = { panel: "bottom", at: [length / 2, width / 2], up: [0, 1] };
  return [
    panel("bottom", rectangle(length, width), [
      ["bottom", "length"],
      ["bottom", "width"]
    ]),
    ...SIDES.map(
      (side) => flange(side, ["bottom", side], {
        height: wall.leg,
        by: ["depth"],
        angle: wall.angle,
        spread: wall.spread,
        inset: [ends(side), ends(side)]
      })
    ),
    ...SIDES.flatMap((side) => rim(p, wall, side, sheet)),
    ...folded ? cornerTabs(p, wall, sheet) : [],
    corners(
      ["bottom", ...folded ? ["north", "south"] : []],
      folded ? foldedCorner(p, wall, sheet) : mitre(p.gap)
    ),
    site("floor", [{ panel: "bottom", face: "marked" }], middle),
    site("underside", [{ panel: "bottom", face: "unmarked" }], middle),
    site("rim", [], { ...middle, lift: p.depth - sheet.thickness }),
    asked("bottom.length", length, "x", { moulds: ["west", "east"] }),
    asked("bottom.width", width, "y", { moulds: ["south", "north"] }),
    asked("depth", p.depth, "z")
  ];
}
function rim(p, wall, side, sheet) {
  const { edge } = p;
  if (edge.type === "plain") return [];
  const short2 = wall.rimInset + (tabbed(p, side) ? tabSetback(wall, sheet) : 0);
  const inset = [short2, short2];
  if (edge.type === "hem")
    return [
      hem2(`hem-${side}`, [side, "far"], {
        type: "closed",
        length: edge.length,
        inset,
        by: ["edge", "length"]
      })
    ];
  const { allowance } = edge;
  return [wired(`roll-${side}`, [side, "far"], { diameter: wireDiameter(edge), allowance, inset })];
}
var tabbed = ({ corner }, side) => corner === "folded" && (side === "north" || side === "south");
function cornerTabs(p, wall, sheet) {
  const angle2 = tabAngle(wall);
  const { low, high } = tabRoom(p, wall, sheet);
  return ["north", "south"].flatMap(
    (side) => ENDS2.map((end2) => {
      const up = side === "north" === (end2 === "west");
      const inset = up ? [low, high] : [high, low];
      return flange(`tab-${side}-${end2}`, [side, end2], {
        height: p.tabs.length,
        angle: angle2,
        inset,
        by: ["tabs", "length"]
      });
    })
  );
}
function foldedCorner(p, wall, sheet) {
  const room = tabRoom(p, wall, sheet);
  const along3 = { t: Math.sin(room.beside), d: -Math.cos(room.beside), c: room.off };
  const cuts = ({ edge }) => edge === "" ? [along3] : [];
  return { name: "folded", gap: p.gap, meet: "none", root: "straight", relief: null, cuts };
}
var flaredPan = defineFamily({
  name: "flared-pan",
  values: values4,
  check: check4,
  build: build4,
  derived: derived2,
  describe: describe5
});

// packages/core/src/families/gusset-end/describe.ts
var describe6 = {
  title: "end with a gusset crown",
  summary: "A flat plate that closes a channel: straight sides to the shoulder, slopes to a flat crown that holds a handle, lower corners nipped to clear the bends it stands in. x runs along the width, y up.",
  example: { width: 197.6, shoulderHeight: 53, height: 120, crownWidth: 60, cornerNip: "auto" }
};

// packages/core/src/families/gusset-end/params.ts
var NIP_CLEARANCE2 = 0.3;
var LEAST_EDGE2 = 0.5;
var values5 = {
  width: value.size("over the straight sides"),
  shoulderHeight: value.size("from the lower edge to where the slopes start"),
  height: value.size("from the lower edge to the crown"),
  crownWidth: value.size("of the flat top"),
  cornerNip: value.or(
    value.sizeOr("leg of the 45\xB0 cut at the lower corners: auto clears the inside radius, 0 for none", "auto", {
      min: 0
    }),
    "auto"
  )
};
function nipLeg2({ cornerNip }, sheet) {
  return cornerNip === "auto" ? sheet.insideRadius + NIP_CLEARANCE2 : cornerNip;
}
function check5(p, sheet) {
  const { width, height, shoulderHeight, crownWidth, cornerNip } = p;
  const nip2 = nipLeg2(p, sheet);
  const fits = [reaches(width, 2 * (nip2 + LEAST_EDGE2)), reaches(shoulderHeight, nip2 + LEAST_EDGE2)];
  return [
    ...need(
      reaches(height, shoulderHeight),
      ["shoulderHeight"],
      (say) => `higher than the end of ${say.size(height)}`
    ),
    ...need(reaches(width, crownWidth), ["crownWidth"], (say) => `wider than the end of ${say.size(width)}`),
    ...cornerNip === "auto" ? [
      ...need(fits[0], ["width"], "the nips at its lower corners take up more"),
      ...need(fits[1], ["shoulderHeight"], "the nips at the lower corners reach higher")
    ] : need(fits[0] && fits[1], ["cornerNip"], "nothing would be left of the lower edge or the sides")
  ];
}

// packages/core/src/families/gusset-end/build.ts
function build5(p, sheet) {
  const nipped2 = nipLeg2(p, sheet);
  const outline = nip(
    nip(plate(p), ["west", "south"], nipped2, "nip-west"),
    ["south", "east"],
    nipped2,
    "nip-east"
  );
  return [
    panel("plate", outline),
    site(
      "rim",
      [{ panel: "plate", face: "unmarked" }],
      { panel: "plate", at: [p.width / 2, 0], up: [0, 1] },
      p.width
    ),
    site("crown", [{ panel: "plate", face: "marked" }], {
      panel: "plate",
      at: [p.width / 2, p.height],
      up: [0, 1]
    }),
    asked("width", p.width, "x"),
    asked("height", p.height, "y"),
    asked("crownWidth", p.crownWidth, "x", { edges: [["plate", "crown"]] }),
    asked("shoulderHeight", p.shoulderHeight, "y", {
      edges: [
        ["plate", "south"],
        ["plate", "west"]
      ]
    }),
    ...nipped2 > 0 ? [asked("cornerNip", nipped2, "x", { edges: [["plate", "nip-east"]] })] : []
  ];
}
function plate({ width, shoulderHeight, height, crownWidth }) {
  const edges = [
    { name: "south", from: [0, 0] },
    { name: "east", from: [width, 0] },
    { name: "slope-east", from: [width, shoulderHeight] },
    { name: "crown", from: [(width + crownWidth) / 2, height] },
    { name: "slope-west", from: [(width - crownWidth) / 2, height] },
    { name: "west", from: [0, shoulderHeight] }
  ];
  return edges.filter((e, i) => distance(e.from, edges[(i + 1) % edges.length].from) > 0);
}
var gussetEnd = defineFamily({
  name: "gusset-end",
  values: values5,
  check: check5,
  build: build5,
  describe: describe6
});

// packages/core/src/fold/corners/square.ts
function square(gap, relief = null) {
  return {
    name: "square",
    gap,
    meet: "butt",
    root: "straight",
    relief,
    cuts: ({ start, edge, thickness }) => [
      { t: 1, d: 0, c: edge === "" ? Math.max(start, roomOfTab(start, thickness, gap)) : start }
    ]
  };
}
var roomOfTab = (start, thickness, gap) => start === 0 ? gap : thickness + gap;

// packages/core/src/families/handle/describe.ts
var describe7 = {
  title: "handle",
  summary: "A strip with hemmed sides folded up and a tab folded down at each end, to be fixed to the crowns of two ends. x runs along the span.",
  example: {
    span: 398,
    width: 32,
    sideDepth: 14,
    hem: { type: "closed", length: 8 },
    tabs: { length: 25 }
  }
};

// packages/core/src/families/handle/params.ts
var values6 = {
  span: value.size("over the outside faces of the folded tabs"),
  width: value.size("over the outside faces of the sides"),
  sideDepth: value.size("of the sides, over the hem"),
  hem: value.hem("hem along the edge of both sides, folded in; leave out for none"),
  tabs: value.group("tabs at both ends, folded down", {
    length: value.size("outside length of the tabs"),
    gap: value.or(value.size("kept between the tabs and the sides at the corners", { min: 0, max: 20 }), CORNER_GAP)
  })
};
function derived3({ span }, { thickness }) {
  return [derivedSize("insideSpan", span - 2 * thickness, "span", "between the inside faces of the tabs")];
}

// packages/core/src/families/handle/build.ts
var SIDES2 = ["north", "south"];
var ENDS3 = ["west", "east"];
function build6(p, _sheet) {
  return [
    panel("base", rectangle(p.span, p.width), [["span"], ["width"]]),
    ...SIDES2.map((side) => flange(side, ["base", side], { height: p.sideDepth, by: ["sideDepth"] })),
    ...SIDES2.flatMap(
      (side) => p.hem === null ? [] : [hem2(`hem-${side}`, [side, "far"], { ...p.hem, by: ["hem", "length"] })]
    ),
    ...ENDS3.map(
      (end2) => flange(`tab-${end2}`, ["base", end2], { height: p.tabs.length, angle: -90, by: ["tabs", "length"] })
    ),
    corners(["base"], square(p.tabs.gap)),
    // the outside of a tab folded down is its marked face; it hangs, so upright is back towards its bend
    ...ENDS3.map(
      (end2) => site(end2, [{ panel: `tab-${end2}`, face: "marked" }], {
        panel: `tab-${end2}`,
        at: [p.width / 2, 0],
        up: [0, -1]
      })
    ),
    asked("span", p.span, "x"),
    asked("width", p.width, "y"),
    asked("sideDepth", p.sideDepth, "z", { panels: ["base", "north", "hem-north"] }),
    asked("tabs.length", p.tabs.length, "z", { panels: ["base", "tab-west"] }),
    ...p.hem === null ? [] : [asked("hem.length", p.hem.length, "z", { panels: ["hem-north"] })]
  ];
}
var handle = defineFamily({
  name: "handle",
  values: values6,
  build: build6,
  derived: derived3,
  describe: describe7
});

// packages/core/src/fold/corners/relief.ts
var EIGHTH = 25.4 / 8;
function reliefHole(thickness, insideRadius) {
  const least = thickness <= 0.064 * 25.4 ? EIGHTH : 1.5 * EIGHTH;
  return { kind: "hole", diameter: Math.max(2 * insideRadius, least) };
}
function reliefSlot(thickness) {
  return { kind: "slot", depth: Math.max(thickness, 1) };
}

// packages/core/src/fold/corners/slant.ts
function slant(gap, room = 0, relief = null) {
  return {
    name: "slant",
    gap,
    meet: "mitre",
    root: "apex",
    relief,
    cuts: ({ start, tangent, angle: angle2, meets }) => {
      if (meets) return [{ t: 1, d: 0, c: start }];
      const from = angle2 > 90 ? Math.max(start, room) : start;
      return [{ t: 1, d: -1, c: from - tangent }];
    }
  };
}

// packages/core/src/families/hemmed-channel/describe.ts
var describe8 = {
  title: "channel with hemmed sides",
  summary: "The body of a carrier or a tray: a base, two sides with hemmed rims, and a ring of tabs at each end for an end to stand against. x runs along the length.",
  example: {
    length: 400,
    width: 200,
    height: 55,
    hem: { type: "closed", length: 15 },
    endTabs: { length: 18 }
  }
};

// packages/core/src/families/hemmed-channel/params.ts
var SITES = ["base", "north", "south"];
var STAND_OFF = 0.7;
var LEAST_REST = 1;
var values7 = {
  length: value.size("between the outside faces of the folded end tabs"),
  width: value.size("over the outside faces of the sides"),
  height: value.size("of the sides, over the hem"),
  hem: value.hem("hem along the rim of both sides, folded in; leave out for none"),
  endTabs: value.maybe(
    value.group("tabs at both ends; leave out for open ends", {
      length: value.size("outside length of the tabs"),
      on: value.or(value.list("which panels carry tabs: base, north, south", value.word("", SITES), [1, 3]), SITES),
      notch: value.or(
        value.word(
          "slant (45\xB0 or the mitre between tabs), square, or relief (slant with a round hole at the root)",
          ["slant", "square", "relief"]
        ),
        "slant"
      ),
      gap: value.or(value.size("kept between neighbouring tabs", { min: 0, max: 20 }), CORNER_GAP),
      room: value.maybe(
        value.size("thickness of what will stand against the tabs; one sheet when left out", { min: 0, max: 20 })
      )
    })
  )
};
function check6({ width, height, endTabs: endTabs2 }) {
  if (endTabs2 === null) return [];
  const { length, on, gap } = endTabs2;
  const path = ["endTabs", "length"];
  const across2 = on.filter((s) => s !== "base").length * length + gap + LEAST_REST;
  return [
    ...need(
      !on.includes("north") && !on.includes("south") || reaches(width, across2),
      path,
      (say) => `the tabs of both sides would meet across a width of ${say.size(width)}`
    ),
    ...need(
      !on.includes("base") || reaches(height, length),
      path,
      (say) => `the tab of the base would stand over the sides of ${say.size(height)}`
    )
  ];
}
function hemStart({ room }, thickness) {
  return thickness + (room ?? thickness) + STAND_OFF;
}
function derived4(p, { thickness, insideRadius }) {
  const tabs = p.endTabs === null ? 0 : 2 * thickness;
  const seat2 = p.width - 2 * (thickness + insideRadius);
  return [
    derivedSize("insideLength", p.length - tabs, "length", "between the inside faces of the end tabs"),
    derivedSize("insideWidth", p.width - 2 * thickness, "width", "between the inside faces of the sides"),
    derivedSize("insideHeight", p.height - thickness, "height", "from the inside of the base to the rim"),
    derivedSize("rimHeight", p.height, "height", "from the outside of the base to the rim"),
    derivedSize(
      "clearHeight",
      p.height - thickness - (p.hem?.length ?? 0),
      "height",
      "from the inside of the base to the lower edge of the hem"
    ),
    derivedSize(
      "seatWidth",
      seat2,
      "width",
      "between the bends of the sides, where an end lies flat against the tabs"
    )
  ];
}

// packages/core/src/families/hemmed-channel/build.ts
var SIDES3 = ["north", "south"];
var ENDS4 = ["west", "east"];
function build7(p, sheet) {
  return [
    panel("base", rectangle(p.length, p.width), [["length"], ["width"]]),
    ...SIDES3.map((side) => flange(side, ["base", side], { height: p.height, by: ["height"] })),
    ...SIDES3.flatMap(
      (side) => p.hem === null ? [] : [hem2(`hem-${side}`, [side, "far"], { ...p.hem, by: ["hem", "length"] })]
    ),
    ...p.endTabs === null ? ENDS4.map((end2) => openEnd(p, end2, sheet)) : [...endTabs(p.endTabs, sheet), ...ENDS4.map((end2) => endSite2(p, p.endTabs, end2, sheet))],
    site("floor", [{ panel: "base", face: "marked" }], {
      panel: "base",
      at: [p.length / 2, p.width / 2],
      up: [0, 1]
    }),
    site("underside", [{ panel: "base", face: "unmarked" }], {
      panel: "base",
      at: [p.length / 2, p.width / 2],
      up: [0, 1]
    }),
    asked("length", p.length, "x"),
    asked("width", p.width, "y", { panels: ["base", ...SIDES3] }),
    asked("height", p.height, "z", { panels: ["base", "north", "hem-north"] }),
    ...p.hem === null ? [] : [asked("hem.length", p.hem.length, "z", { panels: ["hem-north"] })]
  ];
}
function endTabs(tabs, sheet) {
  const spec = { height: tabs.length, by: ["endTabs", "length"] };
  const on = (site2) => tabs.on.includes(site2);
  return [
    ...ENDS4.flatMap((end2) => on("base") ? [flange(`tab-${end2}`, ["base", end2], spec)] : []),
    ...SIDES3.filter(on).flatMap((side) => ENDS4.map((end2) => flange(`tab-${side}-${end2}`, [side, end2], spec))),
    corners(["base", ...SIDES3], notch(tabs, sheet)),
    ...on("base") ? [asked("endTabs.length", tabs.length, "z", { panels: ["base", "tab-west"] })] : []
  ];
}
function endSite2(p, { on }, end2, { thickness }) {
  const sides = SIDES3.filter((side) => on.includes(side));
  const ids = [...on.includes("base") ? [`tab-${end2}`] : [], ...sides.map((side) => `tab-${side}-${end2}`)];
  const faces = ids.map((panel2) => ({ panel: panel2, face: "marked" }));
  return site(end2, faces, seatOn(ids[0], p, end2, thickness), p.width - 2 * thickness);
}
function openEnd(p, end2, { thickness }) {
  const faces = ["base", ...SIDES3].map((id) => ({ panel: id, face: "marked" }));
  const out = end2 === "west" ? -1 : 1;
  const at = [end2 === "west" ? 0 : p.length, p.width / 2];
  return site(end2, faces, { panel: "base", at, up: [out, 0] }, p.width - 2 * thickness);
}
function seatOn(tab, { width, height }, end2, thickness) {
  const middle = width / 2;
  if (tab === `tab-${end2}`) return { panel: tab, at: [middle, thickness], up: [0, 1] };
  const up = tab.startsWith("tab-north") === (end2 === "west");
  return up ? { panel: tab, at: [thickness, middle], up: [1, 0] } : { panel: tab, at: [height - thickness, middle], up: [-1, 0] };
}
function notch(tabs, { thickness, insideRadius }) {
  const relief = tabs.notch === "relief" ? reliefHole(thickness, insideRadius) : null;
  if (tabs.notch === "square") return square(tabs.gap);
  return slant(tabs.gap, hemStart(tabs, thickness), relief);
}
var hemmedChannel = defineFamily({
  name: "hemmed-channel",
  values: values7,
  check: check6,
  build: build7,
  derived: derived4,
  describe: describe8
});

// packages/core/src/fold/corners/lap.ts
function lap(over, gap, relief = null) {
  return {
    name: "lap",
    gap,
    meet: "none",
    root: "straight",
    relief,
    cuts: ({ edge, thickness }) => [{ t: 1, d: 0, c: over.includes(edge) ? 0 : thickness + gap }]
  };
}

// packages/core/src/families/lid/describe.ts
var describe9 = {
  title: "lid with a skirt",
  summary: "A plate with a skirt that goes over a box, or drops into it and hangs by a ledge. Drawn upside down: the skirt stands up from the plate. x runs along the length.",
  example: { length: 320, width: 220, depth: 25, hem: { type: "closed", length: 8 } }
};

// packages/core/src/families/lid/params.ts
var USUAL_PLAY2 = 0.3;
var USUAL_LEDGE = 10;
var values8 = {
  length: value.size("of what it covers, outside; of the opening it drops into, inside"),
  width: value.size("of what it covers, outside; of the opening it drops into, inside"),
  depth: value.size("from the top of the plate to the edge of the skirt"),
  fit: value.or(
    value.word("over (the skirt outside of the box) or inside (the skirt in the opening, the plate on its rim)", [
      "over",
      "inside"
    ]),
    "over"
  ),
  clearance: value.or(
    value.sizeOr(
      "play between skirt and box on every side: auto clears the inside of the bend and the hem",
      "auto",
      {
        min: 0,
        max: 20
      }
    ),
    "auto"
  ),
  hem: value.hem("hem on the edge of the skirt, folded in; leave out for none"),
  ledge: value.or(
    value.size("how far the plate of a lid that drops in reaches past its skirt", { max: 200 }),
    USUAL_LEDGE
  ),
  corner: value.or(
    value.word("of a lid that goes over: open, or lap (north and south skirts cover the ends of the others)", [
      "open",
      "lap"
    ]),
    "open"
  ),
  gap: value.or(value.size("kept between neighbours at the corners", { min: 0, max: 20 }), CORNER_GAP)
};
function play({ clearance, fit, hem: hem3 }, { insideRadius, thickness }) {
  if (clearance !== "auto") return clearance;
  return Math.max(insideRadius, fit === "over" ? hemHeight(hem3, thickness) : 0) + USUAL_PLAY2;
}
function lidSizes(p, sheet) {
  const { thickness } = sheet;
  const across2 = p.fit === "over" ? 2 * (play(p, sheet) + thickness) : 2 * (p.ledge - play(p, sheet));
  const skirt = p.fit === "over" ? p.depth : p.depth - thickness;
  return { length: p.length + across2, width: p.width + across2, skirt };
}
var ledgeLeg = ({ ledge }, { thickness }) => ledge + thickness;
function derived5(p, sheet) {
  const { length, width } = lidSizes(p, sheet);
  const inside2 = (outside) => p.fit === "over" ? outside - 2 * sheet.thickness : outside - 2 * ledgeLeg(p, sheet);
  const lower = (p.fit === "over" ? 1 : 2) * sheet.thickness;
  return [
    derivedSize("outsideLength", length, "length", "over the plate, along x"),
    derivedSize("outsideWidth", width, "width", "over the plate, along y"),
    derivedSize("insideLength", inside2(length), "length", "between the skirts, along x"),
    derivedSize("insideWidth", inside2(width), "width", "between the skirts, along y"),
    derivedSize("insideHeight", p.depth - lower, "depth", "of the skirt below the plate, or below the ledge")
  ];
}

// packages/core/src/families/lid/build.ts
var SIDES4 = ["north", "south", "east", "west"];
function build8(p, sheet) {
  const { length, width } = lidSizes(p, sheet);
  const middle = { panel: "plate", at: [length / 2, width / 2], up: [0, 1] };
  const over = p.fit === "over";
  return [
    panel("plate", rectangle(length, width), [["length"], ["width"]]),
    ...over ? covering(p, sheet) : dropping(p, sheet),
    // it lies on the rim with the inside of its plate, or with its ledge
    site(
      "skirt",
      SIDES4.map((side) => ({ panel: side, face: over ? "marked" : "unmarked" })),
      { ...middle, looks: "marked", lift: over ? 0 : sheet.thickness }
    ),
    site("top", [{ panel: "plate", face: "unmarked" }], middle),
    asked("depth", p.depth, "z")
  ];
}
function covering(p, sheet) {
  const { skirt } = lidSizes(p, sheet);
  const twice = 2 * play(p, sheet);
  return [
    ...SIDES4.map((side) => flange(side, ["plate", side], { height: skirt, by: ["depth"] })),
    ...SIDES4.flatMap(
      (side) => p.hem === null ? [] : [hem2(`hem-${side}`, [side, "far"], { ...p.hem, by: ["hem", "length"] })]
    ),
    corners(["plate"], p.corner === "lap" ? lap(["north", "south"], p.gap) : square(p.gap)),
    asked("length + 2 clearance", p.length + twice, "x", { between: ["west", "east"] }),
    asked("width + 2 clearance", p.width + twice, "y", { between: ["south", "north"] })
  ];
}
function dropping(p, sheet) {
  const { skirt } = lidSizes(p, sheet);
  const twice = 2 * play(p, sheet);
  const fold2 = { type: "closed", length: ledgeLeg(p, sheet), by: ["ledge"] };
  const skirts = { panels: [...SIDES4], bends: [] };
  return [
    ...SIDES4.map((side) => hem2(`ledge-${side}`, ["plate", side], fold2)),
    ...SIDES4.map(
      (side) => flange(side, [`ledge-${side}`, "far"], { height: skirt, angle: -90, by: ["depth"] })
    ),
    ...SIDES4.flatMap(
      (side) => p.hem === null ? [] : [hem2(`hem-${side}`, [side, "far"], { ...p.hem, by: ["hem", "length"] })]
    ),
    corners(["plate"], mitre(p.gap)),
    asked("length - 2 clearance", p.length - twice, "x", skirts),
    asked("width - 2 clearance", p.width - twice, "y", skirts)
  ];
}
var lid = defineFamily({
  name: "lid",
  values: values8,
  build: build8,
  derived: derived5,
  describe: describe9
});

// packages/core/src/families/open-box/describe.ts
var describe10 = {
  title: "box open at the top",
  summary: "A base and four walls, each with its own height and hem if wanted; seed trays, bins and drawers. x runs along the length, west and east walls stand at its ends.",
  example: { length: 320, width: 220, height: 60, corner: "tabbed", hem: { type: "closed", length: 10 } }
};

// packages/core/src/families/open-box/params.ts
var SIDES5 = ["north", "south", "east", "west"];
var values9 = {
  length: value.size("between the west and east walls, outside or inside as `dimensions` says"),
  width: value.size("between the south and north walls"),
  height: value.size("of all walls, over what is folded at the rim"),
  heights: value.maybe(
    value.group("walls that differ: north, south, east, west", {
      north: value.maybe(value.size("height of the north wall")),
      south: value.maybe(value.size("height of the south wall")),
      east: value.maybe(value.size("height of the east wall")),
      west: value.maybe(value.size("height of the west wall"))
    })
  ),
  dimensions: value.or(
    value.word("outside or inside: how length, width and heights are meant", ["outside", "inside"]),
    "outside"
  ),
  corner: value.or(
    value.word(
      "open (square notch), lap (north and south walls cover the ends of the others), tabbed (tabs behind the west and east walls)",
      ["open", "lap", "tabbed"]
    ),
    "open"
  ),
  tabs: value.or(
    value.group("corner tabs of a tabbed box", { length: value.size("outside length of the corner tabs") }),
    { length: 15 }
  ),
  hem: value.hem("hem on every rim, folded in: type, length, gap"),
  hems: value.maybe(
    value.group("a hem for each wall on its own; walls left out have none", {
      north: value.hem(""),
      south: value.hem(""),
      east: value.hem(""),
      west: value.hem("")
    })
  ),
  flangeReturn: value.maybe(value.size("flange folded in at the rim of every wall; hems then sit on its edge")),
  relief: value.or(value.word("none, hole or slot at the root of the corners", ["none", "hole", "slot"]), "none"),
  gap: value.or(value.size("kept between neighbours at the corners", { min: 0, max: 20 }), CORNER_GAP)
};
function boxSizes(p, { thickness }) {
  const [across2, up] = p.dimensions === "inside" ? [2 * thickness, thickness] : [0, 0];
  return {
    length: p.length + across2,
    width: p.width + across2,
    wall: (side) => ({
      height: (p.heights?.[side] ?? p.height) + up,
      hem: p.hems === null ? p.hem : p.hems[side]
    })
  };
}
function rimDepth2(p, side, sheet) {
  const { hem: hem3 } = boxSizes(p, sheet).wall(side);
  return (p.flangeReturn === null ? 0 : setback(sheet)) + (hem3 === null ? 0 : hem3.length);
}
function check7(p, sheet) {
  const { length, width } = boxSizes(p, sheet);
  const folded = Math.max(...SIDES5.map((side) => hemRadius(p, side, sheet)));
  return [
    ...need(
      p.flangeReturn === null || reaches(Math.min(length, width) / 2 - p.gap - folded - LEAST_METAL, p.flangeReturn),
      ["flangeReturn"],
      "returns from both sides would meet"
    ),
    ...need(
      p.corner !== "tabbed" || reaches(width / 2 - p.gap, p.tabs.length),
      ["tabs", "length"],
      (say) => `tabs from both sides would meet across a width of ${say.size(width)}`
    )
  ];
}
function hemRadius(p, side, sheet) {
  const { hem: hem3 } = boxSizes(p, sheet).wall(side);
  return hem3 === null ? 0 : hemFold(hem3, sheet.thickness).insideRadius;
}
function reliefOf({ relief }, { thickness, insideRadius }) {
  if (relief === "hole") return reliefHole(thickness, insideRadius);
  return relief === "slot" ? reliefSlot(thickness) : null;
}
function derived6(p, sheet) {
  const box = boxSizes(p, sheet);
  const t = sheet.thickness;
  const { height } = box.wall("north");
  const follows2 = (p.heights?.north ?? null) === null ? "height" : "heights.north";
  return [
    derivedSize(
      "insideLength",
      box.length - 2 * t,
      "length",
      "between the inside faces of the west and east walls"
    ),
    derivedSize(
      "insideWidth",
      box.width - 2 * t,
      "width",
      "between the inside faces of the south and north walls"
    ),
    derivedSize(
      "insideHeight",
      height - t,
      follows2,
      "from the inside of the base to the rim of the north wall"
    ),
    derivedSize("outsideLength", box.length, "length", "over the west and east walls"),
    derivedSize("outsideWidth", box.width, "width", "over the south and north walls"),
    derivedSize("rimHeight", height, follows2, "from the outside of the base to the rim of the north wall")
  ];
}

// packages/core/src/families/open-box/build.ts
var ENDS5 = ["west", "east"];
function build9(p, sheet) {
  const box = boxSizes(p, sheet);
  const tabbed2 = p.corner === "tabbed";
  const inset = (side) => tabbed2 && (side === "north" || side === "south") ? [sheet.thickness + p.gap, sheet.thickness + p.gap] : [0, 0];
  return [
    panel("base", rectangle(box.length, box.width), [["length"], ["width"]]),
    ...SIDES5.map(
      (side) => flange(side, ["base", side], {
        height: box.wall(side).height,
        inset: inset(side),
        by: heightOf(p, side)
      })
    ),
    ...SIDES5.flatMap((side) => rim2(p, side, sheet)),
    ...tabbed2 ? cornerTabs2(p, sheet) : [],
    corners(["base", ...tabbed2 ? ["north", "south"] : []], cornerStyle(p, sheet)),
    ...sites2(p, sheet),
    asked("length", box.length, "x", { panels: ["base", "east", "west"] }),
    asked("width", box.width, "y", { panels: ["base", "north", "south"] }),
    ...SIDES5.filter((s) => s === "north" || p.heights !== null).map(
      (side) => asked(side === "north" ? "height" : `heights.${side}`, box.wall(side).height, "z", {
        panels: ["base", side, `return-${side}`, ...p.flangeReturn === null ? [`hem-${side}`] : []]
      })
    ),
    ...rimSizes(p, sheet),
    ...tabbed2 ? [asked("tabs.length", p.tabs.length, "y", { panels: ["north", "tab-north-west"] })] : []
  ];
}
function rimSizes(p, sheet) {
  const side = SIDES5.find((s) => boxSizes(p, sheet).wall(s).hem !== null);
  const hemmed = side === void 0 ? null : boxSizes(p, sheet).wall(side).hem;
  const across2 = side === "west" || side === "east" ? "x" : "y";
  const name = p.hems === null ? "hem.length" : `hems.${side}.length`;
  return [
    ...p.flangeReturn === null ? [] : [asked("flangeReturn", p.flangeReturn, "y", { panels: ["north", "return-north", "hem-north"] })],
    ...hemmed === null ? [] : [asked(name, hemmed.length, p.flangeReturn === null ? "z" : across2, { panels: [`hem-${side}`] })]
  ];
}
function rim2(p, side, sheet) {
  const spec = boxSizes(p, sheet).wall(side).hem;
  const fold2 = p.flangeReturn === null ? [] : [flange(`return-${side}`, [side, "far"], { height: p.flangeReturn, by: ["flangeReturn"] })];
  const on = p.flangeReturn === null ? side : `return-${side}`;
  return [
    ...fold2,
    ...spec === null ? [] : [hem2(`hem-${side}`, [on, "far"], { ...spec, by: hemOf(p, side) })]
  ];
}
function cornerTabs2(p, sheet) {
  const box = boxSizes(p, sheet);
  return ["north", "south"].flatMap(
    (side) => ENDS5.map((end2) => {
      const { height } = box.wall(side);
      const over = height - (box.wall(end2).height - rimDepth2(p, end2, sheet));
      const top = Math.max(over > 0 || rimDepth2(p, end2, sheet) > 0 ? over + p.gap : 0, 0);
      const up = side === "north" === (end2 === "west");
      return flange(`tab-${side}-${end2}`, [side, end2], {
        height: p.tabs.length,
        by: ["tabs", "length"],
        inset: up ? [0, top] : [top, 0]
      });
    })
  );
}
var heightOf = (p, side) => (p.heights?.[side] ?? null) === null ? ["height"] : ["heights", side];
var hemOf = (p, side) => p.hems === null ? ["hem", "length"] : ["hems", side, "length"];
function sites2(p, sheet) {
  const box = boxSizes(p, sheet);
  const middle = [box.length / 2, box.width / 2];
  const across2 = (side) => side === "north" || side === "south" ? middle[0] : middle[1];
  const inside2 = (side) => 2 * (side === "north" || side === "south" ? middle[1] : middle[0]);
  return [
    ...SIDES5.flatMap((side) => [
      site(
        side,
        [{ panel: side, face: "marked" }],
        { panel: side, at: [across2(side), sheet.thickness], up: [0, 1] },
        inside2(side) - 2 * sheet.thickness
      ),
      site(`${side}-out`, [{ panel: side, face: "unmarked" }], {
        panel: side,
        at: [across2(side), box.wall(side).height],
        up: [0, 1]
      })
    ]),
    site("floor", [{ panel: "base", face: "marked" }], { panel: "base", at: middle, up: [0, 1] }),
    site("underside", [{ panel: "base", face: "unmarked" }], { panel: "base", at: middle, up: [0, 1] }),
    site("rim", [], {
      panel: "base",
      at: middle,
      up: [0, 1],
      lift: box.wall("north").height - sheet.thickness
    })
  ];
}
function cornerStyle(p, sheet) {
  const relief = reliefOf(p, sheet);
  return p.corner === "lap" ? lap(["north", "south"], p.gap, relief) : square(p.gap, relief);
}
var openBox = defineFamily({
  name: "open-box",
  values: values9,
  check: check7,
  build: build9,
  derived: derived6,
  describe: describe10
});

// packages/core/src/families/tote-end/describe.ts
var describe11 = {
  title: "end with tabs of its own",
  summary: "Closes a channel that has no tabs: a plate with straight sides, sloped shoulders and a crown, tabs folded in along its foot and sides, and a hole for a bar to carry it by. x runs along the width, y up.",
  example: {
    width: 197.6,
    shoulderHeight: 100,
    height: 180,
    crownWidth: 70,
    tabs: { length: 16 },
    bar: { diameter: 26, below: 30 }
  }
};

// packages/core/src/families/tote-end/params.ts
var RIM = 3;
var values10 = {
  width: value.size("over the outside faces of the side tabs"),
  shoulderHeight: value.size("from the lower edge to where the slopes start; the side tabs are as high"),
  height: value.size("from the lower edge to the crown"),
  crownWidth: value.size("of the flat top"),
  tabs: value.group("tabs along the foot and the sides", {
    length: value.size("outside length of the tabs"),
    gap: value.or(value.size("kept between neighbouring tabs", { min: 0, max: 20 }), CORNER_GAP)
  }),
  bar: value.maybe(
    value.group("hole for a round bar; leave out for none", {
      diameter: value.size("of the hole", { max: 100 }),
      below: value.size("from the crown to the middle of the hole")
    })
  )
};
function check8(p, sheet) {
  return [
    ...need(
      reaches(p.height, p.shoulderHeight),
      ["shoulderHeight"],
      (say) => `higher than the end of ${say.size(p.height)}`
    ),
    ...need(
      reaches(p.width - 2 * setback(sheet), p.crownWidth),
      ["crownWidth"],
      (say) => `the bends leave no room for it on an end of ${say.size(p.width)}`
    ),
    ...p.bar === null ? [] : barFits(p, p.bar)
  ];
}
function barFits(p, { diameter, below }) {
  const around = diameter / 2 + RIM;
  const [run, rise] = [(p.width - p.crownWidth) / 2, p.height - p.shoulderHeight];
  const long = Math.hypot(run, rise);
  const aside = rise === 0 ? p.width / 2 : p.crownWidth / 2 * (rise / long) + below * (run / long);
  return [
    ...need(
      reaches(aside, around) && reaches(p.height, below + around),
      ["bar", "diameter"],
      "too little metal would be left beside it"
    ),
    ...need(reaches(below, around), ["bar", "below"], "too little metal would be left above the hole")
  ];
}

// packages/core/src/families/tote-end/build.ts
var TABS = ["south", "west", "east"];
function build10(p, _sheet) {
  const crown = [p.width / 2, p.height];
  return [
    panel("plate", plate2(p), [["width"], ["height"]]),
    ...TABS.map(
      (side) => flange(`tab-${side}`, ["plate", side], { height: p.tabs.length, by: ["tabs", "length"] })
    ),
    corners(["plate"], square(p.tabs.gap)),
    ...p.bar === null ? [] : [hole("plate", { at: [crown[0], crown[1] - p.bar.below], diameter: p.bar.diameter })],
    // it stands on its lower tab, the outside of the plate at the end of what it closes
    site(
      "rim",
      TABS.map((side) => ({ panel: `tab-${side}`, face: "unmarked" })),
      { panel: "tab-south", at: [p.width / 2, 0], up: [0, -1] },
      p.width
    ),
    site("crown", [{ panel: "plate", face: "marked" }], { panel: "plate", at: crown, up: [0, 1] }),
    asked("width", p.width, "x"),
    asked("height", p.height, "y"),
    asked("crownWidth", p.crownWidth, "x", { edges: [["plate", "crown"]] }),
    asked("tabs.length", p.tabs.length, "z", { panels: ["plate", "tab-south"] })
  ];
}
function plate2({ width, shoulderHeight, height, crownWidth }) {
  const points = [
    [0, 0],
    [width, 0],
    [width, shoulderHeight],
    [(width + crownWidth) / 2, height],
    [(width - crownWidth) / 2, height],
    [0, shoulderHeight]
  ];
  const edges = polygon(points, ["south", "east", "slope-east", "crown", "slope-west", "west"]);
  return edges.filter((e, i) => distance(e.from, points[(i + 1) % points.length]) > 0);
}
var toteEnd = defineFamily({
  name: "tote-end",
  values: values10,
  check: check8,
  build: build10,
  describe: describe11
});

// packages/core/src/families/index.ts
var FAMILIES = frozen([
  hemmedChannel,
  gussetEnd,
  toteEnd,
  handle,
  openBox,
  lid,
  divider,
  flaredPan,
  bracket,
  bentStrip
]);

// packages/core/src/plane/frame.ts
var STAY = { origin: [0, 0], x: [1, 0], y: [0, 1] };
function place(f, p) {
  return [f.origin[0] + f.x[0] * p[0] + f.y[0] * p[1], f.origin[1] + f.x[1] * p[0] + f.y[1] * p[1]];
}
function turn2(f, v) {
  return [f.x[0] * v[0] + f.y[0] * v[1], f.x[1] * v[0] + f.y[1] * v[1]];
}
function compose(outer, inner) {
  return { origin: place(outer, inner.origin), x: turn2(outer, inner.x), y: turn2(outer, inner.y) };
}

// packages/core/src/fold/part.ts
function holesOf({ holes: holes3, marks }) {
  const drilled = marks.flatMap((m) => m.hole === null ? [] : [{ at: m.at, diameter: m.hole }]);
  return drilled.length === 0 ? holes3 : [...holes3, ...drilled];
}

// packages/core/src/fold/form.ts
function form(part) {
  const { thickness } = part.sheet;
  const poses = /* @__PURE__ */ new Map();
  const bends = [];
  const panels = part.panels.map((p) => {
    const pose = poseOf(p, poses, thickness);
    poses.set(p.id, pose);
    if (p.hang !== null) bends.push(bendPiece(p, poses, thickness));
    return {
      id: p.id,
      pose,
      shape: p.shape.map((e) => e.from),
      edges: p.shape.map((e) => e.name),
      holes: holesOf(p)
    };
  });
  const box = boxOfPieces(panels, bends, thickness);
  return {
    thickness,
    panels,
    bends,
    box,
    size: sub3(box.max, box.min),
    volume: volumeOf(panels, bends, thickness),
    faceArea: faceAreaOf(panels, bends)
  };
}
function poseOf({ hang: hang2 }, poses, thickness) {
  if (hang2 === null) return HOME;
  const { bend: bend2, hinge } = hang2;
  const turn4 = { angle: bend2.angle, insideRadius: bend2.insideRadius, setback: bend2.terms.setback };
  return bentPose(poses.get(bend2.parent), hinge, turn4, thickness);
}
function bendPiece(p, poses, thickness) {
  const { bend: bend2, hinge, zone } = p.hang;
  const turn4 = { angle: bend2.angle, insideRadius: bend2.insideRadius, setback: bend2.terms.setback };
  return {
    id: p.id,
    parent: bend2.parent,
    frame: bendAxis(poses.get(bend2.parent), hinge, turn4, thickness),
    sweep: radians(Math.abs(bend2.angle)),
    insideRadius: bend2.insideRadius,
    outsideRadius: bend2.insideRadius + thickness,
    low: [zone.parentSide[0], zone.childSide[0]],
    high: [zone.parentSide[1], zone.childSide[1]]
  };
}
var area = (shape) => loopArea(shape.map((at) => ({ at, bulge: 0 })));
var holeArea = ({ holes: holes3 }) => holes3.reduce((s, h) => s + Math.PI * h.diameter ** 2 / 4, 0);
var midLength = (b2) => (b2.high[0] - b2.low[0] + b2.high[1] - b2.low[1]) / 2;
function volumeOf(panels, bends, thickness) {
  const flat = panels.reduce((s, p) => s + (area(p.shape) - holeArea(p)) * thickness, 0);
  return bends.reduce((s, b2) => {
    const ring = (b2.outsideRadius ** 2 - b2.insideRadius ** 2) / 2;
    return s + ring * b2.sweep * midLength(b2);
  }, flat);
}
function faceAreaOf(panels, bends) {
  const flat = panels.reduce((s, p) => s + 2 * (area(p.shape) - holeArea(p)), 0);
  return bends.reduce((s, b2) => s + (b2.insideRadius + b2.outsideRadius) * b2.sweep * midLength(b2), flat);
}

// packages/core/src/plane/meet.ts
var ONE_TOUCH = 5e-5;
function meetings(a, b2) {
  const candidates = [...crossings(a, b2), a.from, a.to, b2.from, b2.to];
  const on = candidates.filter((p) => distanceToSegment(p, a) < SAME && distanceToSegment(p, b2) < SAME);
  return on.filter((p, i) => on.findIndex((q) => distance(p, q) < ONE_TOUCH) === i);
}
function crossings(a, b2) {
  if (!isArc(a) && !isArc(b2)) return lineLine(a, b2);
  if (!isArc(a)) return lineCircle(a, arcOf(b2));
  if (!isArc(b2)) return lineCircle(b2, arcOf(a));
  return circleCircle(arcOf(a), arcOf(b2));
}
function lineLine(a, b2) {
  const [u, v] = [sub(a.to, a.from), sub(b2.to, b2.from)];
  const d = cross(u, v);
  if (Math.abs(d) < 1e-14) return [];
  const t = cross(sub(b2.from, a.from), v) / d;
  return [[a.from[0] + u[0] * t, a.from[1] + u[1] * t]];
}
function lineCircle(s, { centre, radius }) {
  const u = sub(s.to, s.from);
  const l = Math.hypot(u[0], u[1]);
  if (l === 0) return [];
  const d = [u[0] / l, u[1] / l];
  const along3 = (centre[0] - s.from[0]) * d[0] + (centre[1] - s.from[1]) * d[1];
  const foot = [s.from[0] + d[0] * along3, s.from[1] + d[1] * along3];
  const h2 = radius * radius - distance(foot, centre) ** 2;
  if (h2 < -SAME * radius) return [];
  const h = Math.sqrt(Math.max(0, h2));
  return [
    [foot[0] - d[0] * h, foot[1] - d[1] * h],
    [foot[0] + d[0] * h, foot[1] + d[1] * h]
  ];
}
function circleCircle(a, b2) {
  const d = distance(a.centre, b2.centre);
  if (d < SAME || d > a.radius + b2.radius + SAME || d < Math.abs(a.radius - b2.radius) - SAME) return [];
  const along3 = (d * d + a.radius * a.radius - b2.radius * b2.radius) / (2 * d);
  const h = Math.sqrt(Math.max(0, a.radius * a.radius - along3 * along3));
  const u = [(b2.centre[0] - a.centre[0]) / d, (b2.centre[1] - a.centre[1]) / d];
  const m = [a.centre[0] + u[0] * along3, a.centre[1] + u[1] * along3];
  return [
    [m[0] - u[1] * h, m[1] + u[0] * h],
    [m[0] + u[1] * h, m[1] - u[0] * h]
  ];
}

// packages/core/src/plane/without-short.ts
function withoutShort(loop, least) {
  let kept = loop;
  for (let i = 0; i < kept.length && kept.length > 3; ) {
    const joined = withoutSegment(kept, i, least);
    if (joined === null) i += 1;
    else kept = joined;
  }
  return kept;
}
function withoutSegment(loop, i, least) {
  const index = (k) => (i + k + loop.length) % loop.length;
  const at = (k) => loop[index(k)];
  if (isArc(at(0)) || distance(at(0).at, at(1).at) >= least) return null;
  const segment = (k) => ({ from: at(k).at, to: at(k + 1).at, bulge: at(k).bulge });
  const [before, after] = [segment(-1), segment(1)];
  const near2 = (p) => distance(p, before.to) < least && distance(p, after.from) < least;
  const met = meeting2(before, after).find(near2);
  if (met === void 0) return null;
  return loop.flatMap((v, k) => {
    if (k === index(0)) return [];
    if (k === index(1)) return [{ at: met, bulge: moved2(after, met, after.to) }];
    return k === index(-1) ? [{ at: v.at, bulge: moved2(before, before.from, met) }] : [v];
  });
}
function moved2(segment, from, to) {
  if (!isArc(segment)) return 0;
  return bulgeAround(arcOf(segment).centre, from, to, segment.bulge > 0 ? "ccw" : "cw");
}
function meeting2(a, b2) {
  if (isArc(a)) return isArc(b2) ? [] : lineCircle(b2, arcOf(a));
  if (isArc(b2)) return lineCircle(a, arcOf(b2));
  const [u, v] = [sub(a.to, a.from), sub(b2.to, b2.from)];
  const area2 = cross(u, v);
  return area2 === 0 ? [] : [add(a.from, scale(u, cross(sub(b2.from, a.from), v) / area2))];
}

// packages/core/src/fold/bite-hole.ts
function outOfHole(line, circle) {
  const [from, to] = line;
  const hits = lineCircle({ from, to, bulge: 0 }, circle);
  const inside2 = (p) => distance(p, circle.centre) < circle.radius;
  const [first, last] = [hits[0] ?? from, hits.at(-1) ?? to];
  return [inside2(from) ? last : from, inside2(to) ? first : to];
}
function biteHole(loop, circle) {
  const kept = [];
  const enters = [];
  const exits = [];
  for (const s of segments(loop)) {
    if (!isIn(s.from, circle)) kept.push({ at: s.from, bulge: s.bulge });
    for (const { at, way } of crossings2(s, circle)) {
      if (way === "in") enters.push(at);
      else exits.push(at);
      kept.push({ at, bulge: way === "in" ? MARK : 0 });
    }
  }
  const shift = exits.length === enters.length && isIn(loop[0].at, circle) ? 1 : 0;
  const pairs = enters.map((at, i) => [at, exits[(i + shift) % exits.length]]);
  if (pairs.length === 0 || pairs.length !== exits.length || !pairs.every((p) => follows(p, exits, circle)))
    return tooLarge(circle);
  return kept.map((v) => {
    const pair2 = v.bulge === MARK ? pairs.find(([at]) => at === v.at) : void 0;
    return pair2 === void 0 ? v : { at: v.at, bulge: bulgeAround(circle.centre, pair2[0], pair2[1], "cw") };
  });
}
var MARK = Number.POSITIVE_INFINITY;
var isIn = (p, { centre, radius }) => distance(p, centre) < radius - SAME;
function crossings2(s, circle) {
  const length = distance(s.from, s.to);
  const hits = lineCircle(s, circle).filter((p) => {
    const t = dot(sub(p, s.from), sub(s.to, s.from)) / length;
    return t > SAME && t < length - SAME;
  });
  if (s.bulge !== 0) return hits.length > 0 && nearArc(s, circle) ? tooLarge(circle) : [];
  const [from, to] = [isIn(s.from, circle), isIn(s.to, circle)];
  if (from && to) return [];
  if (hits.length === 2)
    return [
      { at: hits[0], way: "in" },
      { at: hits[1], way: "out" }
    ];
  const at = hits[0];
  if (at === void 0 || from === to) return [];
  return [{ at, way: from ? "out" : "in" }];
}
var nearArc = (s, { centre, radius }) => distanceToSegment(centre, s) < radius;
function follows([enter, exit], exits, { centre }) {
  const turn4 = (p) => Math.abs(4 * Math.atan(bulgeAround(centre, enter, p, "cw")));
  return exits.every((x) => x === exit || turn4(x) > turn4(exit));
}
function tooLarge({ radius }) {
  return fail(
    "relief-too-large",
    ["relief"],
    (say) => `a relief hole of ${say.size(2 * radius)} is too large for the notch it stands in`,
    "Choose slot or none"
  );
}

// packages/core/src/fold/unfold.ts
var LEAST_EDGE3 = 1e-3;
function unfold(part) {
  const rough = lay(part, STAY);
  const [x, y] = boxOf2(
    part.panels.flatMap((p) => p.shape.map((e) => place(rough.frames.get(p.id), e.from)))
  ).min;
  const laid = lay(part, { ...STAY, origin: [-x, -y] });
  const at = (id, p) => place(laid.frames.get(id), p);
  const outline = outlineOf(part, laid);
  const holes3 = part.panels.flatMap((p) => holesOf(p).map((h) => circleLoop(at(p.id, h.at), h.diameter / 2)));
  return {
    thickness: part.sheet.thickness,
    outline,
    holes: holes3,
    bends: part.panels.filter(isHung).map((p) => flatBend(laid, p)),
    marks: part.panels.flatMap((p) => p.marks.map((m) => ({ ...m, at: at(p.id, m.at), panel: p.id }))),
    panels: part.panels.map((p) => ({
      id: p.id,
      frame: laid.frames.get(p.id),
      shape: p.shape.map((e) => at(p.id, e.from))
    })),
    blank: { min: [0, 0], max: loopBox(outline).max },
    area: loopArea(outline) - holes3.reduce((sum, h) => sum + loopArea(h), 0),
    cutLength: loopLength(outline) + holes3.reduce((sum, h) => sum + loopLength(h), 0)
  };
}
function outlineOf(part, laid) {
  const [first] = part.panels;
  const path = [];
  walk(laid, first, 0, first.shape.length, (at) => path.push({ at, bulge: 0 }));
  return withoutShort(tidy(laid.reliefs.reduce(biteHole, path)), LEAST_EDGE3);
}
var isHung = (p) => p.hang !== null;
function lay(part, start) {
  const frames = /* @__PURE__ */ new Map();
  const on = /* @__PURE__ */ new Map();
  for (const p of part.panels) {
    if (!isHung(p)) frames.set(p.id, start);
    else {
      const { bend: bend2, hinge } = p.hang;
      const parent = frames.get(bend2.parent);
      frames.set(p.id, compose(parent, flatFrame(hinge, bend2.terms.deduction)));
      on.set(`${bend2.parent}
${bend2.edge}`, p);
    }
  }
  const reliefs = part.rootHoles.map(({ panel: panel2, at, diameter }) => ({
    centre: place(frames.get(panel2), at),
    radius: diameter / 2
  }));
  return { frames, on, reliefs };
}
function walk(laid, panel2, start, count3, visit) {
  const frame = laid.frames.get(panel2.id);
  for (let k = 0; k < count3; k++) {
    const edge = panel2.shape[(start + k) % panel2.shape.length];
    const child = laid.on.get(`${panel2.id}
${edge.name}`);
    visit(place(frame, edge.from));
    if (child !== void 0) round(laid, frame, child, visit);
  }
}
function round(laid, parent, child, visit) {
  const frame = laid.frames.get(child.id);
  const [[low, high], [tailLow, tailHigh]] = tangentEnds(child, parent, frame);
  const near2 = child.shape.findIndex((e) => e.name === "near");
  visit(high);
  visit(tailHigh);
  walk(laid, child, near2 + 1, child.shape.length - 1, visit);
  visit(place(frame, child.shape[near2].from));
  visit(tailLow);
  visit(low);
}
function tangentEnds(child, parent, own2) {
  const { bend: bend2, hinge, zone } = child.hang;
  const s = bend2.terms.setback;
  const edge = compose(parent, hinge.frame);
  const at = (frame, y, [low, high]) => [
    place(frame, [low, y]),
    place(frame, [high, y])
  ];
  return [at(edge, -s, zone.parentSide), at(own2, s, zone.childSide)];
}
function flatBend(laid, child) {
  const { bend: bend2 } = child.hang;
  const tangents = tangentEnds(
    child,
    laid.frames.get(bend2.parent),
    laid.frames.get(child.id)
  );
  const [[a, b2], [c, d]] = tangents;
  const middle = [mix(a, c, 0.5), mix(b2, d, 0.5)];
  return {
    id: child.id,
    parent: bend2.parent,
    angle: Math.abs(bend2.angle),
    direction: bend2.angle > 0 ? "up" : "down",
    insideRadius: bend2.insideRadius,
    terms: bend2.terms,
    hem: bend2.hem,
    line: laid.reliefs.reduce(outOfHole, middle),
    tangents,
    zone: bend2.terms.allowance
  };
}

// packages/core/src/fold/verify-flat.ts
var NEAR2 = 1e-6;
function verifyFlat(flat) {
  const cuts = cutsOf(flat.outline);
  const shape = [...numbers(flat), ...simple(cuts)];
  if (shape.length > 0) return shape;
  return [...turns(flat), ...holes2(flat), ...flat.bends.flatMap((b2) => bend(flat, cuts, b2)), ...sums(flat)];
}
var text = (p) => `(${p[0].toFixed(3)}, ${p[1].toFixed(3)})`;
function numbers(flat) {
  const bad = flat.outline.find(
    (v) => !(Number.isFinite(v.at[0]) && Number.isFinite(v.at[1]) && Number.isFinite(v.bulge))
  );
  return bad === void 0 ? [] : [{ code: "flat-number", message: "the outline holds something that is not a number" }];
}
var cutsOf = (loop) => segments(loop).map((segment) => ({ segment, box: boxOf2(reach(segment)) }));
function simple(cuts) {
  if (cuts.length < 2) return [{ code: "flat-open", message: "the outline has fewer than two segments" }];
  const short2 = cuts.find(({ segment }) => segmentLength(segment) < SAME);
  if (short2 !== void 0)
    return [{ code: "flat-zero", message: `a cut of no length at ${text(short2.segment.from)}` }];
  const flaws = [];
  for (let i = 0; i < cuts.length; i++)
    for (let j = i + 1; j < cuts.length; j++) {
      const [a, b2] = [cuts[i], cuts[j]];
      if (apart2(a.box, b2.box)) continue;
      const shared = sharedEnds(a.segment, b2.segment);
      if (shared.length === 1 && areApartBeyond(a.segment, b2.segment)) continue;
      const wrong = meetings(a.segment, b2.segment).find((p) => shared.every((q) => distance(p, q) > 1e-5));
      if (wrong !== void 0)
        flaws.push({ code: "flat-crosses", message: `the outline meets itself at ${text(wrong)}` });
    }
  return flaws;
}
var apart2 = (a, b2) => a.min[0] > b2.max[0] + SAME || b2.min[0] > a.max[0] + SAME || a.min[1] > b2.max[1] + SAME || b2.min[1] > a.max[1] + SAME;
function sharedEnds(a, b2) {
  return [a.from, a.to].filter((p) => distance(p, b2.from) < SAME || distance(p, b2.to) < SAME);
}
function areApartBeyond(a, b2) {
  if (isArc(a) || isArc(b2)) return false;
  const [u, v] = [sub(a.to, a.from), sub(b2.to, b2.from)];
  return Math.abs(cross(u, v)) > 2 * SAME * Math.max(size(u), size(v));
}
function turns(flat) {
  const area2 = loopArea(flat.outline);
  return area2 > 0 ? [] : [{ code: "flat-turn", message: `the outline runs clockwise (area ${area2.toFixed(3)} mm\xB2)` }];
}
function holes2({ outline, holes: list2 }) {
  return list2.flatMap((hole2, i) => {
    const at = hole2[0].at;
    const clear = (other2) => segments(hole2).every((s) => segments(other2).every((t) => meetings(s, t).length === 0));
    if (!clear(outline) || !contains(outline, at))
      return [{ code: "flat-hole", message: `the hole near ${text(at)} reaches over the outline` }];
    const other = list2.slice(i + 1).find((o) => !clear(o) || contains(o, at) || contains(hole2, o[0].at));
    return other === void 0 ? [] : [{ code: "flat-holes", message: `two holes overlap near ${text(at)}` }];
  });
}
function bend(flat, cuts, b2) {
  const flaws = [];
  const say = (code, message) => flaws.push({ code, message: `bend ${b2.id}: ${message}` });
  const { setback: setback2, allowance, deduction } = b2.terms;
  if (Math.abs(2 * setback2 - allowance - deduction) > NEAR2)
    say("bend-terms", "deduction is not two setbacks less allowance");
  const [p, q] = b2.line;
  for (const end2 of b2.line)
    if (!cuts.some((c) => isOn(end2, c))) say("bend-end", `the line ends at ${text(end2)}, not on an edge`);
  if (![0.02, 0.5, 0.98].every((t) => contains(flat.outline, mix(p, q, t))))
    say("bend-off", "the line leaves the material");
  const [near2, far] = b2.tangents.map((t) => offset(t, p, q));
  if (near2 === void 0 || far === void 0 || Math.abs(Math.abs(far - near2) - b2.zone) > NEAR2)
    say(
      "bend-zone",
      `tangent lines lie ${Math.abs((far ?? 0) - (near2 ?? 0)).toFixed(4)} mm apart, the zone says ${b2.zone.toFixed(4)}`
    );
  return flaws;
}
var isOn = (p, { segment, box: { min, max } }) => p[0] >= min[0] - NEAR2 && p[0] <= max[0] + NEAR2 && p[1] >= min[1] - NEAR2 && p[1] <= max[1] + NEAR2 && distanceToSegment(p, segment) <= NEAR2;
function offset([a, b2], p, q) {
  const d = sub(q, p);
  const l = Math.hypot(d[0], d[1]);
  const [u, v] = [cross(d, sub(a, p)) / l, cross(d, sub(b2, p)) / l];
  return Math.abs(u - v) < NEAR2 ? u : Number.NaN;
}
function sums(flat) {
  const polygon2 = (points) => loopArea(points.map((at) => ({ at, bulge: 0 })));
  const panels = flat.panels.reduce((s, p) => s + polygon2(p.shape), 0);
  const zones = flat.bends.reduce((s, b2) => {
    const [[a0, a1], [b0, b1]] = b2.tangents;
    return s + Math.abs(polygon2([a0, a1, b1, b0]));
  }, 0);
  const area2 = loopArea(flat.outline);
  const missing = panels + zones - area2;
  const round2 = segments(flat.outline).some((s) => s.bulge !== 0);
  const { min, max } = loopBox(flat.outline);
  const flaws = [];
  if (missing < -NEAR2 * area2 || !round2 && missing > NEAR2 * area2)
    flaws.push({
      code: "flat-sum",
      message: `panels and bends make ${(panels + zones).toFixed(3)} mm\xB2, the outline ${area2.toFixed(3)}`
    });
  if (distance(max, flat.blank.max) > NEAR2 || distance(min, [0, 0]) > NEAR2)
    flaws.push({ code: "flat-blank", message: "the blank is not the box of the outline" });
  return flaws;
}

// packages/core/src/fold/verify-form.ts
var NEAR3 = 1e-6;
var SIZE = 1e-9;
var AXES2 = { x: 0, y: 1, z: 2 };
function verifyForm(formed, asked2) {
  return [
    ...asked2.flatMap((a) => size3(formed, a)),
    ...formed.bends.flatMap((b2) => joins(formed, b2)),
    ...clashes(formed)
  ];
}
function size3(formed, { name, value: value2, axis, over }) {
  const box = measuredBox(formed, over);
  const found = box.max[AXES2[axis]] - box.min[AXES2[axis]];
  if (Math.abs(found - value2) <= SIZE * Math.max(1, Math.abs(value2))) return [];
  return [
    {
      code: "form-size",
      size: name,
      message: (say) => `${name} comes out at ${say.size(found)}, ${say.size(value2)} asked`
    }
  ];
}
function joins(formed, b2) {
  return [
    [0, b2.parent],
    [b2.sweep, b2.id]
  ].flatMap(([phi, id]) => {
    const pose = formed.panels.find((p) => p.id === id)?.pose;
    const heights = [b2.insideRadius, b2.outsideRadius].map((r) => {
      const at = place3(b2.frame, [0, r * Math.cos(phi), r * Math.sin(phi)]);
      return pose === void 0 ? Number.NaN : dot3(sub3(at, pose.origin), pose.z);
    });
    const [low, high] = heights.toSorted((x, y) => x - y);
    const fits = Math.abs(low) < NEAR3 && Math.abs(high - formed.thickness) < NEAR3;
    return fits ? [] : [{ code: "form-join", message: `bend ${b2.id} does not join panel ${id}` }];
  });
}
function clashes(formed) {
  const lumps = lumpsOf(formed);
  const [flat, round2] = [lumps.filter((l) => l.bend === null), lumps.filter((l) => l.bend !== null)];
  const strange = ([b2, p]) => p.id !== b2.id && p.id !== b2.bend?.parent;
  return [...near(flat, flat), ...near(round2, flat).filter(strange), ...near(round2, round2)].flatMap(clash);
}
function near(a, b2) {
  const pairs = [];
  a.forEach((p, i) => {
    for (const q of a === b2 ? b2.slice(i + 1) : b2) if (boxDistance(p, q) < 0) pairs.push([p, q]);
  });
  return pairs;
}
var BEND_CLASH = 1e-3;
function clash([a, b2]) {
  const depth = lumpDepth(a, b2);
  const most = b2.bend === null ? NEAR3 : BEND_CLASH;
  return depth <= most ? [] : [{ code: "form-clash", message: (say) => `${through(a, b2)}, ${say.least(depth)} deep` }];
}
function through(a, b2) {
  if (a.bend === null) return `panels ${a.id} and ${b2.id} pass through each other`;
  if (b2.bend === null) return `panel ${b2.id} passes through the bend ${a.id}`;
  return `bends ${a.id} and ${b2.id} pass through each other`;
}

// packages/core/src/job/advice.ts
var MOST_SIZES = 32;
function withAdvice(part, refusals, unit2, attempt2) {
  const problems2 = (params) => problemsOf2({ ...part, params, asMade: params }, attempt2);
  const budget = { step: stepOf(unit2), most: LONGEST3 };
  const lengths = sizesIn(part.params).filter(
    ({ path }) => declaredAt(part.family.values, path)?.unit === "mm"
  );
  const nearest3 = ({ path, given: given2 }) => {
    const search2 = (works2) => nearestSize(
      given2,
      passing((v) => works2(problems2(withValue(part.params, path, v)))),
      budget
    );
    return search2((found) => found.length === 0) ?? search2((found) => found.every((f) => f.path.length > 0 && !samePath(f.path, path)));
  };
  const every = () => {
    if (lengths.length > MOST_SIZES) return null;
    const room = (params) => problems2(params).length === 0 ? 0 : null;
    return sizeAdvice(part.params, room, () => budget, lengths)[0] ?? null;
  };
  return refusals.map((refusal2) => {
    if (refusal2.fix !== "") return refusal2;
    const blamed = lengths.find((l) => samePath(l.path, refusal2.path));
    const own2 = blamed === void 0 ? null : nearest3(blamed);
    if (own2 !== null)
      return { ...refusal2, fix: (say) => `Use ${say.size(own2.found)} or ${wordFor(own2.bound)}` };
    const best = refusals.length === 1 ? every() : null;
    if (best === null) return { ...refusal2, fix: STAY_CLEAR.includes(refusal2.code) ? CLEAR : NOTHING2 };
    const { path, found, bound } = best;
    if (refusal2.path.length === 0)
      return {
        ...withGiven({ ...refusal2, path }, part.params),
        fix: (say) => `Use ${say.size(found)} or ${wordFor(bound)}`
      };
    return { ...refusal2, fix: (say) => `Use ${pathText(path)} of ${say.size(found)} or ${wordFor(bound)}` };
  });
}
var NOTHING2 = "No size works here while the others stay as they are";
var STAY_CLEAR = ["form-clash", "flat-crosses"];
var CLEAR = "Change the sizes so that they stay clear of each other";
var wordFor = (bound) => bound === "most" ? "less" : "more";
var samePath = (a, b2) => a.length === b2.length && a.every((step, i) => step === b2[i]);
function problemsOf2(part, attempt2) {
  try {
    attempt2(part);
    return [];
  } catch (error) {
    if (!(error instanceof JobError)) throw error;
    return error.refusals;
  }
}

// packages/core/src/stock/iso-2768.ts
var ISO_2768_BANDS = frozen([3, 6, 30, 120, 400, 1e3, 2e3, 4e3]);
var ISO_2768_LINEAR = frozen({
  f: [0.05, 0.05, 0.1, 0.15, 0.2, 0.3, 0.5, null],
  m: [0.1, 0.1, 0.2, 0.3, 0.5, 0.8, 1.2, 2],
  c: [0.2, 0.3, 0.5, 0.8, 1.2, 2, 3, 4],
  v: [null, 0.5, 1, 1.5, 2.5, 4, 6, 8]
});
function linearTolerance(size4, of) {
  const band = ISO_2768_BANDS.findIndex((b2) => size4 <= b2);
  return size4 < 0.5 || band < 0 ? null : ISO_2768_LINEAR[of][band] ?? null;
}

// packages/core/src/job/sizes.ts
function sizesOf(family, params, sheet) {
  const own2 = sizesIn(params).filter(({ path }) => path.every((step) => typeof step === "string"));
  return [
    ...family.derived(params, sheet),
    ...own2.map(({ path, given: value2 }) => ({ name: path.join("."), value: value2, follows: path.join(".") }))
  ];
}
function splitName(text2) {
  if (typeof text2 !== "string") return null;
  const dot2 = text2.indexOf(".");
  return dot2 < 1 || dot2 === text2.length - 1 ? null : [text2.slice(0, dot2), text2.slice(dot2 + 1)];
}
var WORDS2 = ["name", "family", "quantity", "note"];
function resolved(data2, path, self, book) {
  if (Array.isArray(data2)) return data2.map((d, i) => resolved(d, [...path, i], self, book));
  if (typeof data2 !== "object" || data2 === null) return data2;
  if (path.length === 3 && WORDS2.includes(path[2])) return data2;
  if ("of" in data2 && path.length > 2) return `${followed(data2, path, self, book)} mm`;
  return Object.fromEntries(Object.entries(data2).map(([k, v]) => [k, resolved(v, [...path, k], self, book)]));
}
function followed(data2, path, self, book) {
  const extra = Object.keys(data2).find((k) => !["of", "less", "plus"].includes(k));
  if (extra !== void 0)
    throw refusal(
      [...path, extra],
      "key-unknown",
      `unknown key ${quoted(extra)}`,
      suggestion(extra, ["of", "less", "plus"]),
      "key"
    );
  if (data2.less !== void 0 && data2.plus !== void 0)
    throw refusal(path, "follow-both", "less and plus given", "Give one of the two");
  const base = sizeNamed(data2.of, [...path, "of"], self, book);
  const [step, key] = data2.plus === void 0 ? [data2.less, "less"] : [data2.plus, "plus"];
  if (step === void 0) return base;
  const read2 = typeof step === "number" || typeof step === "string" ? parseLength(step, book.units) : null;
  if (read2 === null || !read2.ok)
    throw refusal([...path, key], "value-type", read2 === null ? "no length given" : read2.why, "");
  const found = key === "plus" ? base + read2.mm : base - read2.mm;
  if (found >= 0) return found;
  const { size: size4 } = sayIn(book.units);
  throw refusal(
    path,
    "value-range",
    `${data2.of} is ${size4(base)}, less ${size4(read2.mm)} leaves no length`,
    ""
  );
}
function sizeNamed(of, path, self, book) {
  const split = splitName(of);
  if (split === null)
    throw refusal(
      path,
      "size-name",
      `${typeof of === "string" ? quoted(of) : "no name"} given`,
      "Write part.size, such as body.insideWidth"
    );
  const [part, size4] = split;
  if (part === self)
    throw refusal(path, "follow-ring", `${self} would follow itself`, "Follow a part that stands before it");
  const sizes2 = book.known.get(part);
  if (sizes2 !== void 0) {
    const found = sizes2.find((s) => s.name === size4);
    if (found !== void 0) return found.value;
    throw refusal(
      path,
      "size-unknown",
      `${part} has no size ${quoted(size4)}`,
      suggestion(
        size4,
        sizes2.map((s) => s.name)
      )
    );
  }
  const ring = ringOf([self, part], book.follows);
  if (ring !== null)
    throw refusal(
      path,
      "follow-ring",
      `sizes follow each other in a ring: ${ring.join(", ")}`,
      "Give one of them a length of its own"
    );
  const [mine, other] = [book.order.indexOf(self), book.order.indexOf(part)];
  if (other > mine)
    throw refusal(
      path,
      "follow-later",
      `${self} follows ${part}, which stands after it`,
      `Put ${part} first`
    );
  if (other >= 0) throw new JobError([]);
  throw refusal(
    path,
    "part-unknown",
    `there is no part ${quoted(part)}`,
    suggestion(part, [...book.known.keys()])
  );
}
function followedParts(data2) {
  if (typeof data2 !== "object" || data2 === null) return [];
  if (!Array.isArray(data2) && "of" in data2) return (splitName(data2.of) ?? []).slice(0, 1);
  return Object.values(data2).flatMap(followedParts);
}
function ringOf(way, follows2, seen = /* @__PURE__ */ new Set()) {
  const last = way.at(-1);
  if (seen.has(last)) return null;
  seen.add(last);
  for (const next of follows2.get(last) ?? []) {
    const ring = next === way[0] ? [...way, next] : ringOf([...way, next], follows2, seen);
    if (ring !== null) return ring;
  }
  return null;
}
function refusal(path, code, message, fix, at = "value") {
  return new JobError([{ code, path, message, fix, at }]);
}

// packages/core/src/job/measured-findings.ts
var SHARE = 0.03;
function measuredFindings({ name, family, params, sheet, measured }) {
  return measured.flatMap(({ size: size4, value: value2 }) => {
    const computed = sizesOf(family, params, sheet).find((s) => s.name === size4)?.value ?? value2;
    const limit = Math.min(linearTolerance(computed, "c") ?? Infinity, SHARE * computed);
    const away = Math.abs(value2 - computed);
    if (away <= limit) return [];
    return [
      {
        part: name,
        ...remark("measured-far", "warning", {
          value: away,
          limit,
          unit: "mm",
          values: { size: size4, measured: value2, computed },
          source: [cite("ISO 2768-1 class c"), cite(null, { rule: "3 %", basis: "common-practice" })]
        })
      }
    ];
  });
}

// packages/core/src/job/plan.ts
function planJob(job2, cut = drawnFasteners(job2)) {
  const parts2 = planAll(job2);
  const assembly = job2.joints.length === 0 ? null : assemble(parts2.map(standing), job2.joints, cut);
  const marked = assembly === null ? parts2 : parts2.map((p) => withFasteners(p, assembly));
  const findings = [
    ...marked.flatMap(findingsOf),
    ...assembly?.findings ?? [],
    ...marked.flatMap(measuredFindings)
  ];
  const order = parts2.map((p) => p.name);
  const complete = assembly === null ? null : withParts(assembly, marked.map(standing));
  return { job: job2, parts: marked, assembly: complete, findings: sortFindings(findings, order) };
}
function drawnFasteners({ drawn, joints }) {
  return drawn === null || joints.length === 0 ? [] : planJob(drawn).assembly?.fasteners ?? [];
}
var MOST_ADVISED = 20;
function planAll({ parts: jobParts, units }) {
  const problems2 = [];
  let advised = 0;
  const parts2 = jobParts.flatMap((part) => {
    try {
      return [planPart(part)];
    } catch (error) {
      if (!(error instanceof JobError)) throw error;
      advised += 1;
      const refusals = advised > MOST_ADVISED ? error.refusals : withAdvice(part, error.refusals, units, planPart);
      problems2.push(...refusals.map((r) => placed(worded(r, units), part)));
      return [];
    }
  });
  if (problems2.length > 0) throw new JobError(problems2);
  return parts2;
}
var standing = ({ name, quantity, material, made, stands }) => ({
  name,
  quantity,
  material,
  made,
  ...stands
});
function withFasteners(plan, { fasteners }) {
  const marks = marksOf(plan, fasteners);
  if (marks.length === 0) return plan;
  const part = withMarks(plan.part, marks);
  const stood = withMarks(plan.stands.part, marks);
  return finished(plan, part, { part: stood, formed: form(stood) }, verifyFlat);
}
function planPart(jobPart2) {
  const { family, params, asMade: asMade2, sheet } = jobPart2;
  const part = family.part(params, sheet);
  const made = asMade2 === params ? part : family.part(asMade2, sheet);
  const asked2 = jobPart2.sheet.rule.compensates ? part.asked : [];
  return finished(jobPart2, part, { part: made, formed: form(made) }, (flat, formed) => {
    const flaws = verifyFlat(flat);
    return flaws.length > 0 ? flaws : verifyForm(formed, asked2);
  });
}
function finished(jobPart2, part, stands, verify) {
  const { sheet, material } = jobPart2;
  const flat = unfold(part);
  const formed = part === stands.part ? stands.formed : form(part);
  const flaws = verify(flat, formed);
  const many = [CLASH2, CROSSES].map((code) => flaws.find((f) => f.code === code));
  const told = flaws.filter((f) => many.includes(f) || f.code !== CLASH2 && f.code !== CROSSES);
  if (told.length > 0) throw new JobError(told.map((f) => flawProblem(f, jobPart2.params)));
  const mass = flat.area * sheet.thickness * material.density / 1e9;
  return { ...jobPart2, part, flat, formed, stands, mass };
}
var CLASH2 = "form-clash";
var CROSSES = "flat-crosses";
function flawProblem({ code, message, size: size4 }, params) {
  if (size4 !== void 0) {
    const path = pathOf(size4);
    return { code, path: typeof valueAt(params, path) === "number" ? path : [], message, fix: "" };
  }
  if (code === CLASH2 || code === CROSSES) return { code, path: [], message, fix: "" };
  const fix = "This is a fault of the program, not of the job: please report it with the job file";
  return { code, path: [], message, fix };
}
var pathOf = (name) => name.split(/[.[\]]+/).flatMap((step) => step === "" ? [] : [/^\d+$/.test(step) ? Number(step) : step]);
function placed(problem, part) {
  const [first, ...rest] = problem.path;
  const path = first === "bending" ? [...part.bendingPath, ...rest] : [...part.path, ...problem.path];
  return { ...problem, path, part: part.name };
}

// packages/core/src/joining/fastener.ts
function fastenerKind(kind) {
  return kind;
}
var stackThickness = (stack) => stack.reduce((s, x) => s + x.thickness, 0);
function extremes(stack) {
  const all = stack.map((s) => s.thickness);
  return [Math.min(...all), Math.max(...all)];
}

// packages/core/src/joining/rivet-grips.ts
var ISO_15981_GRIPS = frozen([
  { length: 5, read: false, spans: { "3.2": [0.5, 1.5] } },
  {
    length: 6,
    read: true,
    spans: { "2.4": [0.5, 3], "3.2": [1.5, 3.5], "4": [1, 3], "4.8": [1.5, 2.5] }
  },
  { length: 8, read: true, spans: { "3.2": [3.5, 5], "4": [3, 5], "4.8": [2.5, 4] } },
  { length: 10, read: true, spans: { "3.2": [5, 7], "4": [5, 6.5], "4.8": [4, 6] } },
  {
    length: 12,
    read: true,
    spans: { "2.4": [6, 9], "3.2": [7, 9], "4": [6.5, 8.5], "4.8": [6, 8], "6.4": [3, 6] }
  },
  { length: 14, read: false, spans: { "3.2": [9, 11], "4": [8.5, 10.5], "4.8": [8, 10] } },
  { length: 16, read: false, spans: { "3.2": [11, 13], "4": [10.5, 12.5], "4.8": [10, 12], "6.4": [6, 10] } },
  { length: 18, read: false, spans: { "4": [12.5, 14.5], "4.8": [12, 14] } },
  { length: 20, read: false, spans: { "4": [14.5, 16.5], "4.8": [14, 16], "6.4": [10, 14] } },
  { length: 25, read: false, spans: { "4": [16.5, 21.5], "4.8": [16, 21], "6.4": [14, 19] } },
  { length: 30, read: false, spans: { "4.8": [21, 26], "6.4": [19, 24] } }
]);
function gripsOf(column) {
  const joined = [];
  for (const { spans } of ISO_15981_GRIPS) {
    const [span, last] = [spans[column], joined.at(-1)];
    if (span === void 0) continue;
    if (last !== void 0 && span[0] <= last[1])
      joined[joined.length - 1] = [last[0], Math.max(last[1], span[1])];
    else joined.push(span);
  }
  return joined;
}

// packages/core/src/joining/rivet-tables.ts
var IN = 25.4;
var TM = "TM 10-5410-221-14 table 4-3";
var IFI = "holes by IFI-114, from memory";
var DRILL = `${TM}; drill diameter from memory; ${IFI}`;
var CUT_OFF = `${IFI}, and the drill too; grips as 4.8 mm by ISO 15981, columns inferred, the longer ones from memory`;
var HOLES = "ISO 15977 family: holes dh1 from memory, heads by nutbolt.org DIN 7337";
var ISO = `${HOLES}; grips by ISO 15981, columns inferred, the shortest and the longest from memory`;
var AS = `${HOLES}; grips from memory, as the nearest size of ISO 15981`;
var INCH = [
  [3 / 32, [0.097, 0.1], 5, [[0.02, 0.25]], `${TM}; ${IFI}`, "3/32 in", "#41"],
  [1 / 8, [0.129, 0.133], 6.5, [[0.02, 0.5]], `${TM}; ${IFI}`, "1/8 in", "#30"],
  [5 / 32, [0.16, 0.164], 8, [[0.02, 0.375]], DRILL, "5/32 in", "#20"],
  [3 / 16, [0.192, 0.196], 9.5, inInches("4.8"), CUT_OFF, "3/16 in", "#11"],
  // biome-ignore format: a row
  [1 / 4, [0.257, 0.261], 13, [[0.125, 0.5], [0.626, 0.75]], DRILL, "1/4 in", "F"]
];
var METRIC = [
  [2.4, [2.5, 2.6], 5, gripsOf("2.4"), ISO],
  [3, [3.1, 3.2], 6.5, gripsOf("3.2"), AS],
  [3.2, [3.3, 3.4], 6.5, gripsOf("3.2"), ISO],
  [4, [4.1, 4.2], 8, gripsOf("4"), ISO],
  [4.8, [4.9, 5], 9.5, gripsOf("4.8"), ISO],
  [5, [5.1, 5.2], 9.5, gripsOf("4.8"), AS],
  [6, [6.1, 6.2], 12, gripsOf("6.4"), AS],
  [6.4, [6.5, 6.6], 13, gripsOf("6.4"), ISO]
];
function inInches(column) {
  return gripsOf(column).map(([from, to]) => [from / IN, to / IN]);
}
var inMm = ([a, b2]) => [a * IN, b2 * IN];
var RIVET_SIZES = frozen(
  [
    ...INCH.map(([diameter, hole2, head, grips, source, name, drill]) => {
      return { diameter: diameter * IN, name, hole: inMm(hole2), drill, head, grips: grips.map(inMm), source };
    }),
    ...METRIC.map(([diameter, hole2, head, grips, source]) => {
      const [name, drill] = [`${diameter.toFixed(1)} mm`, `${hole2[0]} mm`];
      return { diameter, name, hole: hole2, drill, head, grips, source };
    })
  ].toSorted((a, b2) => a.diameter - b2.diameter)
);
var cutHole = ({ hole: [least, most] }) => (least + most) / 2;
var RIVET_RULES = frozen({
  edge: [
    { factor: 2, source: "TM 10-5410-229-13&P \xA75-6" },
    { factor: 2.5, source: "NAVEDTRA 14251" }
  ],
  pitch: { factor: 3, source: "NAVEDTRA 14018" },
  /** Of the usual 4 D to 8 D the wider, as hand-set rivets in light work stand. */
  usualPitch: { factor: 8, source: "NAVEDTRA 14018" },
  row: { factor: 2.5, source: "TM 10-5410-229" }
});
function rivetSize(diameter) {
  const near2 = RIVET_SIZES.toSorted(
    (a, b2) => Math.abs(a.diameter - diameter) - Math.abs(b2.diameter - diameter)
  )[0];
  return near2 !== void 0 && Math.abs(near2.diameter - diameter) <= 0.05 ? near2 : null;
}
var holds = ({ grips }, total) => grips.some(([least, most]) => total >= least - 1e-9 && total <= most + 1e-9);

// packages/core/src/joining/blind-rivet.ts
var HEAD_CLEARANCE = 1;
var sizeOf = ({ diameter }) => rivetSize(diameter);
function rivetNeeds(stack, ask) {
  const size4 = sizeOf(ask);
  const edge = RIVET_RULES.edge.reduce((a, b2) => b2.factor > a.factor ? b2 : a);
  const other = RIVET_RULES.edge.find((r) => r !== edge);
  return {
    edge: edge.factor * size4.diameter,
    edgeSource: [
      cite(edge.source, { rule: `${edge.factor} D`, basis: "stricter" }),
      ...other === void 0 ? [] : [cite(other.source, { rule: `${other.factor} D` })]
    ],
    pitch: RIVET_RULES.pitch.factor * size4.diameter,
    pitchSource: [cite(RIVET_RULES.pitch.source, { rule: `${RIVET_RULES.pitch.factor} D` })],
    usualPitch: RIVET_RULES.usualPitch.factor * size4.diameter,
    bend: size4.head / 2 + HEAD_CLEARANCE,
    bendSource: [cite(null, { rule: "\xBD D(head) + #", size: 1, basis: "common-practice" })],
    holes: stack.map(() => cutHole(size4))
  };
}
function gripTake({ diameter }, total, thick) {
  const others = RIVET_SIZES.filter((r) => holds(r, total) && r.diameter >= thick - 1e-9);
  return others.length === 0 ? null : nearestTo(diameter, others, (r) => r.diameter).name;
}
var nearestTo = (wanted, list2, of) => list2.reduce((a, b2) => Math.abs(of(b2) - wanted) < Math.abs(of(a) - wanted) ? b2 : a);
function remarks(stack, ask, { layers }) {
  const size4 = sizeOf(ask);
  const total = stackThickness(stack);
  const [, thick] = extremes(stack);
  const found = [];
  if (!holds(size4, total))
    found.push(
      remark("rivet-grip", "warning", {
        value: total,
        limit: nearestTo(total, size4.grips.flat(), (b2) => b2),
        unit: "mm",
        values: { rivet: size4.name, grips: size4.grips, take: gripTake(size4, total, thick) },
        source: [cite(size4.source)]
      })
    );
  if (size4.diameter < thick - 1e-9)
    found.push(
      remark("rivet-thin", "warning", {
        value: size4.diameter,
        limit: thick,
        unit: "mm",
        values: { rivet: size4.name },
        source: [cite("NAVEDTRA 14018")]
      })
    );
  if (layers > stack.length)
    found.push(
      remark("rivet-layers", "warning", {
        value: layers,
        limit: stack.length,
        values: {},
        source: COMMON_PRACTICE
      })
    );
  return found;
}
var blindRivet = fastenerKind({
  name: "blind-rivet",
  options: (k) => ({
    diameter: k.instead(
      k.sizeOf(
        (d) => rivetSize(d) !== null,
        () => RIVET_SIZES.map((r) => r.name).join(", ")
      ),
      "3.2 mm"
    )
  }),
  needs: rivetNeeds,
  remarks
});

// packages/core/src/joining/plug-weld.ts
function plugWeldNeeds(stack, { diameter }) {
  return {
    edge: 1.5 * diameter,
    edgeSource: COMMON_PRACTICE,
    pitch: 4 * diameter,
    pitchSource: COMMON_PRACTICE,
    usualPitch: 6 * diameter,
    bend: diameter,
    bendSource: COMMON_PRACTICE,
    holes: stack.map((_, i) => i === 0 ? diameter : null)
  };
}
function remarks2(stack) {
  const zinc = stack.find((s) => s.material.zinc);
  if (zinc === void 0) return [];
  return [
    remark("weld-zinc", "warning", {
      values: { weld: "plug-weld" },
      source: [cite("29 CFR 1910.252"), cite("29 CFR 1910.1000")]
    })
  ];
}
var plugWeld = fastenerKind({
  name: "plug-weld",
  options: (k) => ({ diameter: k.instead(k.size({ min: 4, max: 16 }), "8 mm") }),
  needs: plugWeldNeeds,
  remarks: remarks2
});

// packages/core/src/joining/screw.ts
var SOURCE4 = [cite("AISI S100 \xA7J4", { basis: "memory" })];
var PILOT = 0.75;
function screwNeeds(stack, { diameter }) {
  return {
    edge: 1.5 * diameter,
    edgeSource: SOURCE4,
    pitch: 3 * diameter,
    pitchSource: SOURCE4,
    usualPitch: 6 * diameter,
    bend: diameter + 1,
    bendSource: [cite(null, { rule: "d + #", size: 1, basis: "common-practice" })],
    // clearance in what is screwed on, a pilot in the last sheet
    holes: stack.map((_, i) => i === stack.length - 1 ? PILOT * diameter : diameter + 0.3)
  };
}
var screw = fastenerKind({
  name: "screw",
  options: (k) => ({ diameter: k.instead(k.size({ min: 2, max: 8 }), "4.2 mm") }),
  needs: screwNeeds,
  remarks: () => []
});

// packages/core/src/joining/spot-weld-tables.ts
var IN2 = 25.4;
var TABLE_A = [
  [0.01, 1 / 4, 3 / 8, 1 / 2, 0.113],
  [0.021, 3 / 8, 7 / 16, 1 / 2, 0.139],
  [0.031, 1 / 2, 7 / 16, 1 / 2, 0.161],
  [0.04, 3 / 4, 1 / 2, 5 / 8, 0.181],
  [0.05, 7 / 8, 9 / 16, 5 / 8, 0.21],
  [0.062, 1, 5 / 8, 5 / 8, 0.231],
  [0.078, 1 + 1 / 8, 11 / 16, 5 / 8, 0.268],
  [0.094, 1 + 1 / 4, 3 / 4, 5 / 8, 0.304],
  [0.109, 1 + 5 / 16, 13 / 16, 7 / 8, 0.338],
  [0.125, 1 + 1 / 2, 7 / 8, 7 / 8, 0.375]
];
var TABLE_B = [
  [0.25, 6, 9.5, 9.5, 3],
  [0.5, 9.5, 11, 9.5, 4],
  [0.75, 12.5, 11, 9.5, 5],
  [1, 19.5, 12.5, 13, 5.5],
  [1.25, 22.5, 15, 13, 6],
  [1.5, 27, 16, 13, 6.5],
  [2, 35, 18, 16, 7.3],
  [2.5, 42, 19, 16, 8.3],
  [2.8, 48, 21, 16, 9],
  [3.2, 50, 23, 22, 10]
];
var rowsOf = (table, unit2) => table.map((row) => {
  const [thickness, pitch, overlap2, electrode, nugget] = row.map((v) => v * unit2);
  return { thickness, pitch, overlap: overlap2, electrode, nugget };
});
var SPOT_WELD_TABLES = frozen([
  {
    name: "table A",
    source: "optimum conditions for SAE 1010, welding-equipment data sheet, docslib.org/doc/9660685",
    rows: rowsOf(TABLE_A, IN2)
  },
  {
    name: "table B",
    source: "class A schedule of a pedestal spot-welder instruction manual, table 8.1",
    rows: rowsOf(TABLE_B, 1)
  }
]);
var WELD_EDGE_TABLE = frozen({
  source: "T.O. 1-1A-9 / TM 43-0106 table 2-24",
  rows: [
    [0.036, 1 / 4],
    [0.04, 9 / 32],
    [0.045, 5 / 16],
    [0.05, 5 / 16],
    [0.063, 3 / 8],
    [0.071, 3 / 8],
    [0.08, 13 / 32],
    [0.09, 7 / 16],
    [0.1, 7 / 16],
    [0.125, 9 / 16],
    [0.16, 5 / 8]
  ].map(([t, e]) => [t * IN2, e * IN2])
});
function rowFor(rows2, thickness, of) {
  return rows2.find((r) => of(r) >= thickness * (1 - ROUNDING2)) ?? rows2.at(-1);
}
var ROUNDING2 = 0.02;

// packages/core/src/joining/spot-weld.ts
var ELECTRODE_CLEARANCE = 1.5;
var THREE_SHEETS = 1.3;
var NOTES = "dbmimports.com spot-welding notes";
var ISO_RANGE = [0.4, 3];
function spotWeldNeeds(stack, _ask, layers = stack.length) {
  const [thinnest] = extremes(stack);
  const rows2 = SPOT_WELD_TABLES.map((t) => rowFor(t.rows, thinnest, (r) => r.thickness));
  const [a, b2] = SPOT_WELD_TABLES.map((t) => t.name);
  const most = (of) => Math.max(...rows2.map(of));
  const pitch = most((r) => r.pitch) * (layers > 2 ? THREE_SHEETS : 1);
  const half = most((r) => r.overlap) / 2;
  const [, order] = rowFor(WELD_EDGE_TABLE.rows, thinnest, ([t]) => t);
  return {
    edge: Math.max(half, order),
    edgeSource: [
      cite(`${a}, ${b2}`, { rule: "\xBD overlap", size: half, basis: "stricter" }),
      cite(WELD_EDGE_TABLE.source, { size: order })
    ],
    pitch,
    pitchSource: [
      ...SPOT_WELD_TABLES.map((t) => cite(`${t.name}: ${t.source}`, { basis: "stricter" })),
      ...layers > 2 ? [cite(NOTES, { rule: `\xD7 ${THREE_SHEETS} (n = 3)` })] : []
    ],
    usualPitch: 1.25 * pitch,
    bend: most((r) => r.electrode) / 2 + ELECTRODE_CLEARANCE,
    bendSource: [cite(`${a}, ${b2}`, { rule: "\xBD D(electrode) + #", size: 1.5 })],
    holes: stack.map(() => null)
  };
}
function remarks3(stack, { throat }, place2) {
  const reach2 = throat === null ? [] : throatRemarks(throat, place2.reach());
  return [
    ...sheetRemarks(stack),
    ...metalRemarks(stack),
    ...layerRemarks(place2.layers, stack.length),
    ...reach2
  ];
}
function sheetRemarks(stack) {
  const [thin, thick] = extremes(stack);
  const [least, most] = ISO_RANGE;
  const found = [];
  const scope = [cite("ISO 14373")];
  if (thick > 3 * thin)
    found.push(
      remark("weld-ratio", "warning", {
        value: thick / thin,
        limit: 3,
        values: { thin, thick },
        source: scope
      })
    );
  if (thin < least || thick > most)
    found.push(
      remark("weld-thickness", "warning", {
        value: thin < least ? thin : thick,
        limit: thin < least ? least : most,
        unit: "mm",
        values: { least, most },
        source: scope
      })
    );
  if (stackThickness(stack) > 4 * thin)
    found.push(
      remark("weld-stack", "warning", {
        value: stackThickness(stack),
        limit: 4 * thin,
        unit: "mm",
        values: {},
        source: [cite(NOTES)]
      })
    );
  return found;
}
function metalRemarks(stack) {
  const zinc = stack.find((s) => s.material.zinc);
  const foreign = stack.find((s) => s.material.weldSchedule !== "low-carbon steel");
  const found = [];
  if (zinc !== void 0)
    found.push(
      remark("weld-zinc", "warning", {
        values: { weld: "spot-weld" },
        source: [cite("29 CFR 1910.252"), cite("29 CFR 1910.1000"), cite("BS 1140")]
      })
    );
  if (foreign !== void 0) {
    const weldable = foreign.material.weldSchedule !== null;
    found.push(
      remark("weld-schedule", weldable ? "warning" : "error", {
        values: { material: foreign.material.name, weldable },
        source: [cite("table A, table B"), ...COMMON_PRACTICE]
      })
    );
  }
  return found;
}
function layerRemarks(layers, meant2) {
  if (layers <= meant2) return [];
  return [
    remark("weld-layers", layers > 3 ? "error" : "warning", {
      value: layers,
      limit: meant2,
      values: {},
      source: [cite("ISO 14373")]
    })
  ];
}
function throatRemarks(throat, reach2) {
  if (reach2 <= throat) return [];
  return [
    remark("weld-throat", "warning", {
      value: reach2,
      limit: throat,
      unit: "mm",
      values: {},
      source: [cite("job")]
    })
  ];
}
var spotWeld = fastenerKind({
  name: "spot-weld",
  options: (k) => ({ throat: k.maybe(k.size({ max: 3e3 })) }),
  needs: spotWeldNeeds,
  remarks: remarks3
});

// packages/core/src/joining/kinds.ts
var FASTENER_KINDS = frozen([spotWeld, blindRivet, screw, plugWeld]);

// packages/core/src/job/name.ts
var LONGEST_NAME = 40;
var LONGEST_LINE = 200;
var NAME2 = /^[\p{L}\p{N}][\p{L}\p{M}\p{N}_-]*$/u;
var DEVICE = /^(con|prn|aux|nul|com\d|lpt\d)$/i;
var OBJECT = /^(assembly|exploded)$/i;
function isName(text2) {
  return [...text2].length <= LONGEST_NAME && NAME2.test(text2) && !DEVICE.test(text2) && !OBJECT.test(text2);
}
var nameError = (input) => {
  if (typeof input !== "string") return void 0;
  const { length } = [...input];
  if (input === "") return "an empty name given; letters, digits, - and _ allowed";
  if (length > LONGEST_NAME) return `a name of ${length} characters given, up to ${LONGEST_NAME} allowed`;
  if (DEVICE.test(input)) return `${quoted(input)} given; some systems keep that name for a device`;
  if (OBJECT.test(input)) return `${quoted(input)} given; pictures of the whole object have that name`;
  return `${quoted(input)} given; letters, digits, - and _ allowed, a letter or digit first`;
};
var nameSchema = string2().check(refine(isName, { error: (issue2) => nameError(issue2.input) ?? "not a name" }));
var lineSchema = string2().check(
  refine((text2) => text2.length <= LONGEST_LINE, { error: `longer than ${LONGEST_LINE} characters` }),
  refine((text2) => !hasHidden(text2), {
    error: (issue2) => `${quoted(String(issue2.input))} given; one line of plain text without control characters allowed`
  })
);

// packages/core/src/job/joints.ts
var LEAST_PITCH = 1;
var USUAL_CLEARANCE = 0.2;
var MOST_FASTENERS = 500;
var end = string2().check(
  refine((text2) => splitName(text2) !== null, {
    error: (issue2) => `${quoted(String(issue2.input))} given; write part.site, such as body.west or end-1.rim`
  })
);
function jointSchema(kit) {
  const words = [...FASTENER_KINDS.map((k) => k.name), "none"];
  const kinds2 = Object.fromEntries(FASTENER_KINDS.map((k) => [k.name, optional(askSchema(kit, k))]));
  const one = pipe(
    strictGroup(kinds2),
    transform((given2, context) => {
      const keys = Object.keys(given2).filter((k) => given2[k] !== void 0);
      if (keys.length === 1) return given2;
      context.issues.push({
        code: "custom",
        input: given2,
        message: `${keys.length} ways of fastening given, one allowed`
      });
      return NEVER;
    })
  );
  const offset2 = kit.or(pipe(union([number2(), string2()]), signedLength(kit)), 0);
  return strictGroup({
    name: nameSchema,
    from: end,
    to: end,
    by: kit.either(kit.oneOf(words), one, `one of ${words.join(", ")}`),
    shift: kit.or(strictGroup({ across: offset2, up: offset2 }), {
      across: 0,
      up: 0
    }),
    clearance: kit.instead(kit.size({ min: 0, max: 20 }), `${USUAL_CLEARANCE} mm`)
  });
}
function signedLength(kit) {
  const length = kit.size();
  return transform((value2, context) => {
    const negative = typeof value2 === "number" ? value2 < 0 : value2.trim().startsWith("-");
    const plain3 = typeof value2 === "number" ? Math.abs(value2) : value2.trim().replace(/^-/, "");
    const read2 = plain3 === 0 ? { success: true, data: 0 } : length.safeParse(plain3);
    if (read2.success) return negative ? -read2.data : read2.data;
    context.issues.push({
      code: "custom",
      input: value2,
      message: `${quoted(String(value2))} is not a length`
    });
    return NEVER;
  });
}
function askSchema(kit, kind) {
  return strictGroup({
    count: kit.maybe(kit.count(1, MOST_FASTENERS)),
    pitch: kit.maybe(kit.size({ min: LEAST_PITCH, max: 2e3 })),
    ...kind.options(kit)
  });
}
function jointsOf(list2, kit) {
  return list2.map((j, i) => {
    const [from, to] = [splitName(j.from), splitName(j.to)];
    return {
      name: j.name,
      from: { piece: from?.[0] ?? "", site: from?.[1] ?? "" },
      to: { piece: to?.[0] ?? "", site: to?.[1] ?? "" },
      by: byOf(j.by, kit),
      shift: j.shift,
      clearance: j.clearance,
      path: ["joints", i]
    };
  });
}
function byOf(by, kit) {
  if (by === "none") return null;
  const [name, given2] = typeof by === "string" ? [by, {}] : Object.entries(by).find(([, v]) => v !== void 0);
  const kind = FASTENER_KINDS.find((k) => k.name === name);
  const ask = typeof by === "string" ? askSchema(kit, kind).parse({}) : given2;
  return { kind, ask };
}
function jointTwins(list2) {
  if (!Array.isArray(list2)) return [];
  const names = list2.map((j) => j?.name);
  const first = new Map(names.map((name, i) => [name, i]).toReversed());
  return names.flatMap((name, i) => {
    const before = first.get(name);
    if (typeof name !== "string" || before === void 0 || before === i) return [];
    const path = ["joints", i, "name"];
    return [
      {
        code: "name-twice",
        path,
        message: `the name ${quoted(name)} is taken by joint ${before + 1}`,
        fix: "Give every joint a name of its own"
      }
    ];
  });
}

// packages/core/src/job/measured.ts
function unreadSize(data2) {
  const given2 = data2?.measured;
  if (typeof given2 !== "object" || given2 === null || !Object.hasOwn(given2, "__proto__")) return [];
  return [nameProblem("__proto__")];
}
var nameProblem = (key) => ({
  code: "size-name",
  path: ["measured", key],
  message: `${quoted(key)} given`,
  fix: "Write part.size, such as body.insideWidth",
  at: "key"
});
function measuredByPart(given2, parts2) {
  const problems2 = [];
  const byPart = /* @__PURE__ */ new Map();
  for (const [key, value2] of Object.entries(given2)) {
    const path = ["measured", key];
    const split = splitName(key);
    if (split === null) problems2.push(nameProblem(key));
    else if (!parts2.includes(split[0]))
      problems2.push({
        code: "part-unknown",
        path,
        message: `there is no part ${quoted(split[0])}`,
        fix: suggestion(split[0], parts2),
        at: "key"
      });
    else byPart.set(split[0], [...byPart.get(split[0]) ?? [], { size: split[1], value: value2, path }]);
  }
  if (problems2.length > 0) throw new JobError(problems2);
  return byPart;
}
function asMade(params, sizes2, measured) {
  const followed2 = measured.map(({ size: size4 }) => sizes2.find((s) => s.name === size4)?.follows);
  return measured.reduce((p, { size: size4, value: value2, path }, i) => {
    const known = sizes2.find((s) => s.name === size4);
    if (known === void 0)
      throw new JobError([
        {
          code: "size-unknown",
          path,
          message: `there is no size ${quoted(size4)} to measure`,
          fix: suggestion(
            size4,
            sizes2.map((s) => s.name)
          ),
          at: "key"
        }
      ]);
    const first = measured[followed2.indexOf(known.follows)];
    if (first !== measured[i])
      throw new JobError([
        {
          code: "measured-twice",
          path,
          message: `${size4} and ${first.size} are the same measure taken twice`,
          fix: "Give one of the two",
          at: "key"
        }
      ]);
    const at = known.follows.split(".");
    return withValue(p, at, valueAt(p, at) + value2 - known.value);
  }, params);
}

// packages/core/src/stock/gauges.ts
var FIRST = 10;
var rows = (values11) => Object.freeze(Object.fromEntries(values11.map((v, i) => [FIRST + i, v])));
var CHARTS = "two independent charts that agree: rustychevy.com/guage_chart.htm, greaseralley.com 2010-12-09";
var GAUGE_SYSTEMS = frozen([
  {
    name: "steel",
    title: "Manufacturers' Standard Gauge, uncoated steel",
    source: CHARTS,
    inches: rows([
      0.1345,
      0.1196,
      0.1046,
      0.0897,
      0.0747,
      0.0673,
      0.0598,
      0.0538,
      0.0478,
      0.0418,
      0.0359,
      0.0329,
      0.0299,
      0.0269,
      0.0239,
      0.0209,
      0.0179,
      0.0164,
      0.0149,
      0.0135,
      0.012
    ])
  },
  {
    name: "galvanised",
    title: "galvanised sheet gauge, coating included",
    source: CHARTS,
    inches: rows([
      0.1382,
      0.1233,
      0.1084,
      0.0934,
      0.0785,
      0.071,
      0.0635,
      0.0575,
      0.0516,
      0.0456,
      0.0396,
      0.0366,
      0.0336,
      0.0306,
      0.0276,
      0.0247,
      0.0217,
      0.0202,
      0.0187,
      0.0172,
      0.0157
    ])
  },
  {
    name: "stainless",
    title: "US Standard Gauge, used for stainless steel",
    source: "15 U.S.C. \xA7206 to gauge 21; 22 to 30 from memory, agreeing with a printed stainless column",
    inches: rows([
      0.140625,
      0.125,
      0.109375,
      0.09375,
      0.078125,
      0.0703125,
      0.0625,
      0.05625,
      0.05,
      0.04375,
      0.0375,
      0.034375,
      0.03125,
      0.028125,
      0.025,
      0.021875,
      0.01875,
      0.0171875,
      0.015625,
      0.0140625,
      0.0125
    ])
  },
  {
    name: "aluminium",
    title: "Brown & Sharpe gauge, aluminium, brass and copper",
    source: CHARTS,
    inches: rows([
      0.1019,
      0.0907,
      0.0808,
      0.072,
      0.0641,
      0.0571,
      0.0508,
      0.0453,
      0.0403,
      0.0359,
      0.032,
      0.0285,
      0.0253,
      0.0226,
      0.0201,
      0.0179,
      0.0159,
      0.0142,
      0.0126,
      0.0113,
      0.01
    ])
  }
]);
function gaugeSystem(name) {
  return GAUGE_SYSTEMS.find((s) => s.name === name);
}
var mmText = (inches) => `${plainNumber(inches * MM_PER_INCH, 3)} mm`;
function gaugeMeanings(n2) {
  return GAUGE_SYSTEMS.filter((s) => s.inches[n2] !== void 0).map((s) => `${s.name} ${mmText(s.inches[n2])}`).join(", ");
}
function gaugeThickness(name, n2, path = []) {
  const system = gaugeSystem(name);
  const inches = system.inches[n2];
  if (inches !== void 0) return inches * MM_PER_INCH;
  const near2 = Object.keys(system.inches).map(Number).toSorted((a, b2) => Math.abs(a - n2) - Math.abs(b2 - n2) || a - b2).slice(0, 2).map((g) => `${g} (${mmText(system.inches[g])})`);
  return fail(
    "gauge-unknown",
    path,
    `gauge ${n2} given, the ${name} system has whole numbers from 10 to 30`,
    `Nearest: ${near2.join(" and ")}`
  );
}

// packages/core/src/stock/least-radius.ts
function timesThickness(factor, source) {
  return { at: (t) => factor * t, source };
}
var DIN_6935_RADII = [
  [1, 1, 1.2, 1.6],
  [1.5, 1.6, 2, 2.5],
  [2.5, 2.5, 3, 4],
  [3, 3, 4, 5],
  [4, 5, 5, 6],
  [5, 6, 8, 8],
  [6, 8, 10, 10],
  [7, 10, 12, 12],
  [8, 12, 16, 16]
];
function din6935Radius(tensile) {
  const column = { 390: 1, 490: 2, 640: 3 }[tensile];
  return {
    at: (t, angle2 = 90) => {
      const i = DIN_6935_RADII.findIndex(([upTo]) => t <= upTo + 1e-9);
      const [row, steps] = [i < 0 ? DIN_6935_RADII.length : i, angle2 > 120 ? 1 : 0];
      const last = DIN_6935_RADII.at(-1);
      return DIN_6935_RADII[row + steps]?.[column] ?? last[column] / last[0] * (t + steps);
    },
    source: "DIN 6935 (1975-10), conservative: thin mild steel is often bent at R \u2264 T and hemmed flat"
  };
}
var AIRCRAFT_RADII = {
  "304": {
    rows: [
      [0.04, 0.094],
      [0.063, 0.125],
      [0.09, 0.188]
    ],
    source: "aircraft-type minimums, bjg-design.com shbend table, row 304"
  },
  "6061-T6": {
    rows: [
      [0.063, 0.188],
      [0.125, 0.5]
    ],
    source: "aircraft-type minimums, bjg-design.com shbend table, row 6061-T6"
  },
  "5052": {
    rows: [
      [0.032, 0],
      [0.064, 1.5 * 0.064],
      [0.128, 2 * 0.128]
    ],
    source: "AC 43.13-1B table 4-6, row 5052-H34, the upper end; from memory"
  }
};
function aircraftRadius(row) {
  const { rows: rows2, source } = AIRCRAFT_RADII[row];
  return {
    at: (t) => {
      const inch = t / 25.4;
      const found = rows2.find(([upTo]) => inch <= upTo * 1.02);
      const [thickness, radius] = rows2.at(-1);
      return 25.4 * (found?.[1] ?? radius / thickness * inch);
    },
    source
  };
}
var ALUMINIUM_RADII = {
  "1100-H14": [0, 0, 0, 1, 1, 1.5],
  "3003-H14": [0, 0, 0, 1, 1, 1.5],
  "5052-H32": [0, 0, 1, 1.5, 1.5, 1.5],
  "6061-T6": [1, 1, 1.5, 2.5, 3, 3.5]
};
var STEPS_MM = [1 / 64, 1 / 32, 1 / 16, 1 / 8, 3 / 16, 1 / 4].map((i) => i * 25.4);
function aluminiumRadius(temper) {
  const row = ALUMINIUM_RADII[temper];
  return {
    at: (t) => {
      const i = STEPS_MM.findIndex((s) => t <= s * 1.02);
      return row[i === -1 ? row.length - 1 : i] * t;
    },
    source: temper === "6061-T6" ? "bjg-design.com shbend table, 90\xB0 cold bends" : `Aluminum Design Manual 2005 table 3-1 p. VII-78, row ${temper}, 90\xB0 cold bends`
  };
}

// packages/core/src/stock/materials.ts
var MEDIUM = "Machinery's Handbook 31st ed. p. 1421: half-hard copper and brass, soft steel, aluminium, 0.64T + 1.57R";
var SOFT = "Machinery's Handbook 31st ed. p. 1421: soft brass, soft copper, 0.55T + 1.57R";
var K_MEDIUM = 0.64 / (Math.PI / 2);
var K_SOFT = 0.55 / (Math.PI / 2);
var MATERIALS = frozen([
  {
    name: "mild-steel",
    title: "cold-rolled mild steel DC01",
    density: 7850,
    tensile: [270, 410],
    yield: 200,
    modulus: 210,
    k: K_MEDIUM,
    kSource: `${MEDIUM}; DC01 is soft steel by strength, though the book lists cold-rolled steel as hard`,
    leastRadius: din6935Radius(390),
    gauges: "steel",
    zinc: false,
    weldSchedule: "low-carbon steel",
    source: "EN 10130 by vinco.es low-carbon strip page (tensile); density and modulus from memory"
  },
  {
    name: "galvanised-steel",
    title: "hot-dip galvanised steel DX51D+Z",
    density: 7850,
    tensile: [270, 500],
    yield: 290,
    modulus: 210,
    k: K_MEDIUM,
    kSource: MEDIUM,
    leastRadius: din6935Radius(390),
    // the row of its usual strength; the grade allows up to 500 N/mm²
    gauges: "galvanised",
    zinc: true,
    weldSchedule: "low-carbon steel",
    source: "EN 10346, from memory; thickness includes the coating"
  },
  {
    name: "stainless-304",
    title: "stainless steel 304 (1.4301)",
    density: 7930,
    tensile: [540, 750],
    yield: 230,
    modulus: 200,
    k: K_MEDIUM,
    kSource: `${MEDIUM}; stainless is not listed, taken as the middle group`,
    leastRadius: timesThickness(
      1,
      "stainless makers' guides, \xBDT to 1T annealed, the stricter taken; from memory"
    ),
    strictRadius: aircraftRadius("304"),
    gauges: "stainless",
    zinc: false,
    weldSchedule: "own",
    source: "EN 10088-2, from memory; density as printed"
  },
  {
    name: "stainless-430",
    title: "stainless steel 430 (1.4016)",
    density: 7700,
    tensile: [430, 600],
    yield: 260,
    modulus: 220,
    k: K_MEDIUM,
    kSource: `${MEDIUM}; stainless is not listed, taken as the middle group`,
    leastRadius: timesThickness(1, "stainless makers' guides, about 1T; from memory"),
    gauges: "stainless",
    zinc: false,
    weldSchedule: "own",
    source: "EN 10088-2, from memory"
  },
  {
    name: "aluminium-1050-h14",
    title: "aluminium 1050A-H14",
    density: 2700,
    tensile: [105, 145],
    yield: 85,
    modulus: 69,
    k: K_MEDIUM,
    kSource: MEDIUM,
    leastRadius: aluminiumRadius("1100-H14"),
    gauges: "aluminium",
    zinc: false,
    weldSchedule: null,
    source: "EN 485-2, from memory"
  },
  {
    name: "aluminium-3003-h14",
    title: "aluminium 3003-H14",
    density: 2730,
    tensile: [145, 185],
    yield: 125,
    modulus: 69,
    k: K_MEDIUM,
    kSource: MEDIUM,
    leastRadius: aluminiumRadius("3003-H14"),
    gauges: "aluminium",
    zinc: false,
    weldSchedule: null,
    source: "EN 485-2, from memory"
  },
  {
    name: "aluminium-5052-h32",
    title: "aluminium 5052-H32",
    density: 2680,
    tensile: [210, 260],
    yield: 130,
    modulus: 70,
    k: K_MEDIUM,
    kSource: MEDIUM,
    leastRadius: aluminiumRadius("5052-H32"),
    strictRadius: aircraftRadius("5052"),
    gauges: "aluminium",
    zinc: false,
    weldSchedule: null,
    source: "EN 485-2, from memory"
  },
  {
    name: "aluminium-6061-t6",
    title: "aluminium 6061-T6",
    density: 2700,
    tensile: [290, 310],
    yield: 275,
    modulus: 69,
    k: K_MEDIUM,
    kSource: MEDIUM,
    leastRadius: aluminiumRadius("6061-T6"),
    strictRadius: aircraftRadius("6061-T6"),
    gauges: "aluminium",
    zinc: false,
    weldSchedule: null,
    source: "EN 485-2, from memory; cracks on tight bends"
  },
  {
    name: "copper",
    title: "copper Cu-DHP R220",
    density: 8930,
    tensile: [220, 300],
    yield: 140,
    modulus: 125,
    k: K_SOFT,
    kSource: SOFT,
    leastRadius: timesThickness(0.5, "soft copper 0 to \xBDT, the stricter taken; from memory"),
    gauges: "aluminium",
    zinc: false,
    weldSchedule: null,
    source: "typical values, from memory"
  },
  {
    name: "brass",
    title: "brass CuZn37 R300",
    density: 8440,
    tensile: [300, 440],
    yield: 175,
    modulus: 107,
    k: K_MEDIUM,
    kSource: MEDIUM,
    leastRadius: timesThickness(1, "half-hard brass \xBDT to 1T, the stricter taken; from memory"),
    gauges: "aluminium",
    zinc: false,
    weldSchedule: null,
    source: "typical values, from memory"
  },
  {
    name: "tinplate",
    title: "tinplate T2/T3",
    density: 7850,
    tensile: [330, 420],
    yield: 280,
    modulus: 205,
    k: K_MEDIUM,
    kSource: MEDIUM,
    leastRadius: timesThickness(0.5, "tinplate 0 to \xBDT, the stricter taken; from memory"),
    gauges: null,
    zinc: false,
    weldSchedule: "low-carbon steel",
    source: "EN 10202, from memory"
  }
]);
var MATERIAL_NAMES = frozen(MATERIALS.map((m) => m.name));

// packages/core/src/job/schema.ts
var THICKNESS = { min: 0.1, max: 6 };
var GREATEST_RADIUS = 100;
var MOST_PARTS = 500;
var MOST_PIECES = 1e4;
var MOST_JOINTS = 500;
var PART_KEYS = ["name", "family", "quantity", "note", "stock", "bending"];
var sharedOf = (kit) => ({ stock: stockSchema(kit), bending: bendingSchema(kit) });
var envelope = (kit, { stock, bending }, parts2) => strictGroup({
  units: _enum(["mm", "in"]),
  name: kit.or(lineSchema, ""),
  note: kit.or(lineSchema, ""),
  stock: optional(stock),
  bending: optional(bending),
  parts: kit.list(parts2, 1, MOST_PARTS),
  joints: kit.or(kit.list(jointSchema(kit), 0, MOST_JOINTS), []),
  sizes: optional(array(unknown())),
  // rows that others lay over the job, each a job of its own
  measured: kit.or(catchall(object({}), kit.size()), {})
});
function jobSchemas(kit, families) {
  const shared = sharedOf(kit);
  const built = /* @__PURE__ */ new Map();
  const any = () => kit.byName(
    "family",
    families.map((f) => strictGroup({ family: _enum([f.name]) }))
  );
  const build11 = (name) => {
    const family = families.find((f) => f.name === name);
    const schema = family === void 0 ? any() : familySchema(kit, family, shared);
    if (family !== void 0) built.set(name, schema);
    return schema;
  };
  return {
    kit,
    envelope: envelope(kit, shared, unknown()),
    part: (family) => built.get(family) ?? build11(family)
  };
}
function familySchema(kit, family, { stock, bending }) {
  return strictGroup({
    name: nameSchema,
    family: _enum([family.name]),
    quantity: kit.instead(kit.count(1, MOST_PIECES), 1),
    note: kit.or(lineSchema, ""),
    stock: optional(stock),
    bending: optional(bending),
    ...family.params(kit)
  });
}
function stockSchema(kit) {
  const systems = GAUGE_SYSTEMS.map((s) => s.name);
  const number3 = wholeNumber();
  return strictGroup({
    material: kit.oneOf(MATERIAL_NAMES),
    thickness: optional(kit.size(THICKNESS)),
    gauge: optional(
      kit.either(
        number3,
        strictGroup({ system: kit.oneOf(systems), number: number3 }),
        "a gauge number such as 20, or { system, number },"
      )
    )
  });
}
function bendingSchema(kit) {
  const insideRadius = optional(kit.size({ min: 0, max: GREATEST_RADIUS }));
  const options = RULE_KINDS.map(
    (r) => strictGroup({ rule: _enum([r.name]), insideRadius, ...r.constants })
  );
  return kit.byName("rule", options);
}

// packages/core/src/job/sheet.ts
function sheetOf(stock, bending, strips) {
  const material = MATERIALS.find((m) => m.name === stock.material);
  const thickness = thicknessOf(stock, material);
  const kind = RULE_KINDS.find((k) => k.name === bending.rule);
  const rule = kind.make(bending, material, strips);
  return { material, sheet: { thickness, insideRadius: bending.insideRadius ?? thickness, rule } };
}
function thicknessOf({ thickness, gauge }, material) {
  if (thickness !== void 0 && gauge !== void 0)
    return fail("thickness-twice", ["gauge"], "thickness and gauge given", "Give one of the two");
  if (thickness !== void 0) return thickness;
  if (gauge === void 0)
    return fail(
      "thickness-missing",
      [],
      "no thickness",
      "Give thickness, or gauge with a material that has gauges"
    );
  if (typeof gauge !== "number") return gaugeThickness(gauge.system, gauge.number, ["gauge"]);
  if (material.gauges !== null) return gaugeThickness(material.gauges, gauge, ["gauge"]);
  const systems = GAUGE_SYSTEMS.map((s) => s.name).join(", ");
  const means = gaugeMeanings(gauge);
  return fail(
    "gauge-system",
    ["gauge"],
    `gauge ${gauge} given for ${material.name}, which has no gauge system of its own`,
    `Write gauge: { system: \u2026, number: ${gauge} } with ${systems}${means === "" ? "" : `; ${gauge} is ${means}`}`
  );
}

// packages/core/src/job/read.ts
var DEFAULT_BENDING = { rule: "k-factor" };
function jobReader(families = FAMILIES) {
  const kept = /* @__PURE__ */ new Map();
  const schemasFor = (unit2) => {
    const schemas = kept.get(unit2) ?? jobSchemas(paramKit(unit2), families);
    kept.set(unit2, schemas);
    return schemas;
  };
  return (data2, context = {}) => {
    const schemas = schemasFor(data2?.units === "in" ? "in" : "mm");
    return read(data2, { made: /* @__PURE__ */ new Map(), strips: [], ...context, families, schemas });
  };
}
function readJob(data2, families = FAMILIES, context = {}) {
  return jobReader(families)(data2, context);
}
function read(data2, given2) {
  const problems2 = [];
  const { kit, envelope: envelope2 } = given2.schemas;
  const head = parse2(envelope2, data2, [], problems2);
  const list2 = data2?.parts;
  const parts2 = readParts(
    Array.isArray(list2) && list2.length <= MOST_PARTS ? list2 : [],
    head,
    given2,
    problems2
  );
  problems2.push(
    ...unreadSize(data2),
    ...twins(list2),
    ...jointTwins(data2?.joints)
  );
  const unique = [...new Map(problems2.map((p) => [keyOf(p), p])).values()];
  if (unique.length > 0 || head === null) throw new JobError(named(unique, list2));
  const { name, note, measured, joints } = head;
  const drawn = Object.keys(measured).length === 0 ? null : read({ ...data2, measured: {} }, given2);
  return { units: kit.unit, name, note, parts: parts2, joints: jointsOf(joints, kit), drawn };
}
function readParts(list2, head, given2, problems2) {
  const { made, schemas } = given2;
  const { unit: units } = schemas.kit;
  const order = list2.map((p) => String(p?.name ?? ""));
  const [measured] = head === null ? [] : attempt(problems2, () => measuredByPart(head.measured, order));
  const known = /* @__PURE__ */ new Map();
  const follows2 = new Map(list2.map((raw, i) => [order[i], followedParts(raw)]));
  return list2.flatMap((raw, i) => {
    const path = ["parts", i];
    const name = order[i];
    const keep = (part2) => {
      const read2 = withMeasured(part2, measured?.get(name) ?? [], units);
      known.set(name, sizesOf(read2.family, read2.asMade, read2.sheet));
      return read2;
    };
    const stays = made.get(name);
    if (stays !== void 0) return attempt(problems2, () => keep({ ...stays, made: true }));
    const [plain3] = attempt(problems2, () => resolved(raw, path, name, { known, order, follows: follows2, units }));
    if (plain3 === void 0) return [];
    const schema = schemas.part(plain3?.family);
    const part = parse2(schema, plain3, path, problems2);
    if (part === null || head === null) return [];
    return attempt(problems2, () => keep(jobPart(part, head, i, given2)));
  });
}
function named(problems2, parts2) {
  return problems2.map((p) => {
    const [first, index] = p.path;
    const name = first === "parts" && Array.isArray(parts2) ? parts2[index]?.name : void 0;
    return typeof name === "string" && isName(name) ? { ...p, part: name } : p;
  });
}
var keyOf = ({ code, message, path }) => [code, message, ...path].join("\n");
function parse2(schema, data2, path, problems2) {
  const read2 = schema.safeParse(data2);
  if (read2.success) return read2.data;
  for (const p of problemsOf(read2.error.issues, data2)) problems2.push({ ...p, path: [...path, ...p.path] });
  return null;
}
function attempt(problems2, work2) {
  try {
    return [work2()];
  } catch (error) {
    if (!(error instanceof JobError)) throw error;
    problems2.push(...error.problems);
    return [];
  }
}
function jobPart(part, job2, i, { families, strips }) {
  const path = ["parts", i];
  const family = families.find((f) => f.name === part.family);
  const { stock, stockPath } = part.stock ? { stock: part.stock, stockPath: [...path, "stock"] } : { stock: job2.stock, stockPath: ["stock"] };
  if (stock === void 0)
    throw new JobError([
      {
        code: "stock-missing",
        path,
        message: "there is no stock for this part",
        fix: "Give stock: with a material and a thickness, for the job or for the part"
      }
    ]);
  const bending = part.bending ?? job2.bending ?? DEFAULT_BENDING;
  const { material, sheet } = within(stockPath, () => sheetOf(stock, bending, strips));
  const params = Object.fromEntries(Object.entries(part).filter(([key]) => !PART_KEYS.includes(key)));
  const { name, quantity, note } = part;
  const bendingPath = part.bending === void 0 ? ["bending"] : [...path, "bending"];
  const read2 = { name, family, params, quantity, note, material, sheet, path, bendingPath };
  return { ...read2, asMade: params, measured: [], made: false };
}
function withMeasured(part, measured, units) {
  if (measured.length === 0) return part;
  const { family, params, sheet } = part;
  const asMade2 = asMade(params, sizesOf(family, params, sheet), measured);
  try {
    family.part(asMade2, sheet);
  } catch (error) {
    const [refusal2] = error instanceof JobError ? error.refusals : [];
    if (refusal2 === void 0) throw error;
    throw new JobError([
      {
        code: "measured-impossible",
        path: measured[0].path,
        message: `no ${family.name} can measure so: ${worded(refusal2, units).message}`,
        fix: "Measure again, or check the size it is written for"
      }
    ]);
  }
  return { ...part, asMade: asMade2, measured, made: true };
}
function twins(list2) {
  if (!Array.isArray(list2)) return [];
  const first = /* @__PURE__ */ new Map();
  const names = list2.map(
    (p) => typeof p?.name === "string" ? p.name.normalize("NFC").toLowerCase() : null
  );
  return names.flatMap((name, i) => {
    const before = name === null ? void 0 : first.get(name);
    if (before === void 0) {
      if (name !== null) first.set(name, i);
      return [];
    }
    const message = `the name ${quoted(list2[i].name)} is taken by part ${before + 1}`;
    return [
      { code: "name-twice", path: ["parts", i, "name"], message, fix: "Give every part a name of its own" }
    ];
  });
}

// tests/kit/.prof.ts
import { readFileSync } from "node:fs";
import { parse as parse3 } from "yaml";
var data = parse3(readFileSync("examples/harvest-carrier.yaml", "utf8"));
var mode = process.argv[2];
var [b] = readJob(data).parts;
var { job, parts } = planJob(readJob(data));
var given = parts.map(({ name, quantity, material, made, stands }) => ({ name, quantity, material, made, ...stands }));
var work = mode === "fit" ? () => assemble(given, job.joints) : mode === "plan" ? () => planJob(readJob(data)) : () => {
  const part = b.family.part(b.params, b.sheet);
  return [unfold(part), form(part)];
};
var n = mode === "pattern" ? 8e3 : 800;
for (let i = 0; i < n / 4; i++) work();
var rs = [];
for (let r = 0; r < 30; r++) {
  const t = process.cpuUsage();
  for (let i = 0; i < n / 20; i++) work();
  const u = process.cpuUsage(t);
  rs.push((u.user + u.system) / 1e3 / (n / 20));
}
rs.sort((a, b2) => a - b2);
console.log(mode, "min", rs[0].toFixed(4), "med", rs[15].toFixed(4));
