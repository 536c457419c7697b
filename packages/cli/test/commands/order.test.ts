import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { CARRIER } from '../carrier.js';
import { tinwright } from '../host.js';
import { HEAD } from '../jobs.js';
import { jobFile, make } from '../place.js';

/** Deeper than the brake of the default shop clears (100 mm under the beam). */
const DEEP = `${HEAD}  - name: bin
    family: open-box
    length: 260
    width: 180
    height: 120
`;

interface Operation {
  readonly bends: readonly string[];
  readonly machine: string;
  readonly note: string;
}

describe('the carrier in the default shop', () => {
  test('hems, then tabs, then sides; the handle ends in the vise', async () => {
    const { exit, out, err } = await tinwright('order', await jobFile(CARRIER), '--json');
    expect(err).toBe('');
    expect(exit).toBe(0);
    const { shop, parts, batch } = JSON.parse(out);
    expect(shop).toMatch(/invented/);
    const of = (name: string): { status: string; operations: readonly Operation[] } =>
      parts.find((p: { name: string }) => p.name === name).sequence;
    expect(of('body').status).toBe('optimal');
    // common practice, no source
    const kinds = of('body').operations.map((o) => (o.bends[0] as string).replace(/-.*/, ''));
    expect([...new Set(kinds)]).toEqual([
      'hem',
      'tab',
      expect.stringMatching(/north|south/),
      expect.stringMatching(/north|south/),
    ]);
    const handle = of('handle').operations;
    expect(handle.slice(-2).map((o) => [o.machine, o.bends[0]])).toEqual([
      ['vise', expect.stringMatching(/tab/)],
      ['vise', expect.stringMatching(/tab/)],
    ]);
    expect(of('end')).toMatchObject({ status: 'optimal', operations: [] });
    expect(batch.steps).toHaveLength(of('body').operations.length + handle.length);
    expect(batch.seconds).toBeLessThanOrEqual(batch.apart);
  });

  test('as text: a line for every operation, what is held and set, and all parts together', async () => {
    const { out } = await tinwright('order', await jobFile(CARRIER));
    expect(out).toMatch(
      /^body: 8 operations, \d+ min \d+ s a piece; no order that changes tools only where it has to takes less time$/m,
    );
    expect(out).toMatch(
      /^ {2}1 +brake +fold hem-north \d+(\.\d)?° up; held: .*; marked face: up; .*angle: stop at/m,
    );
    expect(out).toMatch(
      /^ {2}7 +brake +bend (north|south) 90° up; held: base, .*fingers: .* mm from the left, /m,
    );
    expect(out).toMatch(/vise +bend tab-west 90° down; held: tab-west, /);
    expect(out).toMatch(/^end: nothing to bend$/m);
    expect(out).toMatch(/^All parts together: .* for setting up/m);
  });

  test('in German: steps, machines and sizes with a comma', async () => {
    const { out } = await tinwright('order', await jobFile(CARRIER), '--lang', 'de');
    expect(out).toMatch(
      /^body: 8 Arbeitsgänge, .* keine Folge, die Werkzeuge nur wechselt, wo sie muss, braucht weniger Zeit$/m,
    );
    expect(out).toMatch(/Abkantbank +hem-north nach oben bis \d+(,\d)?° vorbiegen; gehalten: /);
    expect(out).toMatch(/Anlegelinie: \d+,\d mm von der Biegelinie/);
    expect(out).toMatch(/^ {2}1 +body 1 bis \d/m);
  });

  test('one part alone has no order of all parts', async () => {
    const { out } = await tinwright('order', await jobFile(CARRIER), '--part', 'body');
    expect(out).not.toContain('handle');
    expect(out).not.toContain('All parts');
  });

  test('a part there is none of', async () => {
    const { exit, err } = await tinwright('order', await jobFile(CARRIER), '--part', 'bdoy');
    expect(exit).toBe(2);
    expect(err).toContain('"bdoy" given');
    expect(err).toContain('body');
  });
});

