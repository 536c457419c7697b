// Tests import through the doors of packages. A room whose own tests look inside stands here with its reason; what a door
// shows is imported by the door there too, and nobody looks into another package.
import { existsSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import ts from 'typescript';
import { expect, test } from 'vitest';
import { importsOf, PACKAGES, ROOT, sourceOf, sources } from './kit/imports.js';

const FAULTS =
  'what a whole run cannot bring about: a disk that fails, a file that ends early, a text of any kind';
const TABLE = 'a published table, held to half the last digit of every row';
const GEOMETRY = 'errors of a thousandth that a whole part hides, and shapes that no part has';
const WORKED = 'known answers worked out by hand for one step of the search';
const PAPER = 'where a line or a letter lies, before a page has a hundred of them';

/** Folders below `packages`, by why their own tests look inside. */
const LOOKED_INTO: Readonly<Record<string, string>> = {
  'cli/src/bend': 'workings in inches, every term of them',
  'cli/src/commands': 'what a command lists as values, held against what the packages take',
  'cli/src/host': FAULTS,
  'cli/src/line': 'words that a shell completes, and help, of commands that do not exist',
  'cli/src/open': FAULTS,
  'cli/src/print': 'sizes and offcuts in any unit and language',
  'cli/src/sizes': FAULTS,
  'cli/src/stock': FAULTS,
  'cli/src/table': FAULTS,
  'cli/src/text': FAULTS,
  'cli/src/write': FAULTS,
  'core/src/assembly': GEOMETRY,
  'core/src/bending': TABLE,
  'core/src/errors': 'slips of the hand, every kind of them; paths of problems within problems',
  'core/src/fold/draft': GEOMETRY,
  'core/src/fold/flat': GEOMETRY,
  'core/src/fold/formed': GEOMETRY,
  'core/src/fold/settle': GEOMETRY,
  'core/src/job': 'names of sizes, as people write them',
  'core/src/joining': TABLE,
  'core/src/plane': GEOMETRY,
  'core/src/stock': TABLE,
  'cutting/src/no-fit': GEOMETRY,
  'cutting/src/outline': GEOMETRY,
  'files/src': 'numbers, layers and drawings that no part gives a writer',
  'files/src/dxf': 'text with every character that means something to the format',
  'files/src/picture': GEOMETRY,
  'files/src/read':
    'path data in its pieces: whether a reader was given short ones is not seen in what it made',
  'files/src/sheets': GEOMETRY,
  'files/src/svg': GEOMETRY,
  'page/src/app': 'texts of jobs, in every way that YAML can be written',
  'page/src/worker': 'files that a browser saves, before there is one',
  'paper/src': PAPER,
  'paper/src/figure': PAPER,
  'paper/src/marking': PAPER,
  'paper/src/page': PAPER,
  'paper/src/pattern': PAPER,
  'paper/src/steps': PAPER,
  'paper/src/template': PAPER,
  'queue/src': 'seals that somebody broke',
  'shop/src/checks': TABLE,
  'shop/src/checks/geometry': GEOMETRY,
  'shop/src/job': WORKED,
  'shop/src/machines': TABLE,
  'shop/src/metal': TABLE,
  'shop/src/replay': GEOMETRY,
  'shop/src/sequence/answer': WORKED,
  'shop/src/sequence/part': WORKED,
  'shop/src/sequence/search': WORKED,
  'shop/src/sequence/stations': WORKED,
  'shop/src/sweep': GEOMETRY,
  'shop/src/tools': WORKED,
};

/** Tests outside a package that look into one. */
const FROM_OUTSIDE: Readonly<Record<string, string>> = {
  'tests/replay/parts.ts': 'whether any order is possible, without the reasons that take longer to find',
};

const TESTS = [...PACKAGES.map((name) => join(ROOT, 'packages', name, 'test')), join(ROOT, 'tests')]
  .filter((folder) => existsSync(folder))
  .flatMap(sources);
const DEEP = TESTS.flatMap((file) => importsOf(file, ROOT)).filter(
  ({ target }) => target !== null && /^packages\/[a-z]+\/src\//.test(target),
) as readonly { readonly from: string; readonly target: string }[];
const roomOf = (target: string) => dirname(target).replace('packages/', '');

test('every room that tests look into is listed with its reason, and no other is', () => {
  expect(DEEP.length).toBeGreaterThan(50);
  const own = DEEP.filter(({ from }) => FROM_OUTSIDE[from] === undefined);
  expect([...new Set(own.map(({ target }) => roomOf(target)))].toSorted()).toEqual(Object.keys(LOOKED_INTO));
});

test('tests look into their own package alone', () => {
  const strangers = DEEP.filter(({ from, target }) => from.split('/')[1] !== target.split('/')[1]);
  expect([...new Set(strangers.map(({ from }) => from))]).toEqual(Object.keys(FROM_OUTSIDE));
});

/** What the doors of a package pass on: names by the file they come from. */
function shown(name: string): ReadonlySet<string> {
  const src = join(ROOT, 'packages', name, 'src');
  const doors = ['index.ts', 'family.ts', 'hardware.ts', 'internal.ts']
    .map((d) => join(src, d))
    .filter(existsSync);
  return new Set(
    doors.flatMap((door) =>
      parsed(door).statements.flatMap((s) =>
        ts.isExportDeclaration(s) && s.exportClause && ts.isNamedExports(s.exportClause)
          ? s.exportClause.elements.map(
              (e) => `${sourceOf(join(src, textOf(s.moduleSpecifier)))} ${(e.propertyName ?? e.name).text}`,
            )
          : [],
      ),
    ),
  );
}

const parsed = (file: string) =>
  ts.createSourceFile(file, readFileSync(file, 'utf8'), ts.ScriptTarget.Latest);
const textOf = (node: ts.Expression | undefined) => (node && ts.isStringLiteral(node) ? node.text : '');

test('what a door shows is imported by the door', () => {
  const doors = new Map(PACKAGES.map((name) => [name, shown(name)]));
  const past = [...new Set(DEEP.map(({ from }) => from))].flatMap((from) =>
    parsed(join(ROOT, from)).statements.flatMap((s) => {
      if (!ts.isImportDeclaration(s) || !s.importClause?.namedBindings) return [];
      const { namedBindings } = s.importClause;
      const target = sourceOf(join(ROOT, dirname(from), textOf(s.moduleSpecifier)));
      const [, name = ''] = /packages\/([a-z]+)\/src\//.exec(target) ?? [];
      if (!ts.isNamedImports(namedBindings)) return [];
      const names = namedBindings.elements.map((e) => (e.propertyName ?? e.name).text);
      return names.filter((n) => doors.get(name)?.has(`${target} ${n}`)).map((n) => `${from}: ${n}`);
    }),
  );
  expect(past).toEqual([]);
});
