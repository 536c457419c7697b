// packages/page/src/worker/answers.ts
import { FAMILIES, MATERIALS, refit } from "@tinwright/core";

// packages/page/src/worker/fields.ts
var NOTHING = { least: null, most: null, fallback: void 0, optional: false, list: false };
function notingKit() {
  const note = (seen) => ({ ...NOTHING, ...seen });
  const kit = {
    unit: "mm",
    size: ({ min, max } = {}) => note({ least: min ?? null, most: max ?? null }),
    sizeOf: () => note({}),
    angle: (least, most) => note({ least, most }),
    count: (least, most) => note({ least, most }),
    hem: () => note({}),
    oneOf: () => note({}),
    maybe: (inner) => ({ ...inner, optional: true }),
    or: (inner, fallback) => ({ ...inner, fallback: fallback ?? void 0, optional: true }),
    instead: (inner, fallback) => ({ ...inner, fallback, optional: true }),
    list: (_, least, most) => note({ least, most, list: true }),
    group: () => note({}),
    byName: () => note({}),
    either: (a2, b) => a2.most === null && a2.least === null ? b : a2
  };
  return kit;
}
function fieldsOf(values) {
  const kit = notingKit();
  return Object.entries(values).map(([name, value]) => {
    const { words, unit, options, inner } = value;
    return {
      ...value.read(kit),
      name,
      words,
      unit,
      options,
      inner: fieldsOf(inner)
    };
  });
}
function familyView({ name, values, describe }) {
  return { name, title: describe.title, example: describe.example, fields: fieldsOf(values) };
}

// packages/page/src/worker/files.ts
import { planJob, readJob } from "@tinwright/core";
import {
  assemblySolid,
  DRAWING_WRITERS,
  flatDrawing,
  jobFiles,
  partDxf,
  SOLID_WRITERS,
  TABLE_STYLE
} from "@tinwright/files";
import { makingOf, packetFiles, pageSvg, partPlan, planFiles } from "@tinwright/paper";
import { DEFAULT_SHOP, planShop } from "@tinwright/shop";
import { LANGUAGES } from "@tinwright/words/internal";
import { strToU8, zipSync } from "fflate";
var FORMATS = [
  ...DRAWING_WRITERS,
  ...SOLID_WRITERS
].map(({ format, words }) => ({ format, words }));
async function filesFor(plan, ask) {
  const part = plan.parts.find((p) => p.name === ask.part);
  const writer = DRAWING_WRITERS.find((w) => w.format === ask.what);
  if (writer !== void 0) return part === void 0 ? [] : [drawn(part, writer.format)];
  switch (ask.what) {
    case "plan":
      return (await plans(plan, ask)).filter((f) => f.path === `plans/${ask.part}.pdf`);
    case "packet":
      return packet(plan, ask);
    case "job":
      return [{ path: `${fileName(plan)}.yaml`, content: ask.text }];
    case "all":
      return [{ path: `${fileName(plan)}.zip`, content: await everything(plan, ask) }];
    default:
      return solids(plan, ask.what);
  }
}
function printed(data2, language) {
  const plan = planJob(readJob(data2));
  const { plans: words } = LANGUAGES[language];
  const { units } = plan.job;
  return plan.parts.flatMap(
    (p) => partPlan(plan.job.name, p, { ...paperFor(units), words }).pages.map(
      (page) => pageSvg(page, words.language)
    )
  );
}
function drawn(part, format) {
  const writer = DRAWING_WRITERS.find((w) => w.format === format);
  const form3 = format === "r12" ? "r12" : "r2000";
  const content = writer?.extension === "dxf" ? partDxf(part, { ...TABLE_STYLE, form: form3 }) : writer?.write(flatDrawing(part.flat, part.name, [part.name])) ?? "";
  return { path: `${part.name}.${writer?.extension ?? "txt"}`, content };
}
function solids({ assembly, job }, what) {
  const writer = SOLID_WRITERS.find((w) => w.format === what);
  if (writer === void 0 || assembly === null) return [];
  const name = job.name === "" ? "assembly" : job.name;
  return [{ path: `assembly.${writer.extension}`, content: writer.write(assemblySolid(name, assembly)) }];
}
async function plans(plan, { language }) {
  const { plans: words } = LANGUAGES[language];
  const { files } = await planFiles(plan, plan.parts, { ...paperFor(plan.job.units), words });
  return files;
}
async function packet(plan, { language }) {
  const asked = { ...paperFor(plan.job.units), language };
  const { files } = await packetFiles(plan, makingOf(plan, null), asked, ["pdf"]);
  return files;
}
async function everything(plan, ask) {
  const inShop = planShop(plan, DEFAULT_SHOP);
  const files = [
    { path: "job.yaml", content: ask.text },
    ...jobFiles(plan, { dxf: "r2000", pictures: true, inShop }),
    ...await plans(plan, ask),
    ...await packet(plan, ask)
  ];
  const bytes = (c) => typeof c === "string" ? strToU8(c) : c;
  return zipSync(Object.fromEntries(files.map((f) => [f.path, bytes(f.content)])), {
    mtime: "1980-01-01T12:00:00"
  });
}
var paperFor = (units) => ({ paper: units === "in" ? "letter" : "A4", dims: units });
var fileName = ({ job }) => job.name.replace(/[^\p{L}\p{N}]+/gu, "-").replace(/^-|-$/g, "") || "job";

