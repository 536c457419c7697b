import { readFileSync } from 'node:fs';
import { planJob, readJob } from '@tinwright/core';
import { makingOf, packetPages } from '@tinwright/paper';
import { packetFiles } from '@tinwright/paper';
import { parse } from 'yaml';
const used = (what) => { gc(); gc(); console.log(what, (process.memoryUsage().heapUsed / 1e6).toFixed(0), 'MB', (process.cpuUsage().user / 1e6).toFixed(1), 's'); };
const data = parse(readFileSync(process.argv[2], 'utf8'));
used('start');
const plan = planJob(readJob(data)); used('plan');
setInterval(() => {}, 1e6).unref();
const making = makingOf(plan, null); used('making');
for (const s of ['cuts', 'plans', 'operations', 'inspection', 'templates']) { const p = packetPages(plan, making, { paper: 'A4', dims: 'mm', sections: [s] }); used(`${s}: ${p.length} pages`); }
const f = await packetFiles(plan, making, { paper: 'A4', dims: 'mm' }, ['pdf']); used('files');
console.log(f.pages, f.files[0].content.length, making.findings.length, plan.findings.length);
