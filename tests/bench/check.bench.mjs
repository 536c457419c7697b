// All findings of the harvest carrier in the default shop, with the sizes that would pass, against planning the job they
// are about.

import { planJob, readJob } from '@tinwright/core';
import { findingsOf } from '@tinwright/core/internal';
import { DEFAULT_SHOP } from '@tinwright/shop';
import { jobFindings } from '@tinwright/shop/internal';
import { carrierData } from './carrier.mjs';
import { perCall } from './measure.mjs';

export default function run() {
  const job = readJob(carrierData());
  const plan = planJob(job);
  const all = () => [...plan.parts.flatMap((p) => findingsOf(p, [])), ...jobFindings(plan, DEFAULT_SHOP)];
  const [ours, peer] = [perCall(all), perCall(() => planJob(job))];
  const said = all();
  const count = (severity) => said.filter((f) => f.severity === severity).length;
  return {
    ours: ours.time,
    peer: peer.time,
    peerName: 'planning the same job: every part built, laid flat, formed, verified, put together',
    unit: 'ms',
    n: ours.n,
    detail: `${plan.parts.length} parts: ${count('error')} errors, ${count('warning')} warnings, ${count('note')} notes`,
  };
}
