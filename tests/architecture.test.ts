// Imports run in one direction: packages cli → queue → paper → files → cutting, shop → core, layers only downward; no cycles of files or rooms, no deep
// imports into a package, no Node built-ins outside cli and queue, no verifier that imports what it verifies.
import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join, relative } from 'node:path';
import ts from 'typescript';
import { expect, test } from 'vitest';
import { type Import, importsOf, PACKAGES, ROOT, slashed, sources } from './kit/imports.js';

const CORE = [
  'units',
  'errors',
  'advice',
  'plane',
  'stock',
  'bending',
  'schema',
  'fold/draft',
  'fold/corners',
  'fold/settle',
  'fold/flat',
  'fold/formed',
  'fold',
  'edges',
  'cutouts',
  'joining',
  'families',
  'hardware',
  'assembly',
  'checks',
  'job',
  'internal.ts',
  'family.ts',
  'hardware.ts',
  'index.ts',
];
const SHOP = [
  'machines',
  'metal',
  'sweep',
  'tools',
  'checks',
  'sequence/part',
  'sequence/stations',
  'sequence/search',
  'sequence/answer',
  'replay',
  'operations',
  'strip',
  'job',
  'internal.ts',
  'index.ts',
];
const CUTTING = [
  'outline',
  'stock',
  'findings',
  'shear',
  'no-fit',
  'nest',
  'kerf',
  'internal.ts',
  'index.ts',
];
/** Packages that need Node; all others run in a browser. */
const ON_NODE = ['queue', 'cli'];
/** What a package may show beside its door: to authors of families, and to sister packages alone. */
const DOORS = ['/internal', '/family', '/hardware'];
/** Layers of the packages that have them, lowest first. */
const LAYERS: Readonly<Record<string, readonly string[]>> = { core: CORE, shop: SHOP, cutting: CUTTING };
/** Verifiers may share records and the plane with what they verify, never its routines. */
const PRODUCERS = [
  'unfold',
  'form',
  'settle',
  'separate',
  'corner-cuts',
  'corner-arms',
  'space-cuts',
  'hinge',
  'bite-hole',
  'find-plan',
  'guide',
  'precedence',
  'beam',
  'cheapest',
  'reach',
  'contact',
  'pack',
  'cut-up',
  'plan-shear',
  'problem-of',
  'stop-order',
  'no-fit',
  'depth-table',
  'overlap',
  'prepare',
];

const packageOf = (path: string) => PACKAGES.indexOf(path.split('/')[1] ?? '');
const layered = (path: string) => LAYERS[path.split('/')[1] ?? ''];
/** Place of a file among the rooms of its package; -1 in none of them. */
const layerOf = (path: string) => {
  const inside = path.split('/').slice(3).join('/');
  return layered(path)?.findIndex((l) => inside === l || inside.startsWith(`${l}/`)) ?? 0;
};

function faults(root: string): { readonly faults: readonly string[]; readonly files: number } {
  const files = PACKAGES.map((p) => join(root, 'packages', p, 'src'))
    .filter((d) => existsSync(d))
    .flatMap(sources);
  const imports = files.flatMap((f) => importsOf(f, root));
  const paths = files.map((f) => slashed(relative(root, f)));
  const unlisted = paths
    .filter((p) => layered(p) !== undefined && layerOf(p) < 0)
    .map((p) => `${p}: not in a listed layer`);
  const direct = imports.flatMap((i) => fault(i).map((f) => `${i.from}: ${f} (${i.text})`));
  return {
    faults: [...unlisted, ...direct, ...cycles(imports), ...cycles(between(imports))],
    files: files.length,
  };
}

function fault(i: Import): readonly string[] {
  const own = packageOf(i.from);
  const named = /^@tinwright\/([a-z]+)(\/.*)?$/.exec(i.text);
  const found: string[] = [];
  if (i.text.startsWith('node:') && !ON_NODE.includes(PACKAGES[own] ?? ''))
    found.push('Node built-in outside cli and queue');
  if (named?.[2] !== undefined && !DOORS.includes(named[2])) found.push('reaches past the door of a package');
  if (named && PACKAGES.indexOf(named[1] ?? '') >= own)
    found.push('imports a package of its own rank or above');
  if (i.target !== null && packageOf(i.target) !== own) found.push('relative import into another package');
  if (i.target !== null && packageOf(i.target) === own && layerOf(i.target) > layerOf(i.from))
    found.push('imports upward');
  const verifier = /\/verify-[a-z]+\.ts$/.test(i.from);
  if (verifier && PRODUCERS.some((p) => i.target?.endsWith(`/${p}.ts`)))
    found.push('verifier imports its producer');
  return found;
}

/** A file's room: the folder right below `src`, null for what stands at its door. */
const roomOf = (path: string) => (path.split('/').length > 4 ? path.split('/').slice(0, 4).join('/') : null);

/** Imports as rooms have them of each other. */
function between(imports: readonly Import[]): readonly Import[] {
  return imports.flatMap(({ from, text, target }) => {
    const [a, b] = [roomOf(from), target === null ? null : roomOf(target)];
    return a === null || b === null || a === b ? [] : [{ from: a, text, target: b }];
  });
}

