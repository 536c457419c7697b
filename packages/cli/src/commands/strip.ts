import { join } from 'node:path';
import { MATERIALS, type Unit } from '@tinwright/core';
import { readBend } from '../bend/read-bend.js';
import { type Host, many } from '../host/console.js';
import { EXIT, type ExitCode, refuse, writing } from '../host/failure.js';
import {
  type AnyCommand,
  command,
  DXF_OPTION,
  JSON_OPTION,
  SHEET_OPTIONS,
  UNITS_OPTION,
} from '../line/command.js';
import { fromOptions, given, typedNumber } from '../line/typed.js';
import { measuredText } from '../print/measured-text.js';
import { givenText, sizeText } from '../print/size-text.js';
import { fitStrip } from '../strips/strip-fit.js';

interface Options {
  readonly step: string | undefined;
  readonly units: Unit;
  readonly material: string;
  readonly thickness?: string;
  readonly gauge?: string;
  readonly radius?: string;
  readonly count: string;
  readonly out: string;
  readonly dxf: 'r2000' | 'r12';
  readonly measured?: string;
  readonly shop?: string;
  readonly replace: boolean;
  readonly json: boolean;
}

const MOST = 100;

export const strip: AnyCommand = command<Options>({
  verb: 'strip',
  argument: {
    name: 'step',
    describe: 'fit, for K and springback from bent strips that were measured; when left out, a strip to bend',
    needed: false,
    values: ['fit'],
  },
  summary: 'test strips of your own metal: one to bend, or K from those bent',
  options: {
    units: UNITS_OPTION,
    material: {
      type: 'string',
      default: 'mild-steel',
      describe: 'of the strip; tinwright materials lists them',
      values: MATERIALS.map((m) => m.name),
    },
    ...SHEET_OPTIONS,
    count: { type: 'string', default: '3', describe: 'how many strips will be bent' },
    out: { type: 'string', default: 'strip', describe: 'folder for the files of the strip' },
    dxf: DXF_OPTION,
    measured: { type: 'string', describe: 'for fit: file of measured strips, - for standard input' },
    shop: { type: 'string', describe: 'for fit: shop file to keep the result in' },
    replace: {
      type: 'boolean',
      default: false,
      describe: 'with --shop: take the place of strips that are more certain',
    },
    json: JSON_OPTION,
  },
  examples: [
    [
      '$0 strip --material galvanised-steel --thickness 1 --radius 1.5 --out strip',
      'a strip to cut and bend',
    ],
    [
      '$0 strip fit --measured strip/measured.yaml --shop shop.yaml',
      'K and springback, kept in the shop file',
    ],
  ],
  run,
});

async function run(options: Options, host: Host): Promise<ExitCode> {
  const { step, measured, shop, replace, json } = options;
  if (replace && shop === undefined)
    return refuse(host, json, 'usage', 'strip', '--replace is for strip fit with --shop');
  if (step === undefined) {
    if (measured !== undefined) return refuse(host, json, 'usage', 'strip', '--measured is for strip fit');
    return makeStrip(options, host);
  }
  if (step !== 'fit') return refuse(host, json, 'usage', 'strip', `"${step}" given, fit or nothing allowed`);
  if (measured === undefined)
    return refuse(
      host,
      json,
      'usage',
      'strip',
      'give what was measured: --measured FILE. tinwright strip writes one to fill in',
    );
  return fitStrip(host, measured, shop, replace, json);
}

async function makeStrip(options: Options, host: Host): Promise<ExitCode> {
  const { units, out, dxf, json } = options;
  const count = Number(options.count);
  if (!(Number.isInteger(count) && count >= 1 && count <= MOST))
    return refuse(
      host,
      json,
      'usage',
      'strip',
      `--count: ${options.count} given, whole numbers from 1 to ${MOST} allowed`,
    );
  const read = fromOptions('strip', host, json, () => readBend(request(options), units));
  if ('exit' in read) return read.exit;
  const { bend, material } = read.answer;
  const [{ stripSample }, { stripFiles }, { startFile, writeSet }] = await Promise.all([
    import('@tinwright/shop'),
    import('@tinwright/files'),
    import('../write/files.js'),
  ]);
  const sample = stripSample(material, bend, count, units);
  const files = stripFiles(sample, dxf);
  const sheet = join(out, 'measured.yaml');
  const start = measuredText({
    units,
    material: material.name,
    thickness: givenText(bend.thickness, units),
    insideRadius: givenText(bend.insideRadius, units),
    between: sizeText(sample.between, units),
    width: sizeText(sample.width, units),
    count,
  });
  const failed = await writing(host, json, async () => {
    await writeSet(out, files);
    await startFile(sheet, start); // what was measured already stays
  });
  if (failed !== EXIT.done) return failed;
  const { flat, width, between } = sample;
  if (json) {
    const answer = { out, unit: 'mm', material: material.name, ...bend, flat, width, between, count };
    host.out(
      `${JSON.stringify({ ...answer, files: [...files.map((f) => f.path), 'measured.yaml'] }, null, 2)}\n`,
    );
    return EXIT.done;
  }
  const size = (mm: number) => `${sizeText(mm, units)} ${units}`;
  host.out(`${many(count, 'strip')} of ${material.name}, ${givenText(bend.thickness, units)}: ${size(flat)} x ${size(width)}, two lines ${size(between)} apart.
1. Shear them from the sheet the parts come from, all lying the same way as the parts' bends will. Scribe the two lines
   (SCRIBE in strip.dxf and strip.svg) and measure how far apart they came out: flat.
2. Bend each once between the lines, to about 90 deg, with the tools that will bend the parts at an inside radius of ${givenText(bend.insideRadius, units)}.
   It need not be in the middle. Note what the leaf or punch was set to: set.
3. Measure the angle that is left: angle; and from where the outside faces would meet to either line: legs.
4. Write it all in ${sheet}, then: tinwright strip fit --measured ${sheet} --shop SHOP-FILE
Caution: cut edges are sharp, brakes and shears crush. Follow the machines' manuals.
`);
  return EXIT.done;
}

function request(o: Options): object {
  return {
    stock: given({ material: o.material, thickness: typedNumber(o.thickness), gauge: typedNumber(o.gauge) }),
    bending: given({ rule: 'k-factor', insideRadius: typedNumber(o.radius) }),
    angle: 90,
  };
}
