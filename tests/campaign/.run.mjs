// tests/campaign/run.ts
import { createHash } from "node:crypto";
import { writeFileSync } from "node:fs";
import { join as join2 } from "node:path";
import fc5 from "fast-check";

// tests/campaign/endure.ts
import {
  JobError,
  jobReader,
  planJob,
  verifyFlat,
  verifyForm
} from "@tinwright/core";
import { jobFiles, partDxf, TABLE_STYLE } from "@tinwright/files";
import { DEFAULT_SHOP, jobFindings } from "@tinwright/shop";
import { tellFinding } from "@tinwright/words";

// tests/kit/cut-layer.ts
var SAGITTA = 1e-3;
function cutLoops(dxf) {
  const entities = entityList(dxf).filter(
    (e) => text(e, 8) === "CUT" || ["VERTEX", "SEQEND"].includes(e.kind)
  );
  const loops = [];
  entities.forEach((e, i) => {
    if (e.kind === "CIRCLE") loops.push(circle(number(e, 10), number(e, 20), number(e, 40)));
    if (e.kind === "LWPOLYLINE") loops.push(flatten(lightCorners(e.tags)));
    if (e.kind === "POLYLINE") {
      const end = entities.findIndex((x, j) => j > i && x.kind === "SEQEND");
      loops.push(
        flatten(
          entities.slice(i + 1, end).map((v) => ({ x: number(v, 10), y: number(v, 20), bulge: number(v, 42) }))
        )
      );
    }
  });
  if (loops.length === 0) throw new Error("no loops on CUT");
  return loops;
}
function entityList(dxf) {
  const lines = dxf.split(/\r?\n/);
  const tags = [];
  for (let i = 0; i + 1 < lines.length; i += 2) tags.push([Number(lines[i]), (lines[i + 1] ?? "").trim()]);
  const start = tags.findIndex(([c, v]) => c === 2 && v === "ENTITIES");
  const end = tags.findIndex(([c, v], i) => i > start && c === 0 && v === "ENDSEC");
  const found = [];
  for (const tag of tags.slice(start + 1, end)) {
    if (tag[0] === 0) found.push({ kind: tag[1], tags: [] });
    else found.at(-1)?.tags.push(tag);
  }
  return found;
}
var text = (e, code) => e.tags.find(([c]) => c === code)?.[1];
var number = (e, code) => Number(text(e, code) ?? 0);
function lightCorners(tags) {
  const corners = [];
  for (const [code, value] of tags) {
    if (code === 10) corners.push({ x: Number(value), y: 0, bulge: 0 });
    const last = corners.at(-1);
    if (last !== void 0 && code === 20) last.y = Number(value);
    if (last !== void 0 && code === 42) last.bulge = Number(value);
  }
  return corners;
}
function circle(x, y, r) {
  const n = Math.ceil(Math.PI / Math.acos(1 - SAGITTA / r));
  return Array.from({ length: n }, (_, i) => [
    x + r * Math.cos(2 * Math.PI * i / n),
    y + r * Math.sin(2 * Math.PI * i / n)
  ]);
}
function flatten(corners) {
  return corners.flatMap((p, i) => {
    const q = corners[(i + 1) % corners.length];
    return [[p.x, p.y], ...arcPoints(p, q)];
  });
}
function arcPoints(p, q) {
  const [dx, dy] = [q.x - p.x, q.y - p.y];
  if (Math.abs(p.bulge) * Math.hypot(dx, dy) < 2 * SAGITTA) return [];
  const middle = { x: (p.x + q.x) / 2 + p.bulge * dy / 2, y: (p.y + q.y) / 2 - p.bulge * dx / 2 };
  const half = Math.tan(Math.atan(p.bulge) / 2);
  return [
    ...arcPoints({ ...p, bulge: half }, { ...middle, bulge: 0 }),
    [middle.x, middle.y],
    ...arcPoints({ ...middle, bulge: half }, q)
  ];
}

