import {
  type Job,
  JobError,
  type JobPart,
  nearestSize,
  type Path,
  type Problem,
  pathText,
  planPart,
  sayIn,
  sizesIn,
  withValue,
} from '@tinwright/core';

const HALVINGS = 14; // to a ten-thousandth of the way: advice, not a limit
const MOST_SIZES = 32; // of a part that is tried: the larger it is, the longer each try takes

/** Codes of what comes to light only when a part is built. */
const BUILT = /^(flat|form|bend)-|^panel-vanishes$|^relief-too-large$/;

/**
 * Problems of a plan, with the nearest size that would work where building a part failed: every size of the part is
 * tried by itself, and the one that has to change least is named. What no single size mends keeps its words.
 */
export function withMends(job: Job, error: JobError): JobError {
  const mended = job.parts.flatMap((part) => {
    const own = error.problems.filter((p) => p.part === part.name);
    const first = own.find((p) => BUILT.test(p.code));
    if (first === undefined) return own;
    const best = bestMend(part);
    if (best === null) return own;
    const say = sayIn(job.units);
    const { path, given, found } = best;
    const size = found < given ? `${say.most(found)} or less` : `${say.least(found)} or more`;
    const problem: Problem = { ...first, fix: `Use ${pathText(path)} of ${size}` };
    return [problem, ...own.filter((p) => !BUILT.test(p.code))];
  });
  const others = error.problems.filter((p) => !job.parts.some((part) => part.name === p.part));
  return new JobError([...others, ...mended]);
}

interface Mend {
  readonly path: Path;
  readonly given: number;
  readonly found: number;
}

function bestMend(part: JobPart): Mend | null {
  const works = (params: unknown) => builds({ ...part, params, asMade: params });
  const sizes = sizesIn(part.params);
  if (sizes.length > MOST_SIZES) return null;
  const tries = sizes.flatMap(({ path, given }): readonly Mend[] => {
    const found = nearestSize(given, (v) => works(withValue(part.params, path, v)), HALVINGS);
    return found === null ? [] : [{ path, given, found }];
  });
  const change = ({ given, found }: Mend) => Math.abs(Math.log(found / Math.max(given, 1e-3)));
  return tries.reduce<Mend | null>((a, b) => (a === null || change(b) < change(a) ? b : a), null);
}

function builds(part: JobPart): boolean {
  if (part.family.check(part.params, part.sheet).length > 0) return false;
  try {
    planPart(part);
    return true;
  } catch (error) {
    if (error instanceof JobError) return false;
    throw error;
  }
}