function cycles(imports: readonly Import[]): readonly string[] {
  const next = new Map<string, string[]>();
  for (const { from, target } of imports)
    if (target !== null) next.set(from, [...(next.get(from) ?? []), target]);
  const state = new Map<string, 'open' | 'done'>();
  const found: string[] = [];
  const walk = (node: string, path: readonly string[]): void => {
    if (state.get(node) === 'done') return;
    if (state.get(node) === 'open') {
      found.push(`cycle: ${[...path.slice(path.indexOf(node)), node].join(' -> ')}`);
      return;
    }
    state.set(node, 'open');
    for (const n of next.get(node) ?? []) walk(n, [...path, node]);
    state.set(node, 'done');
  };
  for (const node of next.keys()) walk(node, []);
  return found;
}

test('imports of all packages run downward, without cycles of files or rooms', () => {
  const result = faults(ROOT);
  expect(result.files).toBeGreaterThan(80);
  expect(result.faults).toEqual([]);
});

test('DEVELOPERS.md lists the layers of the packages that have them, lowest first', () => {
  const text = readFileSync(join(ROOT, 'DEVELOPERS.md'), 'utf8');
  for (const [name, layers] of Object.entries(LAYERS))
    expect(text).toContain(`\`packages/${name}/src\`: ${layers.map((l) => `\`${l}\``).join(', ')}\n`);
  for (const name of PACKAGES) expect(text).toContain(`| \`@tinwright/${name}\` |`);
});

/** One fault a file; each must be seen. */
const SEEDED: Readonly<Record<string, readonly [source: string, expected: string]>> = {
  'core/src/units/a.ts': ["import { x } from '../fold/x.js';", 'imports upward'],
  'core/src/units/b.ts': ["import type { x } from '../job/x.js';", 'imports upward'],
  'core/src/units/c.ts': ["export const x = () => import('../fold/x.js');", 'imports upward'],
  'core/src/units/d.ts': ["export { x } from '../fold/x.js';", 'imports upward'],
  'core/src/units/e.ts': ["export type X = import('../fold/x.js').X;", 'imports upward'],
  'core/src/fold/f.ts': ["import { g } from './g.js';", 'cycle: '],
  'core/src/fold/g.ts': ["import type { f } from './f.js';", 'cycle: '],
  'core/src/job/h.ts': ["import { x } from '@tinwright/files';", 'rank or above'],
  'files/src/i.ts': ["import { x } from '@tinwright/core/dist/fold/x.js';", 'past the door'],
  'files/src/j.ts': ["import { x } from '../../core/src/index.js';", 'into another package'],
  'core/src/plane/k.ts': ["import { readFileSync } from 'node:fs';", 'Node built-in'],
  'core/src/fold/flat/verify-flat.ts': ["import { unfold } from './unfold.js';", 'verifier imports'],
  'core/src/extra/l.ts': ['export const x = 1;', 'not in a listed layer'],
  'core/src/job/m.ts': ["import { x } from '@tinwright/shop';", 'rank or above'],
  'shop/src/machines/n.ts': ["import { x } from '../sequence/part/x.js';", 'imports upward'],
  'shop/src/sequence/part/p.ts': ["import { x } from '../search/x.js';", 'imports upward'],
  'shop/src/extra/o.ts': ['export const x = 1;', 'not in a listed layer'],
  'shop/src/replay/verify-sequence.ts': [
    "import { x } from '../sequence/search/cheapest.js';",
    'verifier imports',
  ],
};

test('every kind of fault, seeded, is found', () => {
  const root = mkdtempSync(join(tmpdir(), 'tinwright-arch-'));
  try {
    for (const [path, [source]] of Object.entries(SEEDED)) {
      mkdirSync(dirname(join(root, 'packages', path)), { recursive: true });
      writeFileSync(join(root, 'packages', path), source);
    }
    const { faults: found } = faults(root);
    for (const [path, [, expected]] of Object.entries(SEEDED))
      expect(found.filter((f) => f.includes(path)).join('\n'), path).toContain(expected);
  } finally {
    rmSync(root, { recursive: true });
  }
});

test('rooms that need each other are found, though no file does', () => {
  const [a, b, c] = ['paper/src/page/a.ts', 'paper/src/plan/b.ts', 'paper/src/page/c.ts'].map(
    (f) => `packages/${f}`,
  );
  const imports = [
    { from: a ?? '', text: '', target: b ?? '' },
    { from: b ?? '', text: '', target: c ?? '' },
  ];
  expect(cycles(imports)).toEqual([]);
  expect(cycles(between(imports))).toEqual([
    'cycle: packages/paper/src/page -> packages/paper/src/plan -> packages/paper/src/page',
  ]);
});

test('no family is named outside its own folder and the list of families', () => {
  const names = readdirSync(join(ROOT, 'packages/core/src/families'), { withFileTypes: true })
    .filter((e) => e.isDirectory())
    .map((e) => e.name);
  expect(names.length).toBeGreaterThan(4);
  const shared = PACKAGES.flatMap((p) => sources(join(ROOT, 'packages', p, 'src'))).filter(
    (f) => !slashed(f).includes('/families/'),
  );
  const words = ['handle', 'cover']; // of other things too
  const quoted = names.filter((n) => !words.includes(n)).map((n) => `'${n}'`);
  const naming = shared.filter((f) => {
    const text = readFileSync(f, 'utf8');
    const named = quoted.filter((n) => text.includes(n));
    if (named.length === 0) return false; // most files, so few have to be read without their comments
    const code = ts.transpileModule(text, {
      compilerOptions: { removeComments: true, target: ts.ScriptTarget.ES2022 },
    }).outputText;
    return named.some((n) => code.includes(n));
  });
  expect(naming.map((f) => slashed(relative(ROOT, f)))).toEqual([]);
});