// tests/campaign/endure.ts
var SLOW = 1e4;
var NONSENSE = /\bNaN\b|\bundefined\b|\[object |-?\bInfinity\b/;
var read = jobReader();
function endure(data, dxf = "r2000") {
  const start = process.cpuUsage();
  const plan = planned(data);
  if (Array.isArray(plan)) return { made: false, codes: plan };
  for (const part2 of plan.parts) verified(part2);
  for (const part2 of plan.parts) readBack(part2, dxf);
  written(plan, dxf);
  toldInBoth(plan);
  const { user, system } = process.cpuUsage(start);
  if ((user + system) / 1e3 > SLOW)
    throw new Error(`took ${Math.round((user + system) / 1e3)} ms of processor time`);
  return { made: true };
}
function planned(data) {
  try {
    return planJob(read(data));
  } catch (error) {
    if (!(error instanceof JobError)) throw error;
    for (const p of error.problems)
      if (NONSENSE.test(`${p.message} ${p.fix}`) && !NONSENSE.test(JSON.stringify(data)))
        throw new Error(`refused with nonsense: ${p.message} ${p.fix}`);
    const unsound = error.problems.find((p) => p.fix.startsWith("This is a fault of the program"));
    if (unsound !== void 0) throw new Error(`refused as a fault of the program: ${unsound.message}`);
    return error.problems.map((p) => p.code);
  }
}
function verified({ name, flat, formed, part: part2, sheet: sheet2 }) {
  const flaws = [...verifyFlat(flat), ...verifyForm(formed, sheet2.rule.compensates ? part2.asked : [])];
  if (flaws.length > 0) throw new Error(`${name}: ${flaws.map((f) => f.code).join(", ")}`);
}
function readBack(part2, dxf) {
  const { name, flat } = part2;
  const loops = cutLoops(partDxf(part2, { ...TABLE_STYLE, form: dxf }));
  const areas = loops.map((l) => Math.abs(signedArea(l))).toSorted((a, b) => b - a);
  const net = areas.reduce((sum, a, i) => i === 0 ? a : sum - a, 0);
  const allowed = 2e-3 * flat.cutLength + 0.01;
  if (Math.abs(net - flat.area) > allowed)
    throw new Error(`${name}: ${net} mm\xB2 in the file, ${flat.area} planned`);
  const points = loops.flat();
  const [x, y] = [0, 1].map(
    (k) => Math.max(...points.map((p) => p[k])) - Math.min(...points.map((p) => p[k]))
  );
  if (Math.abs((x ?? 0) - flat.blank.max[0]) > 0.01 || Math.abs((y ?? 0) - flat.blank.max[1]) > 0.01)
    throw new Error(`${name}: a blank of ${x} by ${y} in the file, ${flat.blank.max.join(" by ")} planned`);
}
var signedArea = (loop) => loop.reduce((sum, [x = 0, y = 0], i) => {
  const [u = 0, v = 0] = loop[(i + 1) % loop.length] ?? [];
  return sum + (x * v - u * y) / 2;
}, 0);
function written(plan, dxf) {
  const [once, again] = [jobFiles(plan, { dxf }), jobFiles(plan, { dxf })];
  once.forEach((file, i) => {
    if (text2(file) !== text2(again[i]))
      throw new Error(`${file.path}: other bytes the second time`);
    if (/\bNaN\b|\bInfinity\b|\bundefined\b/.test(text2(file)))
      throw new Error(`${file.path}: holds no number`);
  });
}
var text2 = ({ content }) => typeof content === "string" ? content : Buffer.from(content).toString("latin1");
function toldInBoth(plan) {
  for (const finding of jobFindings(plan, DEFAULT_SHOP))
    for (const language of ["en", "de"]) {
      const { message, fix, source } = tellFinding(finding, plan.job.units, language);
      if (NONSENSE.test(`${message} ${fix} ${source}`))
        throw new Error(`${finding.code} in ${language}: ${message} ${fix}`);
    }
}

// tests/campaign/jobs.ts
import { FAMILIES, MATERIAL_NAMES } from "@tinwright/core";
import fc3 from "fast-check";

// tests/kit/arbitrary.ts
import { jobJsonSchema } from "@tinwright/files";
import fc from "fast-check";
var COMMON = ["name", "family", "quantity", "note", "stock", "bending"];
function paramsOf(family) {
  const { $defs, properties: all } = jobJsonSchema([family]);
  const part2 = inlined(all.parts.items.oneOf[0], $defs);
  const properties = Object.fromEntries(
    Object.entries(part2.properties).filter(([key]) => !COMMON.includes(key))
  );
  return group({ ...part2, properties }, family.describe.example);
}
function inlined(node, defs) {
  if (Array.isArray(node)) return node.map((n) => inlined(n, defs));
  if (typeof node !== "object" || node === null) return node;
  const { $ref, ...rest } = node;
  const name = typeof $ref === "string" ? $ref.replace("#/$defs/", "") : "";
  if (name === "follow") return FOLLOW;
  const whole = name === "" ? rest : { ...defs[name], ...rest };
  return Object.fromEntries(Object.entries(whole).map(([k, v]) => [k, inlined(v, defs)]));
}
var FOLLOW = {};
function group(node, example) {
  const properties = node.properties;
  const required = node.required ?? [];
  const model = Object.entries(properties).map(([key, value]) => {
    const shown = example?.[key];
    const there = required.includes(key) ? fc.constant(true) : fc.integer({ min: 1, max: 6 }).map((n) => n <= (shown === void 0 ? 2 : 5));
    return fc.tuple(there, valueFor(value, shown)).map(([wanted, v]) => wanted ? [[key, v]] : []);
  });
  return fc.tuple(...model).map((entries) => Object.fromEntries(entries.flat()));
}
function valueFor(node, example) {
  const branches = node.oneOf ?? node.anyOf;
  const plain = branches?.filter((b) => Object.keys(b).length > 0);
  if (plain !== void 0) return fc.oneof(...plain.map((b) => valueFor({ ...ranged(node), ...b }, example)));
  if (node.const !== void 0) return fc.constant(node.const);
  if (Array.isArray(node.enum)) return fc.constantFrom(...node.enum);
  if (node.type === "object") return group(node, example);
  if (node.type === "array") return listOf(node, example);
  if (node.type === "string") return fc.constantFrom("text");
  if (typeof node.minimum === "number" && node.type === "number")
    return fc.integer({ min: node.minimum, max: node.maximum });
  return size(typeof example === "number" ? example : void 0, node);
}
var ranged = ({ minimum, maximum }) => ({ minimum, maximum });
function listOf(node, example) {
  const items = node.items;
  if (!Array.isArray(example)) return fc.array(valueFor(items, void 0), { minLength: 1, maxLength: 3 });
  return fc.tuple(...example.map((e) => valueFor(items, e)));
}
function size(example, { minimum, maximum }) {
  const [low, high] = example === void 0 ? [100, 6e3] : [Math.max(1, Math.round(example * 50)), Math.round(example * 200)];
  const least = typeof minimum === "number" ? Math.ceil(minimum * 100) : 1;
  const most = typeof maximum === "number" ? maximum * 100 : high;
  return fc.integer({ min: Math.min(Math.max(low, least), most), max: Math.min(high, most) }).map((n) => n / 100);
}
var bendings = [
  { rule: "k-factor", k: 0.42 },
  { rule: "k-factor" },
  { rule: "din-6935" },
  { rule: "handbook", group: "soft" },
  { rule: "handbook", group: "medium" },
  { rule: "handbook", group: "hard" },
  { rule: "linear", perRadius: 0.5, perThickness: 1.5 }
];
var sheets = fc.record({
  thickness: fc.constantFrom(0.4, 0.5, 0.8, 1, 1.2, 1.5, 2, 3),
  ratio: fc.constantFrom(0.25, 0.5, 1, 1.6, 2, 3),
  bending: fc.constantFrom(...bendings)
}).map(({ thickness, ratio, bending }) => ({
  stock: { material: "mild-steel", thickness },
  bending: { ...bending, insideRadius: thickness * ratio }
}));

// tests/kit/carriers.ts
import fc2 from "fast-check";
var hundredths = (min, max) => fc2.integer({ min: Math.round(min * 100), max: Math.round(max * 100) }).map((n) => n / 100);
var fastenings = [
  "spot-weld",
  "blind-rivet",
  "screw",
  "plug-weld",
  { "spot-weld": { count: 7 } },
  { "blind-rivet": { diameter: 4, pitch: 25 } },
  { "blind-rivet": { diameter: "1/8 in", count: 2 } }
];
var follow = (of, less) => less === 0 ? { of } : less > 0 ? { of, less } : { of, plus: -less };
var carriers = fc2.record({
  thickness: fc2.constantFrom(0.6, 0.8, 1, 1.2, 1.5),
  ratio: fc2.constantFrom(0.5, 1, 1.5, 2),
  length: hundredths(150, 500),
  width: hundredths(100, 300),
  height: hundredths(40, 80),
  hem: fc2.constantFrom(
    { type: "closed", length: 12 },
    { type: "open", length: 14, gap: 2 },
    { type: "none" }
  ),
  tabs: hundredths(14, 24),
  // round reliefs are cut from the pattern but fill the formed part, which then stands clearer than is said;
  // square notches between tabs leave bends that taper too steeply for the folding routine of the tests
  tabbed: fc2.constantFrom(
    { on: ["base", "north", "south"], notch: "slant" },
    { on: ["base"], notch: "slant" },
    { on: ["base"], notch: "square" }
  ),
  narrower: fc2.oneof(hundredths(0.2, 3), hundredths(-3, 0.2)),
  shorter: fc2.oneof(hundredths(0, 0.5), hundredths(-3, 3)),
  rise: hundredths(40, 110),
  crown: hundredths(30, 90),
  nip: fc2.constantFrom("auto", 0, 4),
  grip: hundredths(30, 60),
  depth: hundredths(10, 16),
  tab: hundredths(18, 40),
  by: fc2.tuple(fc2.constantFrom(...fastenings), fc2.constantFrom(...fastenings))
}).map((c) => ({
  units: "mm",
  stock: { material: "mild-steel", thickness: c.thickness },
  bending: { rule: "k-factor", k: 0.42, insideRadius: c.thickness * c.ratio },
  parts: [
    {
      name: "body",
      family: "hemmed-channel",
      length: c.length,
      width: c.width,
      height: c.height,
      hem: c.hem,
      endTabs: { length: c.tabs, ...c.tabbed }
    },
    {
      name: "end",
      family: "gusset-end",
      quantity: 2,
      width: follow("body.seatWidth", c.narrower),
      shoulderHeight: c.height - 2,
      height: c.height + c.rise,
      crownWidth: c.crown,
      cornerNip: c.nip
    },
    {
      name: "handle",
      family: "handle",
      span: follow("body.insideLength", 2 * c.thickness + c.shorter),
      width: c.grip,
      sideDepth: c.depth,
      tabs: { length: c.tab }
    }
  ],
  joints: [
    { name: "west", from: "body.west", to: "end-1.rim", by: c.by[0] },
    { name: "east", from: "body.east", to: "end-2.rim", by: c.by[0] },
    { name: "grip-west", from: "end-1.crown", to: "handle.west", by: c.by[1] },
    { name: "grip-east", from: "end-2.crown", to: "handle.east", by: c.by[1] }
  ]
}));

// tests/campaign/jobs.ts
var THICKNESSES = [0.1, 0.3, 0.5, 0.7, 1, 1.2, 1.5, 2, 3, 4, 6];
var RATIOS = [0, 0.05, 0.25, 0.5, 1, 1.6, 3, 5, 8];
var RULES = [
  ...bendings,
  { rule: "nominal" },
  { rule: "k-factor", k: 1 },
  { rule: "linear", perRadius: 2, perThickness: 3 }
];
var sheet = fc3.record({
  material: fc3.constantFrom(...MATERIAL_NAMES),
  thickness: fc3.constantFrom(...THICKNESSES),
  ratio: fc3.constantFrom(...RATIOS),
  rule: fc3.constantFrom(...RULES)
}).map(({ material, thickness, ratio, rule }) => ({
  stock: { material, thickness },
  bending: { ...rule, insideRadius: Math.round(thickness * ratio * 1e6) / 1e6 }
}));
var part = fc3.constantFrom(...FAMILIES).chain((family) => paramsOf(family).map((params) => ({ family: family.name, ...params })));
var single = fc3.record({ sheet, part, units: fc3.constantFrom("mm", "in") }).map(({ sheet: s, part: p, units }) => ({
  units,
  ...s,
  parts: [{ name: "part", ...p }]
}));
var measured = fc3.tuple(
  carriers,
  fc3.constantFrom("body.insideWidth", "body.height", "body.length", "end.height"),
  fc3.integer({ min: -40, max: 40 })
).map(([job, size2, off]) => {
  const [name, key] = size2.split(".");
  const parts = job.parts ?? [];
  const value = parts.find((p) => p.name === name)?.[key === "insideWidth" ? "width" : key];
  return typeof value === "number" ? { ...job, measured: { [size2]: value - 2 + off / 10 } } : job;
});
var EDGES = [
  0,
  -1,
  1e-9,
  0.01,
  0.1,
  1,
  9999.99,
  1e4,
  1e9,
  1e308,
  "",
  " ",
  "1 1/2 in",
  "0 mm",
  "ten",
  null,
  true,
  [],
  {},
  [0],
  [[[]]],
  { of: "part.length" },
  { of: "body.seatWidth" },
  { of: "nothing.there", plus: 1 },
  "__proto__",
  "constructor"
];
function leaves(value, path = []) {
  if (typeof value !== "object" || value === null) return [path];
  return [
    ...path.length === 0 ? [] : [path],
    ...Object.entries(value).flatMap(([k, v]) => leaves(v, [...path, Array.isArray(value) ? Number(k) : k]))
  ];
}
function put(value, [key, ...rest], fresh) {
  if (key === void 0) return fresh;
  if (Array.isArray(value)) return value.map((v, i) => i === key ? put(v, rest, fresh) : v);
  const entries = Object.entries(value).map(
    ([k, v]) => [k, k === key ? put(v, rest, fresh) : v]
  );
  return Object.fromEntries(entries);
}
var pushed = (jobs2) => fc3.tuple(
  jobs2,
  fc3.nat(),
  fc3.oneof(
    fc3.constantFrom(...EDGES),
    fc3.constantFrom(1e-3, 0.1, 0.5, 1.9, 5, 50, 1e3).map((scale) => ({ scale }))
  )
).map(([job, n, edge]) => {
  const paths = leaves(job);
  const path = paths[n % paths.length];
  const old = path.reduce((v, k) => v[k], job);
  const scale = edge?.scale;
  return put(job, path, scale === void 0 ? edge : typeof old === "number" ? old * scale : old);
});
var jobs = fc3.oneof(
  { arbitrary: single, weight: 5 },
  { arbitrary: carriers, weight: 2 },
  { arbitrary: measured, weight: 1 },
  { arbitrary: pushed(fc3.oneof(single, carriers)), weight: 4 }
);

// tests/campaign/texts.ts
import { mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { main } from "@tinwright/cli";
import fc4 from "fast-check";
var TOKENS = [
  "&a",
  "*a",
  "<<: *a",
  "{",
  "}",
  "[",
  "]",
  ": ",
  "- ",
  "	",
  "\n",
  "\0",
  "\x1B[31m",
  "\u202E",
  "%s",
  "!!js/function",
  "'",
  '"',
  "0x1F",
  "1e999",
  ".nan",
  "-.inf",
  "~",
  "__proto__: { x: 1 }",
  "parts: []",
  "units: ft",
  "# ",
  "---\n",
  "...\n",
  '11 5/8"',
  "\u{1F600}"
];
var examples = (folder) => readdirSync(folder).filter((f) => /(?<!-shop)\.yaml$/.test(f)).map((f) => readFileSync(join(folder, f), "utf8"));
var slip = fc4.record({
  at: fc4.nat(4e3),
  length: fc4.nat(30),
  by: fc4.oneof(fc4.constantFrom(...TOKENS), fc4.nat(4e3), fc4.constant(""))
});
var slipped = (text3, { at, length, by }) => {
  const i = at % (text3.length + 1);
  const fresh = typeof by === "number" ? text3.slice(by % text3.length, by % text3.length + length) : by;
  return `${text3.slice(0, i)}${fresh}${text3.slice(i + (typeof by === "number" ? 0 : length))}`;
};
var texts = (folder) => fc4.tuple(fc4.constantFrom(...examples(folder)), fc4.array(slip, { minLength: 1, maxLength: 4 })).map(([text3, slips]) => slips.reduce(slipped, text3));
async function answered(text3) {
  let said = "";
  const say = (t) => {
    said += t;
  };
  const host = { out: say, err: say, colour: false, stdin: async () => Buffer.from(text3) };
  const folder = mkdtempSync(join(tmpdir(), "tinwright-campaign-"));
  try {
    const exit = await main(["make", "-", "--out", join(folder, "out")], host);
    if (![0, 1, 2].includes(exit)) throw new Error(`ended with ${exit}: ${said}`);
    if (exit === 2 && readdirSync(folder).length > 0) throw new Error("refused, and something was written");
    if (said.includes("a fault of the program")) throw new Error(said);
    if (/[\u0000-\u0008\u000b-\u001f\u202a-\u202e]/.test(said))
      throw new Error(`control characters: ${JSON.stringify(said)}`);
    return exit;
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

// tests/campaign/run.ts
var ROUND = 50;
var option = (name, usual) => {
  const i = process.argv.indexOf(`--${name}`);
  return i < 0 ? usual : process.argv[i + 1] ?? usual;
};
var root = option("root", ".");
var minutes = Number(option("minutes", "10"));
var seed = Number(option("seed", String(Math.floor(Date.now() / 1e3))));
var until = Date.now() + minutes * 6e4;
var made = { jobs: 0, refused: 0, texts: 0 };
var refusals = /* @__PURE__ */ new Map();
var slowest = { ms: 0, job: "" };
var memory = 0;
var failures = [];
function count(outcome) {
  if (outcome.made) made.jobs += 1;
  else {
    made.refused += 1;
    for (const code of new Set(outcome.codes)) refusals.set(code, (refusals.get(code) ?? 0) + 1);
  }
}
function keep(kind, data, error) {
  const found = String(error instanceof Error ? error.message : error).split("\n")[0] ?? "";
  const name = `${kind}-${createHash("sha256").update(JSON.stringify(data)).digest("hex").slice(0, 8)}.json`;
  writeFileSync(join2(root, "tests/cases", name), `${JSON.stringify({ kind, found, data }, null, 2)}
`);
  failures.push(`${name}: ${found}`);
  process.stderr.write(`${name}: ${found}
`);
}
process.stdout.write(`campaign of ${minutes} min, seed ${seed}
`);
for (let round = 0; Date.now() < until; round++) {
  const settings = {
    seed: seed + round,
    numRuns: ROUND,
    interruptAfterTimeLimit: Math.max(1, until - Date.now())
  };
  const tried = fc5.check(
    fc5.property(jobs, (job) => {
      const start = process.cpuUsage();
      const outcome = endure(job, round % 2 === 0 ? "r2000" : "r12");
      const ms = process.cpuUsage(start).user / 1e3;
      if (ms > slowest.ms) slowest = { ms, job: JSON.stringify(job).slice(0, 200) };
      memory = Math.max(memory, process.memoryUsage().rss);
      count(outcome);
    }),
    settings
  );
  if (tried.failed && tried.counterexample !== null)
    keep("job", tried.counterexample[0], tried.errorInstance);
  const damaged = await fc5.check(
    fc5.asyncProperty(texts(join2(root, "examples")), async (text3) => {
      await answered(text3);
      made.texts += 1;
    }),
    { ...settings, numRuns: ROUND / 2 }
  );
  if (damaged.failed && damaged.counterexample !== null)
    keep("text", damaged.counterexample[0], damaged.errorInstance);
}
var codes = [...refusals].toSorted(([, a], [, b]) => b - a).map(([code, n]) => `${code} ${n}`);
process.stdout.write(
  [
    `${made.jobs} jobs made, ${made.refused} refused, ${made.texts} damaged files answered, ${failures.length} failures`,
    `refused for ${codes.join(", ")}`,
    `slowest ${slowest.ms.toFixed(0)} ms, ${(memory / 1e6).toFixed(0)} MB at most; ${slowest.job}`,
    ""
  ].join("\n")
);
process.exitCode = failures.length === 0 ? 0 : 1;