// packages/page/src/worker/order.ts
import { form, sayIn } from "@tinwright/core/internal";
import { pageSvg as pageSvg2, stepDrawings } from "@tinwright/paper";
import { DEFAULT_SHOP as DEFAULT_SHOP2, planSequenceAsync } from "@tinwright/shop";
import { turned, turns } from "@tinwright/shop/internal";
import { mendWords, plainPrint, reasonWords, stepLine } from "@tinwright/words";
import { LANGUAGES as LANGUAGES2 } from "@tinwright/words/internal";

// packages/page/src/worker/solid.ts
import { bendSurface, panelSurface } from "@tinwright/files/internal";
function solidView(standing) {
  return {
    chunks: [
      ...standing.panels.map((p) => chunk(p.id, panelSurface(standing, p))),
      ...standing.bends.map((b) => chunk(b.id, bendSurface(b, along(b))))
    ]
  };
}
var along = ({ frame }) => ({ across: frame.y, up: frame.z, viewer: frame.x });
function chunk(id, { facets, lines }) {
  const corners = facets.flatMap(
    ({ corners: c, normal }) => c.slice(2).flatMap((p, i) => [
      [c[0], normal],
      [c[i + 1], normal],
      [p, normal]
    ])
  );
  const edges = lines.filter((l) => l.kind === "edge");
  return {
    id,
    positions: floats(corners.map(([p]) => p)),
    normals: floats(corners.map(([, n]) => n)),
    edges: floats(edges.flatMap((e) => [e.from, e.to]))
  };
}
function floats(points) {
  const all = new Float32Array(points.length * 3);
  for (const [i, p] of points.entries()) all.set(p, 3 * i);
  return all;
}

// packages/page/src/worker/order.ts
async function orderView(part, units, language, signal) {
  const sequence = await planSequenceAsync(part, DEFAULT_SHOP2, { signal });
  const say = sayIn(units);
  const { steps: words, plans: plans2 } = LANGUAGES2[language];
  const pages = stepDrawings(part, sequence, DEFAULT_SHOP2, { dims: units, words });
  return {
    part: part.name,
    status: sequence.status,
    steps: sequence.steps,
    words: sequence.steps.map((s) => stepLine(s, language, plainPrint(say))),
    sections: pages.map((p) => pageSvg2(p, plans2.language)),
    reasons: [
      ...sequence.reasons.map((r) => reasonWords(r, say)),
      ...sequence.mends.map((m) => mendWords(m, say))
    ]
  };
}
function stageView({ part }, steps, at) {
  const done = Math.floor(at);
  const [old, next] = [turns(part, steps.slice(0, done)), turns(part, steps.slice(0, done + 1))];
  const now = new Map(
    [...next].map(([id, to]) => {
      const from = old.get(id) ?? to;
      const share = at - done;
      return [
        id,
        {
          angle: from.angle + share * (to.angle - from.angle),
          // a bend that starts has no radius yet that means anything: it is wound from its own angle on
          insideRadius: from.angle < 0.01 ? to.insideRadius : between(from, to, share)
        }
      ];
    })
  );
  return solidView(form(turned(part, now)));
}
var between = (from, to, share) => from.insideRadius + share * (to.insideRadius - from.insideRadius);

