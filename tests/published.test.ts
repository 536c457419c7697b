// What the packages say of themselves when they are published: nothing runs when they are installed, what they need is
// pinned, and where they were built can be proved.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { parse } from 'yaml';
import { PACKAGES, ROOT } from './kit/imports.js';

interface Manifest {
  readonly license?: string;
  readonly files?: readonly string[];
  readonly scripts?: Readonly<Record<string, string>>;
  readonly dependencies?: Readonly<Record<string, string>>;
  readonly publishConfig?: { readonly access?: string; readonly provenance?: boolean };
}

const ON_INSTALL = ['preinstall', 'install', 'postinstall', 'prepare'];
const read = (path: string) => readFileSync(join(ROOT, path), 'utf8');

describe.each(PACKAGES)('the package %s', (name) => {
  const manifest = JSON.parse(read(`packages/${name}/package.json`)) as Manifest;

  test('runs nothing when it is installed', () => {
    expect(Object.keys(manifest.scripts ?? {}).filter((s) => ON_INSTALL.includes(s))).toEqual([]);
  });

  test('pins what it needs, to the last digit or to its sister of the same version', () => {
    const loose = Object.entries(manifest.dependencies ?? {}).filter(
      ([, version]) => !/^(?:\d+\.\d+\.\d+(?:-[\w.]+)?|workspace:\*)$/.test(version),
    );
    expect(loose).toEqual([]);
  });

  test('brings its licence, and says when published where it was built', () => {
    expect(manifest.license).toBe('MIT');
    expect(manifest.files).toContain('LICENSE');
    expect(manifest.publishConfig).toMatchObject({ access: 'public', provenance: true });
  });
});

test('no library that is installed may run a script of its own', () => {
  const { onlyBuiltDependencies } = parse(read('pnpm-workspace.yaml')) as Record<string, unknown>;
  expect(onlyBuiltDependencies).toEqual([]);
});