describe('a part that cannot be bent', () => {
  test('its reasons and what would help, exit 1', async () => {
    const { exit, out } = await tinwright('order', await jobFile(DEEP));
    expect(exit).toBe(1);
    expect(out).toMatch(/^bin: no order of bends works$/m);
    expect(out).toMatch(/runs into the beam over the fingers, by \d/);
    expect(out).toMatch(/would help: .*height/);
  });

  test('the change it names works when it is made', async () => {
    const { out } = await tinwright('order', await jobFile(DEEP), '--json');
    const { mends } = JSON.parse(out).parts[0].sequence;
    const { found } = mends.find((m: { parameter: string }) => m.parameter === 'height');
    expect(found).toBeLessThan(120);
    const mended = await tinwright('order', await jobFile(DEEP.replace('height: 120', `height: ${found}`)));
    expect(mended.exit).toBe(0);
    expect(mended.out).toMatch(/no order (that changes tools only where it has to )?takes less time/);
  });

  test('check and make with the shop say so as a finding; without it they do not', async () => {
    const alone = await tinwright('check', await jobFile(DEEP));
    expect(alone.exit).toBe(0);
    const { exit, out } = await tinwright('check', await jobFile(DEEP), '--shop', 'default');
    expect(exit).toBe(1);
    expect(out).toMatch(/^error bin: no order of bends works in .*: .* runs into the b(ed|eam)/m);
    const made = await make(DEEP, '--shop', 'default', '--strict');
    expect(made.exit).toBe(1);
    expect(made.files).toEqual(['job.yaml']);
  });
});

test('make with a shop writes bend orders, reasons and findings to the manifest', async () => {
  const path = await jobFile(CARRIER);
  const out = join(path, '..', 'out');
  const { exit } = await tinwright('make', path, '--out', out, '--shop', 'default');
  expect(exit).toBe(0);
  const manifest = JSON.parse(await readFile(join(out, 'job.json'), 'utf8'));
  const [body] = manifest.parts;
  expect(body.sequence.status).toBe('optimal');
  expect(body.sequence.reasons).toEqual([]);
  const bent = body.sequence.operations.filter((o: { action: string }) => o.action !== 'fold');
  expect(bent.flatMap((o: Operation) => o.bends).toSorted()).toEqual(
    body.bends.map((b: { id: string }) => b.id).toSorted(),
  );
  for (const { note } of body.sequence.operations) expect(note).toMatch(/held/);
  expect(manifest.findings.some((f: { code: string }) => f.code === 'tolerance')).toBe(true);
  const bare = join(path, '..', 'bare');
  await tinwright('make', path, '--out', bare);
  const without = JSON.parse(await readFile(join(bare, 'job.json'), 'utf8'));
  expect(without.parts[0]).not.toHaveProperty('sequence');
  // the cut files do not change with the shop
  expect(await readFile(join(bare, 'parts/body.dxf'), 'utf8')).toBe(
    await readFile(join(out, 'parts/body.dxf'), 'utf8'),
  );
});

test('a job in inches: sizes to a thousandth, fingers by the name the shop in millimetres has for them', async () => {
  const job = await jobFile(`units: in
stock: { material: mild-steel, gauge: 20 }
bending: { rule: k-factor, k: 0.42, insideRadius: 1/16 }
parts:
  - { name: tray, family: open-box, length: 12, width: 8, height: 1 1/2 }
`);
  const { out } = await tinwright('order', job);
  expect(out).toMatch(/fingers: \d+ mm \+|fingers: \d+( \+ \d+)* mm/);
  expect(out).toMatch(/sight line: [\d.]+ in from the bend line/);
  const made = await tinwright('make', job, '--out', `${job}-made`);
  expect(made.out).toMatch(/tray +1 x open-box +blank .* in +[\d.]+ lb/);
});
