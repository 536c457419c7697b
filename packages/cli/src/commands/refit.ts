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
import { type RefitSet, refitFiles } from '../write/refit-files.js';

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
  let set = null as RefitSet | null;
  const failed = await writing(host, json, async () => {
    if (changed.length === 0 && !(await setsIn(out)).has('job.json')) return;
    await updateSet(out, async (standing) => {
      set = await refitFiles(fitted.answer, { out, dxf, inputs: host.inputs }, standing);
      return set?.files ?? null;
    });
  });
  if (failed !== EXIT.done) return failed;
  const { files = [], again = [], gone = [] } = set ?? {};
  const names = changed.map((p) => p.name);
  if (json) {
    const answer = {
      out,
      changes,
      changed: names,
      again,
      files: files.map((f) => f.path),
      gone,
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
    host.out(`${whatToCut(names, { files, again, gone }, out)}\n`);
  }
  return worst(after.findings) === 'error' ? EXIT.findings : EXIT.done;
}

/** What there is to cut, and what became of the folder besides. */
function whatToCut(parts: readonly string[], { files, again, gone }: RefitSet, out: string): string {
  const cut =
    parts.length === 0
      ? 'Nothing to cut anew.'
      : `${many(parts.length, 'part')} to cut anew: ${parts.join(', ')}.`;
  const older = again.length === 0 ? '' : ` ${out} held ${again.join(', ')} at other sizes: written again.`;
  const written = files.length === 0 ? '' : ` ${many(files.length, 'file')} in ${out}.`;
  return `${cut}${older}${written}${goneText(gone)}`;
}

const CUT_LIST = 'cutlist.csv';

/** What a folder no longer holds, and how to have a cut list again. */
function goneText(gone: readonly string[]): string {
  if (gone.length === 0) return '';
  const shown = gone.length > MOST_SHOWN ? [...gone.slice(0, MOST_SHOWN), 'more'] : gone;
  const list = gone.includes(CUT_LIST)
    ? ' For a cut list of these sizes write measured: into the job and make it again with --rack.'
    : '';
  return `\n${many(gone.length, 'file')} of the sizes before taken away: ${shown.join(', ')}.${list}`;
}

const MOST_SHOWN = 12;

function rowOf(
  host: Host,
  { part, dimension, before, after, measured }: RefitChange,
  units: Unit,
): readonly string[] {
  const change = `${sizeText(before, units)} -> ${sizeText(after, units)} ${units}`;
  return [paint(host, 'bold', part), dimension, change, measured ? 'measured' : ''];
}
