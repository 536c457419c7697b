import { spawnSync } from 'node:child_process';
import { accessSync, constants, mkdtempSync, readFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
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

test('from a folder that is gone it says so in one line', () => {
  const folder = mkdtempSync(join(tmpdir(), 'tinwright-gone-'));
  const { status, stderr } = spawnSync(
    'sh',
    ['-c', 'rmdir "$0" && exec "$1" "$2" --version', folder, process.execPath, BIN],
    {
      cwd: folder,
      encoding: 'utf8',
    },
  );
  expect(stderr).toBe('tinwright: the folder it was started in is gone. Change to one that is there.\n');
  expect(status).toBe(2);
});

test('where it may open too few files to be loaded it says so in one line', () => {
  // how many are too few is another number for every Node: from 30 down, the first that are
  let [files, status, stderr] = [30, 0 as number | null, ''];
  for (; status === 0 && files > 0; files -= 1)
    ({ status, stderr } = spawnSync(
      'sh',
      ['-c', `ulimit -n ${files}; exec "$0" "$1" families`, process.execPath, BIN],
      { encoding: 'utf8' },
    ));
  expect(stderr).toBe(
    'tinwright: cannot be loaded, the system says EMFILE. Of files open at once it needs some forty.\n',
  );
  expect(status).toBe(2);
});
