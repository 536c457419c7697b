// What the code of a family of one's own does wrong is told as its own, with the place in its module.
import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { tinwright } from '../host.js';
import { emptyFolder } from '../place.js';

const DOOR = new URL('../../../core/dist/family.js', import.meta.url).href;

/** What `check` says of a job with one part of a family that builds so; the module and the job by name. */
async function saidOf(build: string, more = '') {
  const folder = await emptyFolder();
  const own = join(folder, 'own.mjs');
  await writeFile(
    own,
    `import * as t from ${JSON.stringify(DOOR)};
export default t.defineFamily({
  name: 'bean-rod',
  values: { length: t.value.size('of the rod') },
  build: (p) => ${build},
  ${more}
  describe: { title: 'rod', summary: 'A rod.', example: { length: 100 } },
});
`,
  );
  const job = join(folder, 'rod.yaml');
  await writeFile(
    job,
    `units: mm
stock: { material: mild-steel, thickness: 1 }
parts:
  - { name: rod, family: bean-rod, length: 100 }
`,
  );
  const about = (text: string) => text.replaceAll(own, 'own.mjs').replaceAll(job, 'rod.yaml');
  const run = async (...argv: readonly string[]) => {
    const { exit, out, err } = await tinwright(...argv, '--with', own);
    return { exit, out, err: about(err) };
  };
  return { check: await run('check', job), family: await run('families', 'bean-rod') };
}

describe('a family whose code', () => {
  test.each([
    ['builds nothing', '[]', 'no panel given, one or more allowed'],
    ['builds undefined', 'undefined', 'undefined given, a list of verbs allowed'],
    [
      'cuts holes of no size',
      "[t.panel('base', t.rectangle(100, 60)), t.hole('base', { at: [30, 30], diameter: -5 })]",
      'panel "base": hole 1, diameter: -5 mm given, 0.01 mm to 10000 mm allowed',
    ],
    ['starts with nothing', "[t.panel('base', t.rectangle(0, 0))]", 'panel "base" encloses nothing'],
  ])('%s: its module is named', async (_, build, says) => {
    const { check, family } = await saidOf(build);
    expect(check).toMatchObject({ exit: 2, out: '' });
    expect(check.err).toContain(`rod.yaml:4:5: part "rod": ${says}`);
    expect(check.err).toContain('Mend family "bean-rod" in own.mjs.\n');
    expect(family).toMatchObject({ exit: 2, out: '' });
    expect(family.err).toContain(says);
    expect(family.err).toContain('Mend family "bean-rod" in own.mjs.\n');
    expect(`${check.err}${family.err}`).not.toContain('fault of the program');
  });

  test.each([
    ['builds', 'p.nowhere.at', ''],
    ['checks', '[]', 'check: (p) => p.nowhere.at,'],
    ['derives', "[t.panel('base', t.rectangle(100, 60))]", 'derived: (p) => p.nowhere.at,'],
  ])('throws where it %s: the line is named', async (_, build, more) => {
    const { check } = await saidOf(build, more);
    expect(check.exit).toBe(2);
    expect(check.err).toMatch(
      /^rod\.yaml:\S+ part "rod": the family's code throws TypeError: Cannot read properties of undefined \(reading 'at'\)\. Mend family "bean-rod" in own\.mjs:[56]:\d+\.\n$/,
    );
  });

  test('derives sizes that are none: named', async () => {
    const { check } = await saidOf(
      "[t.panel('base', t.rectangle(100, 60))]",
      "derived: () => [t.derivedSize('room', NaN, 'length', 'inside')],",
    );
    expect(check.err).toContain('derived size "room": NaN given, -100000 mm to 100000 mm allowed');
  });

  test('throws a book: its first letters are told', async () => {
    const { check } = await saidOf("{ throw new Error('x'.repeat(1e6)); }");
    expect(check.err).toMatch(/throws Error: x{290,}….{1,80}\n$/);
  });
});
