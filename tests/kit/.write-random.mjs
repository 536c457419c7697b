// tests/kit/write-random.ts
import { mkdirSync, writeFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { FAMILIES, JobError, planJob, readJob } from "@tinwright/core";
import { jobFiles } from "@tinwright/files";
import fc2 from "fast-check";

// tests/kit/arbitrary.ts
import { jobJsonSchema } from "@tinwright/files";
import fc from "fast-check";
var COMMON = ["name", "family", "quantity", "note", "stock", "bending"];
function paramsOf(family) {
  const { $defs, properties: all } = jobJsonSchema([family]);
  const part = inlined(all.parts.items.oneOf[0], $defs);
  const properties = Object.fromEntries(
    Object.entries(part.properties).filter(([key]) => !COMMON.includes(key))
  );
  return group({ ...part, properties }, family.describe.example);
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
    return fc.tuple(there, valueFor(value, shown)).map(([wanted2, v]) => wanted2 ? [[key, v]] : []);
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

// tests/kit/write-random.ts
var PER_FOLDER = 50;
var [folder = "", count = "0", seed = "1"] = process.argv.slice(2);
var wanted = Number(count);
function* parts() {
  for (let round = 0; ; round++)
    for (const family of FAMILIES) {
      const samples = fc2.sample(fc2.tuple(paramsOf(family), sheets), {
        seed: Number(seed) + round,
        numRuns: 60
      });
      for (const [params, sheet] of samples) {
        const part = { family: family.name, ...sheet, ...params };
        if (makeable(part)) yield part;
      }
    }
}
function makeable(part) {
  try {
    planJob(readJob({ units: "mm", parts: [{ name: "part", ...part }] }));
    return true;
  } catch (error) {
    if (error instanceof JobError) return false;
    throw error;
  }
}
function inInches(value, key = "") {
  if (typeof value === "number") return /^(angle|count|k$|per)/.test(key) ? value : value / 25.4;
  if (Array.isArray(value)) return value.map((v) => inInches(v, key));
  if (typeof value !== "object" || value === null) return value;
  return Object.fromEntries(Object.entries(value).map(([k, v]) => [k, inInches(v, k)]));
}
var source = parts();
var written = 0;
for (let f = 0; written < wanted; f++) {
  const units = f % 2 === 0 ? "mm" : "in";
  const dxf = f % 4 < 2 ? "r2000" : "r12";
  const list = Array.from({ length: Math.min(PER_FOLDER, wanted - written) }, (_, i) => {
    const part = source.next().value;
    return { name: `part-${i}`, ...units === "in" ? inInches(part) : part };
  });
  const plan = planJob(readJob({ units, parts: list }));
  for (const { path, content } of jobFiles(plan, { dxf })) {
    const target = join(folder, `${String(f).padStart(3, "0")}-${units}-${dxf}`, path);
    mkdirSync(dirname(target), { recursive: true });
    writeFileSync(target, content);
  }
  written += list.length;
}
process.stdout.write(`${written} random parts in ${folder}, seed ${seed}
`);
