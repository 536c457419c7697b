// `npm run doors`: every name is imported by the door that has it, also where a test reached past one. To be run after a
// name moved between the doors of a package.
import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { dirname, join, relative, resolve } from 'node:path';
import ts from 'typescript';
import { PACKAGES, root } from './ready.mjs';

const parse = (file) => ts.createSourceFile(file, readFileSync(file, 'utf8'), ts.ScriptTarget.Latest, true);
const sourceOf = (path) => [path.replace(/\.js$/, '.ts'), path.replace(/\.js$/, '.tsx')].find(existsSync);

/** Names of a module that only passes names on: each with its door, by name and by the file it comes from. */
function doorsOf(name) {
  const src = join(root, 'packages', name, 'src');
  const doors = [
    ['index.ts', ''],
    ['family.ts', '/family'],
    ['internal.ts', '/internal'],
  ];
  const found = new Map();
  for (const [file, path] of doors.filter(([f]) => existsSync(join(src, f))))
    for (const statement of parse(join(src, file)).statements) {
      if (!ts.isExportDeclaration(statement) || !ts.isNamedExports(statement.exportClause)) continue;
      const from = sourceOf(resolve(src, statement.moduleSpecifier.text));
      for (const { name: own, propertyName } of statement.exportClause.elements) {
        const door = `@tinwright/${name}${path}`;
        found.set(`@tinwright/${name} ${own.text}`, { door, as: own.text });
        found.set(`${from} ${(propertyName ?? own).text}`, { door, as: own.text });
      }
    }
  return found;
}

const doors = new Map(PACKAGES.flatMap((name) => [...doorsOf(name)]));

/** What an import names: a package whatever the door, or a source file of one that a test reaches for. */
function targetOf(file, text) {
  const [, name] = /^@tinwright\/([a-z]+)(\/(internal|family))?$/.exec(text) ?? [];
  if (name !== undefined) return `@tinwright/${name}`;
  if (!text.startsWith('.') || !/\/test[s]?\//.test(`/${relative(root, file)}`)) return null;
  const target = sourceOf(resolve(dirname(file), text));
  const [, own, door] = /packages\/([a-z]+)\/src\/(index|internal|family)?/.exec(target ?? '') ?? [];
  return door === undefined ? (own === undefined ? null : target) : `@tinwright/${own}`;
}

/** The elements of an import by the door each comes from. */
function byDoor(file, elements, specifier) {
  const target = targetOf(file, specifier);
  if (target === null) return null;
  const groups = new Map();
  for (const element of elements) {
    const asked = (element.propertyName ?? element.name).text;
    const { door, as } = doors.get(`${target} ${asked}`) ?? { door: specifier, as: asked };
    const found = { type: element.isTypeOnly ? 'type ' : '', as, name: element.name.text };
    groups.set(door, [...(groups.get(door) ?? []), found]);
  }
  return [...groups];
}

/** `import { a } from …`, as it should be; null where it is something else. */
function staticImport(file, node) {
  if (!ts.isImportDeclaration(node) || !node.importClause?.namedBindings) return null;
  const { namedBindings, isTypeOnly } = node.importClause;
  if (!ts.isNamedImports(namedBindings)) return null;
  const groups = byDoor(file, namedBindings.elements, node.moduleSpecifier.text);
  return groups?.map(([door, names]) => {
    const all = isTypeOnly || names.every((n) => n.type !== '');
    const one = ({ type, as, name }) => `${all ? '' : type}${as === name ? as : `${as} as ${name}`}`;
    return `import ${all ? 'type ' : ''}{ ${names.map(one).join(', ')} } from '${door}';`;
  });
}

/** The module that `import(…)` names; null for any other expression. */
const importedBy = (node) =>
  ts.isCallExpression(node) && node.expression.kind === ts.SyntaxKind.ImportKeyword
    ? (node.arguments[0].text ?? '')
    : null;

/** `{ a }` of a module as one pattern and one import for each door. */
function lazyPairs(file, pattern, specifier) {
  const groups =
    specifier === null || !ts.isObjectBindingPattern(pattern)
      ? null
      : byDoor(file, pattern.elements, specifier);
  return groups?.map(([door, names]) => [
    `{ ${names.map(({ as, name }) => (as === name ? as : `${as}: ${name}`)).join(', ')} }`,
    `import('${door}')`,
  ]);
}

/** `const { a } = await import(…)`, also of several at once, as it should be; null where it is something else. */
function lazyImport(file, node) {
  if (!ts.isVariableStatement(node) || node.declarationList.declarations.length !== 1) return null;
  const [{ name: pattern, initializer }] = node.declarationList.declarations;
  if (!initializer || !ts.isAwaitExpression(initializer)) return null;
  const { expression } = initializer;
  const one = lazyPairs(file, pattern, importedBy(expression));
  if (one) return one.map(([names, from]) => `const ${names} = await ${from};`);
  const list = ts.isCallExpression(expression) ? expression.arguments[0] : undefined;
  if (!ts.isArrayBindingPattern(pattern) || !list || !ts.isArrayLiteralExpression(list)) return null;
  const pairs = pattern.elements.flatMap((element, i) => {
    const from = list.elements[i];
    return lazyPairs(file, element.name, importedBy(from)) ?? [[element.getText(), from.getText()]];
  });
  const [names, imports] = [0, 1].map((k) => pairs.map((pair) => pair[k]).join(', '));
  return [`const [${names}] = await ${expression.expression.getText()}([${imports}]);`];
}

/** Text without what only lays it out. */
const bare = (text) => text.replace(/[\s,]+/g, '');

function rewritten(file) {
  const source = parse(file);
  const edits = [];
  const visit = (node) => {
    const lines = staticImport(file, node) ?? lazyImport(file, node);
    const text = lines?.join('\n') ?? '';
    if (!lines) ts.forEachChild(node, visit);
    else if (bare(text) !== bare(node.getText())) edits.push({ from: node.getStart(), to: node.end, text });
  };
  visit(source);
  return edits.reduceRight((t, e) => t.slice(0, e.from) + e.text + t.slice(e.to), source.text);
}

const OUTSIDE = ['node_modules', 'dist', 'out'];
const files = (dir) =>
  readdirSync(dir, { withFileTypes: true }).flatMap((e) => {
    if (e.isDirectory()) return OUTSIDE.includes(e.name) ? [] : files(join(dir, e.name));
    return /\.(ts|tsx|mts|mjs)$/.test(e.name) && !e.name.endsWith('.d.ts') ? [join(dir, e.name)] : [];
  });

for (const file of ['packages', 'tests', 'examples', '.ci'].flatMap((d) => files(join(root, d)))) {
  const text = rewritten(file);
  if (text === readFileSync(file, 'utf8')) continue;
  writeFileSync(file, text);
  process.stdout.write(`${relative(root, file)}\n`);
}
