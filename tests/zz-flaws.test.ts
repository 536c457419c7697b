import { readdirSync, readFileSync } from 'node:fs';
import { FAMILIES, planJob, readJob } from '@tinwright/core';
import { makingOf, packetPages } from '@tinwright/export';
import { test } from 'vitest';
import { parse } from 'yaml';
import rowMarker from '../examples/row-marker.mjs';
import { pageFlaws } from './kit/page-flaws.js';
test('flaws', () => {
  const out: string[] = [];
  for (const f of readdirSync('examples').filter((f) => f.endsWith('.yaml'))) {
    const plan = planJob(readJob(parse(readFileSync(`examples/${f}`, 'utf8')), [...FAMILIES, rowMarker]));
    const making = makingOf(plan, null);
    for (const [paper, dims, language, lettering, worksheet] of [
      ['A4', 'mm', 'en', 2.5, false],
      ['letter', '1/16', 'en', 2.5, false],
      ['A3', 'mm', 'de', 2.5, false],
      ['tabloid', 'in', 'de', 3.5, false],
      ['A4', 'mm', 'de', 3.5, false],
      ['A4', 'mm', 'en', 2.5, true],
      ['A4', '1/32', 'de', 3.5, true],
    ] as const) {
      try {
        const t = performance.now();
        const pages = packetPages(plan, making, { paper, dims, language, lettering, worksheet, sets: worksheet ? 2 : 1 });
        const ms = performance.now() - t;
        const flaws = pages.flatMap((p, i) => pageFlaws(p).map((x) => `${f} ${paper} ${dims} ${language} ${lettering} ${worksheet} page ${i + 1} ${p.anchors?.[0]?.name ?? ''}: ${x}`));
        out.push(`${f} ${paper} ${dims} ${language} ${lettering} ${worksheet}: ${pages.length} pages ${Math.round(ms)} ms, ${flaws.length} flaws`, ...flaws.slice(0, 4));
      } catch (e) { out.push(`${f} ${paper} ${dims} ${lettering} ${worksheet}: ${String(e).slice(0, 300)}`); }
    }
  }
  process.stdout.write(out.join('\n') + '\n');
}, 200000);
