import type { JobPlan } from './plan.js';
import { codeWith, type OwnCode, revivedJoint, revivedPart, reviveJob } from './revive.js';

/**
 * A plan that crossed to another thread, with its code again. Whatever takes a plan does this for built-in families,
 * rules and fasteners by itself; those of one's own are passed here once, on the other side. A plan that did not cross
 * is given back as it is.
 * @throws JobError `code-missing` naming what is not there; RangeError for a name that is taken
 */
export function revivePlan(plan: JobPlan, own: OwnCode = {}): JobPlan {
  const job = reviveJob(plan.job, own);
  if (job === plan.job) return plan;
  const code = codeWith(own);
  const { assembly } = plan;
  const seated = assembly?.seated.map((s) => ({ ...s, joint: revivedJoint(s.joint, code) })) ?? [];
  const parts = plan.parts.map((p) => revivedPart(p, code));
  return { ...plan, job, parts, assembly: assembly === null ? null : { ...assembly, seated } };
}
