import { type AnyFamily, type RefitChange, refit as refitJob, type Unit } from '@tinwright/core';
import { hardware } from '@tinwright/core/hardware';
import { type Host, many, paint, table } from '../host/console.js';
import { EXIT, type ExitCode, refuse, writing } from '../host/failure.js';
import { type AnyCommand, command, DXF_OPTION, JOB, JSON_OPTION, SHOP_OPTION } from '../line/command.js';
import { fromMeasured, MEASURED_OPTION, readMeasured } from '../line/measured.js';
import { contextOf, shopAsked } from '../open/open-shop.js';
import { withText } from '../open/open-text.js';
import { findingEntries, findingLines, worst } from '../print/findings.js';
import { sizeText } from '../print/size-text.js';
import { refitFiles } from '../write/refit-files.js';

interface Options {
  readonly job: string;
  readonly measured: readonly string[];
  readonly made: readonly string[];
  readonly out: string;
  readonly dxf: 'r2000' | 'r12';
  readonly shop?: string;
  readonly json: boolean;
}

export const refit: AnyCommand = command<Options>({
  verb: 'refit',
  argument: JOB,
  summary: 'fit the parts still to be cut to sizes measured on finished ones',
  options: {
    measured: MEASURED_OPTION,
    made: {
      type: 'strings',
      default: [],
      describe: 'a part that is made and stays as it is; may be repeated',
    },
    out: { type: 'string', default: 'refit', describe: 'folder for the files of the changed parts' },
    dxf: DXF_OPTION,
    shop: SHOP_OPTION,
    json: JSON_OPTION,
  },
  examples: [
    ['$0 refit carrier.yaml --measured body.insideWidth=197.6', 'what changes, and files to cut again'],
    ['$0 refit carrier.yaml --measured body.insideWidth=197.6 --made end', 'the ends are cut already'],
  ],
  run,
});

async function run(options: Options, host: Host, families: readonly AnyFamily[]): Promise<ExitCode> {
  const { job, made, out, dxf, shop, json } = options;
  const measured = readMeasured(options.measured);
  if (typeof measured === 'string') return refuse(host, json, 'usage', 'refit', measured);
  const asked = await shopAsked(host, shop, json);
  if ('exit' in asked) return asked.exit;
  const context = await contextOf(asked.shop);
  const opened = await withText(host, job, 'job', json, (data) =>
    fromMeasured('refit', host, json, measured, () =>
      refitJob(data, { measured, ...context, made }, families, { hardware }),
    ),
  );
  const fitted = 'exit' in opened ? opened : opened.answer;
  if ('exit' in fitted) return fitted.exit;
  const { after, changes, changed } = fitted.answer;
  const { setsIn, updateSet } = await import('../write/files.js');
  let written: readonly string[] = [];
  const failed = await writing(host, json, async () => {
    if (changed.length === 0 && !(await setsIn(out)).has('job.json')) return;
    await updateSet(out, async (standing) => {
      const files = await refitFiles(fitted.answer, { out, dxf }, standing);
      written = files?.map((f) => f.path) ?? [];
      return files;
    });
  });
  if (failed !== EXIT.done) return failed;
  if (json) {
    const answer = {
      out,
      changes,
      changed: changed.map((p) => p.name),
      files: written,
      findings: findingEntries(after.findings, after.job.units),
    };
    host.out(`${JSON.stringify(answer, null, 2)}\n`);
  } else {
    host.out(
      changes.length === 0
        ? 'No size changes.\n'
        : table(changes.map((c) => rowOf(host, c, after.job.units))),
    );
    for (const line of findingLines(host, after.findings, after.job.units)) host.out(`${line}\n`);
    host.out(
      `${whatToCut(
        changed.map((p) => p.name),
        written.length,
        out,
      )}\n`,
    );
  }
  return worst(after.findings) === 'error' ? EXIT.findings : EXIT.done;
}

function whatToCut(parts: readonly string[], files: number, out: string): string {
  if (parts.length > 0)
    return `${many(parts.length, 'part')} to cut anew: ${parts.join(', ')}. ${files} files in ${out}.`;
  const older = files > 0 ? ` ${out} held parts of other sizes: ${files} files written again.` : '';
  return `Nothing to cut anew.${older}`;
}

function rowOf(
  host: Host,
  { part, dimension, before, after, measured }: RefitChange,
  units: Unit,
): readonly string[] {
  const change = `${sizeText(before, units)} -> ${sizeText(after, units)} ${units}`;
  return [paint(host, 'bold', part), dimension, change, measured ? 'measured' : ''];
}