// packages/page/src/worker/plans.ts
import {
  JobError,
  jobReader,
  parseLength,
  planJob as planJob2
} from "@tinwright/core";
import {
  form as form2,
  LONGEST,
  nearestSize,
  passing,
  planPart,
  stepOf,
  unfold,
  valueAt,
  withValue
} from "@tinwright/core/internal";

// packages/page/src/worker/views.ts
import { explainBlank } from "@tinwright/core";
import { assemblyPicture, flatDrawing as flatDrawing2, partPicture, toSvg } from "@tinwright/files";
import { DEFAULT_SHOP as DEFAULT_SHOP3 } from "@tinwright/shop";
import { jobFindings } from "@tinwright/shop/internal";
import { tellFindings } from "@tinwright/words";
function quickView({ name, flat, formed }) {
  return { name, flat: flatView(name, flat), solid: solidView(formed) };
}
function jobView(plan, language) {
  const { job, parts, assembly } = plan;
  const each = (of) => parts.reduce((sum, p) => sum + p.quantity * of(p), 0);
  return {
    units: job.units,
    name: job.name,
    parts: parts.map(partView),
    object: assembly === null ? null : assembly.placed.map(({ piece, part, pose }) => ({
      piece,
      part: part.name,
      matrix: matrixOf(pose)
    })),
    findings: findingViews(plan, language),
    totals: {
      mass: each((p) => p.mass),
      area: each((p) => p.flat.area),
      pieces: each(() => 1),
      fasteners: assembly?.fasteners.length ?? 0
    }
  };
}
function findingViews(plan, language) {
  const findings = jobFindings(plan, DEFAULT_SHOP3);
  return tellFindings(findings, plan.job.units, language).map(
    ({ severity, part, at, message, fix, source, changes }, i) => ({
      severity,
      part: part ?? "",
      at,
      names: findings[i]?.where.names ?? [],
      changes: changes.flatMap((c) => {
        const value = "found" in c ? c.found : c.words[0];
        return value === void 0 ? [] : [{ path: c.path, value }];
      }),
      message,
      fix,
      source
    })
  );
}
function pictureOf({ job, parts, assembly }, name) {
  const part = parts.find((p) => p.name === name);
  if (part !== void 0) return toSvg(partPicture(part.name, part));
  return assembly === null ? null : toSvg(assemblyPicture(job.name, assembly));
}
function partView(plan) {
  const { family, quantity, mass, flat, sheet, params } = plan;
  return {
    ...quickView(plan),
    family: family.name,
    quantity,
    mass,
    area: flat.area,
    sizes: family.derived(params, sheet).map((d) => ({ name: d.name, value: d.value })),
    params
  };
}
function flatView(name, flat) {
  const blank = explainBlank(flat).map(
    ({ total, terms }) => ({
      total,
      terms: terms.map((t) => ({
        id: t.kind === "leg" ? t.panel : t.bend.id,
        kind: t.kind,
        length: t.length
      }))
    })
  );
  return {
    svg: toSvg(flatDrawing2(flat, name, [name])),
    size: flat.blank.max,
    blank,
    bends: flat.bends.map((b) => ({
      id: b.id,
      line: b.line,
      zone: [b.tangents[0][0], b.tangents[0][1], b.tangents[1][1], b.tangents[1][0]],
      angle: b.angle,
      direction: b.direction,
      insideRadius: b.insideRadius,
      allowance: b.terms.allowance,
      deduction: b.terms.deduction
    })),
    panels: flat.panels.map(({ id, shape }) => ({ id, shape }))
  };
}
var matrixOf = ({ x, y, z, origin }) => [...x, 0, ...y, 0, ...z, 0, ...origin, 1];

