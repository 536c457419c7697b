import { writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { CARRIER } from '../carrier.js';
import { tinwright } from '../host.js';
import { emptyFolder } from '../place.js';

test('make, shear and nest answer in the language that is asked for, numbers as it writes them', async () => {
  const at = await emptyFolder();
  const [job, rack] = [join(at, 'carrier.yaml'), join(at, 'rack.yaml')];
  await writeFile(job, CARRIER);
  await writeFile(
    rack,
    'units: mm\nkerf: 1.3\nsheets:\n  - { name: full, material: mild-steel, thickness: 1, size: [2000, 1000] }\n',
  );
  const asked = ['--rack', rack, '--lang', 'de'];
  const sheared = await tinwright('shear', job, ...asked, '--out', join(at, 's'), '--steps', '50');
  expect(sheared.out).toMatch(/Tafel 1 .*Zuschnitte {2}\d+,\d % genutzt {2}Reststück [\d,]+ x [\d,]+ mm/);
  expect(sheared.out).toMatch(/Schnitte, Anschlag \d+-mal eingestellt\. Öffne .*shear\.pdf\./);
  const made = await tinwright('make', job, ...asked, '--out', join(at, 'm'));
  expect(made.out).toMatch(/Zuschnitt \d+,\d+ x \d+(,\d+)? mm {2}\d,\d+ kg/);
  expect(made.out).toMatch(/\d+ Dateien in .*m: .*\.svg im Browser öffnen\./);
  const nested = await tinwright('nest', job, ...asked, '--out', join(at, 'n'), '--moves', '0');
  expect(nested.out).toMatch(/\d+ Teile {2}\d+,\d % der Tafel {2}bis [\d,]+ mm von 2000 mm/);
  expect(nested.out).toContain('1 Tafel in ');
});
