// Everything a package exports says what it is.
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';
import { expect, test } from 'vitest';

const ROOT = fileURLToPath(new URL('..', import.meta.url));
const { options } = ts.parseJsonConfigFileContent(
  ts.readConfigFile(join(ROOT, 'tests/tsconfig.json'), ts.sys.readFile).config,
  ts.sys,
  join(ROOT, 'tests'),
);

test.each(['core', 'shop', 'cutting', 'words', 'files', 'paper', 'page', 'testing', 'queue', 'cli'])(
  'every export of %s has a docstring',
  (name) => {
    const door = join(ROOT, 'packages', name, 'src/index.ts');
    const program = ts.createProgram([door], options);
    const checker = program.getTypeChecker();
    const source = program.getSourceFile(door);
    const module = source && checker.getSymbolAtLocation(source);
    const exported = module ? checker.getExportsOfModule(module) : [];
    expect(exported.length).toBeGreaterThan(2);
    const bare = exported.filter((symbol) => {
      const target = symbol.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(symbol) : symbol;
      return ts.displayPartsToString(target.getDocumentationComment(checker)).trim() === '';
    });
    expect(bare.map((s) => s.name)).toEqual([]);
  },
);