// packages/page/src/worker/plans.ts
function planner() {
  const read = jobReader();
  let last = null;
  const plan = (data2) => {
    const text2 = JSON.stringify(data2);
    if (last?.data !== text2) last = { data: text2, plan: planJob2(read(data2)) };
    return last.plan;
  };
  return {
    plan,
    quick: (data2, name) => {
      const part = attempt(() => read(data2))?.parts.find((p) => p.name === name);
      if (part === void 0) return null;
      return attempt(() => {
        const built = part.family.part(part.params, part.sheet);
        return quickView({ name, flat: unfold(built), formed: form2(built) });
      });
    },
    mend: (data2, path) => mend(read, data2, path)
  };
}
function mend(read, data2, path) {
  const units = data2.units === "in" ? "in" : "mm";
  const given = valueAt(data2, path);
  const parsed = typeof given === "number" || typeof given === "string" ? parseLength(given, units) : null;
  if (parsed === null || !parsed.ok) return null;
  const per = units === "in" ? 25.4 : 1;
  const digits = units === "in" ? 4 : 2;
  const written = (mm) => Number((mm / per).toFixed(digits));
  const works = (mm) => {
    const job = attempt(() => read(withValue(data2, path, written(mm))));
    return job !== null && builds(job, path);
  };
  const found = nearestSize(parsed.mm, passing(works), { step: stepOf(units), most: LONGEST });
  return found === null ? null : { path, value: written(found.found) };
}
var builds = ({ parts }, [head, index]) => parts.filter((_, i) => head !== "parts" || i === index).every((p) => attempt(() => planPart(p)) !== null);
function attempt(work) {
  try {
    return work();
  } catch (error) {
    if (error instanceof JobError) return null;
    throw error;
  }
}
function orProblems(work) {
  try {
    return work();
  } catch (error) {
    if (!(error instanceof JobError)) throw error;
    return {
      problems: error.problems.map(({ path, part = "", message, fix }) => ({ path, part, message, fix }))
    };
  }
}

// packages/page/src/worker/answers.ts
function answering() {
  const plans2 = planner();
  const answers = {
    catalogue: () => ({
      families: FAMILIES.map(familyView),
      materials: MATERIALS.map(({ name, title }) => ({ name, title })),
      formats: FORMATS
    }),
    quick: ({ data: data2, part }) => plans2.quick(data2, part),
    job: ({ data: data2, language }) => orProblems(() => jobView(plans2.plan(data2), language)),
    mend: ({ data: data2, path }) => plans2.mend(data2, path),
    order: ({ data: data2, part, language }, signal) => withPart(plans2, data2, part, (p, units) => orderView(p, units, language, signal)),
    stage: ({ data: data2, part, steps, at }) => withPart(plans2, data2, part, (p) => stageView(p, steps, at)),
    refit: ({ data: data2, measured }) => orProblems(() => {
      const { changes, changed } = refit(data2, { measured, made: [] });
      return { changes, again: changed.map((p) => p.name) };
    }),
    files: (ask) => {
      const plan = attempt(() => plans2.plan(ask.data));
      return plan === null ? [] : filesFor(plan, ask);
    },
    picture: ({ data: data2, part }) => {
      const plan = attempt(() => plans2.plan(data2));
      return plan === null ? null : pictureOf(plan, part);
    },
    prints: ({ data: data2, language }) => attempt(() => printed(data2, language)) ?? []
  };
  return ({ kind, ask }, signal) => answers[kind](ask, signal);
}
function withPart(plans2, data2, name, view) {
  const plan = attempt(() => plans2.plan(data2));
  const part = plan?.parts.find((p) => p.name === name);
  return plan === null || part === void 0 ? null : view(part, plan.job.units);
}

// tests/kit/.p.ts
import { readFileSync } from "node:fs";
import { parse } from "yaml";
var text = readFileSync("examples/harvest-carrier.yaml", "utf8");
var data = parse(text);
var a = answering();
var stop = new AbortController().signal;
for (const what of ["r2000", "svg", "glb", "all"]) {
  const t = Date.now();
  try {
    const r = await a({ kind: "files", ask: { data, text, what, part: "body", language: "en" } }, stop);
    structuredClone(r);
    console.log(what, r.map((f) => f.path), Date.now() - t);
  } catch (e) {
    console.log(what, "ERR", e);
  }
}
