import { JobError, type JobPlan, pathText, problemText } from '@tinwright/core';
import { quoted } from '@tinwright/core/internal';
import type { DrawnFiles } from '@tinwright/paper';
import { type Host, many, paint, table } from '../host/console.js';
import { EXIT, type ExitCode, writing } from '../host/failure.js';
import type { OptionSpec } from '../line/command.js';
import { joinedList } from '../write/joined-list.js';

/** Papers and ways to print sizes, as the export package has them; here so that help need not load it. */
export const PAPER_NAMES: readonly string[] = ['A4', 'letter', 'A3', 'tabloid'];
export const DIMS: readonly string[] = ['mm', 'in', '1/8', '1/16', '1/32', '1/64'];

export const PAPER_OPTION: OptionSpec = {
  type: 'string',
  choices: PAPER_NAMES,
  describe: 'to print on; A4, or letter for a job in inches',
};

export const DIMS_OPTION: OptionSpec = {
  type: 'string',
  choices: DIMS,
  describe: 'sizes in mm, in decimal inches or to the nearest fraction; as the job when left out',
};

/** Which verb draws what job, into which folder; of some parts, those of the others stay there. */
export interface DrawingAsk {
  readonly verb: string;
  readonly out: string;
  readonly plan: JobPlan;
  readonly list: 'plans.json' | 'templates.json';
  readonly of: 'all parts' | 'some parts';
}

/** Draw and write, and say what was written; problems are told with the option that is at fault. */
export async function drawing(
  { verb, out, plan, list, of }: DrawingAsk,
  host: Host,
  json: boolean,
  draw: () => Promise<DrawnFiles>,
): Promise<ExitCode> {
  const { checkFolder, refuseJobSet, updateSet } = await import('../write/files.js');
  const set = { out, list, of, plan, inputs: host.inputs };
  const refused = await writing(host, json, () =>
    checkFolder(out, (standing) => refuseJobSet(set, standing)),
  );
  if (refused !== EXIT.done) return refused;
  const drawn = await refusable(verb, host, json, draw);
  if (drawn === null) return EXIT.unreadable;
  const failed = await writing(host, json, () =>
    updateSet(out, async (standing) => {
      await refuseJobSet(set, standing);
      return of === 'all parts' ? drawn.files : joinedList(standing, drawn.files);
    }),
  );
  if (failed !== EXIT.done) return failed;
  if (json) {
    const files = drawn.files.map((f) => f.path);
    host.out(`${JSON.stringify({ out, parts: drawn.parts, files }, null, 2)}\n`);
    return EXIT.done;
  }
  host.out(
    table(drawn.parts.map((p) => [paint(host, 'bold', p.name), p.scale, many(p.pages, 'page'), p.pdf])),
  );
  host.out(`${many(drawn.files.length, 'file')} in ${out}.\n`);
  return EXIT.done;
}

/** What was drawn, or null after it was told why it cannot be. */
export async function refusable<T>(
  verb: string,
  host: Host,
  json: boolean,
  draw: () => Promise<T>,
): Promise<T | null> {
  try {
    return await draw();
  } catch (error) {
    if (!(error instanceof JobError)) throw error;
    const problems = error.problems.map((p) => ({ ...p, path: p.path.map((step) => `--${step}`) }));
    if (json) {
      const list = problems.map(({ code, part, path, message, fix }) => ({
        code,
        part,
        path: pathText(path),
        message,
        fix,
      }));
      host.out(`${JSON.stringify({ problems: list }, null, 2)}\n`);
    } else
      for (const p of problems) {
        const whose = p.part === undefined ? '' : `part ${quoted(p.part)}: `;
        host.err(`${verb}: ${whose}${problemText(p)}\n`);
      }
    return null;
  }
}
