// Sources of the packages and what they import.
import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import ts from 'typescript';

export const ROOT = fileURLToPath(new URL('../..', import.meta.url));
/** Packages, each may import those before it. */
export const PACKAGES = [
  'core',
  'shop',
  'cutting',
  'words',
  'files',
  'paper',
  'page',
  'testing',
  'queue',
  'cli',
];

export interface Import {
  readonly from: string;
  readonly text: string;
  readonly target: string | null;
}

export const slashed = (path: string) => path.split(sep).join('/');

/** Sources below a folder. */
export function sources(dir: string): readonly string[] {
  return readdirSync(dir, { withFileTypes: true }).flatMap((e) => {
    const path = join(dir, e.name);
    if (e.isDirectory()) return e.name === 'node_modules' || e.name === 'dist' ? [] : sources(path);
    return /\.tsx?$/.test(e.name) && !e.name.endsWith('.d.ts') ? [path] : [];
  });
}

/** The source an import of a `.js` stands for. */
export function sourceOf(path: string): string {
  const [ts, tsx] = [path.replace(/\.js$/, '.ts'), path.replace(/\.js$/, '.tsx')];
  return existsSync(tsx) ? tsx : ts;
}

/** Static, dynamic, re-exported and type imports of a file. */
export function importsOf(file: string, root: string): readonly Import[] {
  const { importedFiles } = ts.preProcessFile(readFileSync(file, 'utf8'), true, true);
  return importedFiles.map(({ fileName: text }) => {
    const target = text.startsWith('.') ? slashed(relative(root, sourceOf(join(dirname(file), text)))) : null;
    return { from: slashed(relative(root, file)), text, target };
  });
}
