import {
  type Job,
  JobError,
  type JobPart,
  type Problem,
  pathText,
  planPart,
  type SizeAdvice,
  sayIn,
  sizeAdvice,
  sizesIn,
  stepOf,
  type Unit,
} from '@tinwright/core';

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
    const best = bestMend(part, job.units);
    if (best === null) return own;
    const say = sayIn(job.units);
    const { path, found, bound } = best;
    const size = `${say.size(found)} or ${bound === 'most' ? 'less' : 'more'}`;
    const problem: Problem = { ...first, fix: `Use ${pathText(path)} of ${size}` };
    return [problem, ...own.filter((p) => !BUILT.test(p.code))];
  });
  const others = error.problems.filter((p) => !job.parts.some((part) => part.name === p.part));
  return new JobError([...others, ...mended]);
}

function bestMend(part: JobPart, unit: Unit): SizeAdvice | null {
  const room = (params: unknown) =>
    params !== part.params && builds({ ...part, params, asMade: params }) ? 0 : null;
  if (sizesIn(part.params).length > MOST_SIZES) return null;
  return sizeAdvice(part.params, room, () => ({ step: stepOf(unit) }))[0] ?? null;
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
