import { spawnSync } from 'node:child_process';
import { accessSync, constants, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { BIN } from './built.js';

const { bin, version } = JSON.parse(readFileSync(new URL('../package.json', import.meta.url), 'utf8')) as {
  readonly bin: Readonly<Record<string, string>>;
  readonly version: string;
};

test('the command stands outside of what the build makes, so that it can be linked before', () => {
  expect(bin).toEqual({ tinwright: './bin/tinwright.js' });
  expect(fileURLToPath(new URL(`../${bin.tinwright}`, import.meta.url))).toBe(BIN);
  expect(() => accessSync(BIN, constants.X_OK)).not.toThrow();
});

test('it runs as it is linked', () => {
  const { status, stdout, stderr } = spawnSync(process.execPath, [BIN, '--version'], { encoding: 'utf8' });
  expect({ status, stdout, stderr }).toEqual({ status: 0, stdout: `${version}\n`, stderr: '' });
});
