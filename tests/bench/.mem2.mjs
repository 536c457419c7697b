import { readFileSync } from 'node:fs';
import { planJob, readJob } from '@tinwright/core';
import { DEFAULT_SHOP, planSequence } from '@tinwright/shop';
import { parse } from 'yaml';
const used = (what) => { gc(); gc(); console.log(what, (process.memoryUsage().heapUsed / 1e6).toFixed(0), 'MB', (process.cpuUsage().user / 1e6).toFixed(1), 's'); };
const plan = planJob(readJob(parse(readFileSync(process.argv[2], 'utf8'))));
const shop = { ...DEFAULT_SHOP, table: null };
used('plan'); const all = [];
for (const p of plan.parts) { all.push(planSequence(p, shop)); used(p.name); }
console.log(all.length);
