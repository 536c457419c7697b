// Everything a package exports says what it is.
import { join } from 'node:path';
import ts from 'typescript';
import { expect, test } from 'vitest';
import { PACKAGES, ROOT } from './kit/imports.js';

const { options } = ts.parseJsonConfigFileContent(
  ts.readConfigFile(join(ROOT, 'tests/tsconfig.json'), ts.sys.readFile).config,
  ts.sys,
  join(ROOT, 'tests'),
);

const doorOf = (name: string) => join(ROOT, 'packages', name, 'src/index.ts');
const program = ts.createProgram(PACKAGES.map(doorOf), options); // one, since each package reads those below it
const checker = program.getTypeChecker();

test.each(PACKAGES)('every export of %s has a docstring', (name) => {
  const source = program.getSourceFile(doorOf(name));
  const module = source && checker.getSymbolAtLocation(source);
  const exported = module ? checker.getExportsOfModule(module) : [];
  expect(exported.length).toBeGreaterThan(2);
  const bare = exported.filter((symbol) => {
    const target = symbol.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(symbol) : symbol;
    return ts.displayPartsToString(target.getDocumentationComment(checker)).trim() === '';
  });
  expect(bare.map((s) => s.name)).toEqual([]);
});
