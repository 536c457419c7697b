// The name of an exported type means one thing in all packages.
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import ts from 'typescript';
import { expect, test } from 'vitest';
import { PACKAGES, ROOT } from './kit/imports.js';

/** Exported types, interfaces and classes by their name, each with the files that declare it. */
function exportedTypes(): ReadonlyMap<string, readonly string[]> {
  const found = new Map<string, string[]>();
  for (const name of PACKAGES) {
    const folder = join(ROOT, 'packages', name, 'src');
    for (const file of readdirSync(folder, { recursive: true, encoding: 'utf8' }))
      if (/\.tsx?$/.test(file))
        for (const type of typesIn(join(folder, file)))
          found.set(type, [...(found.get(type) ?? []), `${name}/${file}`]);
  }
  return found;
}

function typesIn(path: string): readonly string[] {
  const source = ts.createSourceFile(path, readFileSync(path, 'utf8'), ts.ScriptTarget.ESNext);
  return source.statements.flatMap((s) => {
    const isType = ts.isInterfaceDeclaration(s) || ts.isTypeAliasDeclaration(s) || ts.isClassDeclaration(s);
    const shown = isType && s.modifiers?.some((m) => m.kind === ts.SyntaxKind.ExportKeyword);
    return shown && s.name !== undefined ? [s.name.text] : [];
  });
}

test('the name of an exported type means one thing, in whatever package it stands', () => {
  const types = exportedTypes();
  expect(types.size).toBeGreaterThan(500);
  const twice = [...types].filter(([, files]) => files.length > 1);
  expect(twice.map(([type, files]) => `${type}: ${files.join(', ')}`)).toEqual([]);
});
