// `npm run docs`: the site of the programming interface in out/docs, from the doors of the packages and the pages in examples/ideas.
// What is exported without words, and what a signature names that no door has, ends it with 1.
import { mkdirSync, readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { Application } from 'typedoc';
import { familyPages } from './family-pages.mjs';
import { ready, root } from './ready.mjs';

ready();
const work = join(root, 'out', 'docs-work');
mkdirSync(join(work, 'families'), { recursive: true });
const DOORS = {
  core: ['index', 'family', 'hardware'],
  shop: ['index'],
  cutting: ['index'],
  words: ['index'],
  files: ['index'],
  paper: ['index'],
  page: ['index'],
  testing: ['index'],
};

/** Helpers of types that only spell out what their users name; everything else a signature names has to be exported. */
const SPELLED_OUT = {
  core: [
    ...['kinds', 'LeftOut', 'WrittenAs', 'Vulgar', 'Chosen', 'ChosenWritten'].map(
      (n) => `src/schema/value.ts:${n}`,
    ),
    ...['RuleInput', 'Rules', 'Kinds', 'AskInput', 'AskOf', 'HardwareKinds', 'HardwarePlace'].map(
      (n) => `src/job/input.ts:${n}`,
    ),
    'src/job/job-builder.ts:Piece',
    'src/hardware/params.ts:Kinds',
    'src/errors/source.ts:SOURCE_KINDS',
    'src/schema/kit.ts:Group',
    'src/cutouts/params.ts:cutoutValue',
    'src/edges/params.ts:edgeValue',
    'src/stock/materials.ts:ROWS',
    // what families declare is on their own pages
    ...readdirSync(join(root, 'packages/core/src/families'), { withFileTypes: true })
      .filter((e) => e.isDirectory())
      .map((e) => `src/families/${e.name}/params.ts:values`),
    'src/families/hemmed-channel/params.ts:TabSite',
    'src/families/walls.ts:Side',
  ],
};

let flaws = 0;
const counted = (app) => {
  flaws += app.logger.errorCount + app.logger.warningCount;
};
const only = process.argv.slice(2); // packages, when not all of them are to be looked at
for (const [name, doors] of Object.entries(DOORS).filter(([n]) => only.length === 0 || only.includes(n))) {
  const files = doors.map((door) => join(root, 'packages', name, 'src', `${door}.ts`));
  const tsconfig = join(work, `${name}.tsconfig.json`);
  const compilerOptions = {
    allowJs: false,
    lib: ['ES2023', 'DOM'],
    jsx: 'react-jsx',
    jsxImportSource: 'preact',
  };
  writeFileSync(
    tsconfig,
    JSON.stringify({ extends: join(root, 'tests', 'tsconfig.json'), compilerOptions, files, include: [] }),
  );
  const app = await Application.bootstrap({
    name: `@tinwright/${name}`,
    entryPoints: files,
    tsconfig,
    readme: 'none',
    disableSources: true,
    excludeExternals: true,
    intentionallyNotExported: SPELLED_OUT[name] ?? [],
    intentionallyNotDocumented: name === 'core' ? ['family.Given.__type.read'] : [],
    requiredToBeDocumented: ['Variable', 'Function', 'Class', 'Interface', 'TypeAlias'],
    validation: { notExported: true, notDocumented: true, invalidLink: true },
    logLevel: 'Warn',
  });
  const project = await app.convert();
  if (project === undefined) process.exit(1);
  app.validate(project);
  await app.generateJson(project, join(work, `${name}.json`));
  counted(app);
}

if (only.length > 0) process.exit(flaws === 0 ? 0 : 1);

familyPages(join(work, 'families'));
const documents = (folder) =>
  readdirSync(folder)
    .filter((f) => f.endsWith('.md'))
    .map((f) => join(folder, f));
const site = await Application.bootstrap({
  name: 'Tinwright',
  entryPointStrategy: 'merge',
  entryPoints: Object.keys(DOORS).map((name) => join(work, `${name}.json`)),
  projectDocuments: [...documents(join(root, 'examples/ideas')), ...documents(join(work, 'families'))],
  readme: join(root, 'examples/ideas', 'start', 'start.md'),
  out: join(root, 'out', 'docs'),
  validation: { invalidLink: true, notExported: false },
  logLevel: 'Warn',
});
const project = await site.convert();
if (project === undefined) process.exit(1);
site.validate(project);
await site.generateDocs(project, join(root, 'out', 'docs'));
counted(site);
process.stdout.write(`out/docs, ${flaws} flaws\n`);
process.exit(flaws === 0 ? 0 : 1);
