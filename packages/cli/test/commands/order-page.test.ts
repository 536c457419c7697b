// What `order` says of a bend its page in the packet says too: the same steps one after the other, the same words, the same
// settings as finely as each of them prints.
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { tinwright } from '../host.js';
import { HEAD } from '../jobs.js';
import { emptyFolder, jobFile } from '../place.js';

const PRESS = `units: mm
name: press alone
press:
  name: press brake
  length: 1000
  force: 300
  punches: [{ name: straight, angle: 85, radius: 0.8, lengths: [20, 40, 50, 100, 200], section: [[0, 0], [10, 10.9], [10, 120], [-10, 120], [-10, 10.9]] }]
  dies: [{ name: V8, opening: 8, angle: 85, sectioned: true, section: [[-10, 0], [-4, 0], [0, -4.36], [4, 0], [10, 0], [10, -60], [-10, -60]] }]
`;
const BRAKE = `units: mm
name: brake with a rear stop
brake: { name: box brake, length: 1000, capacity: [{ material: mild-steel, thickness: 1.5 }], fingers: [25, 40, 50, 75, 100, 150, 200], rearStop: 500 }
`;
const part = (lines: string): string => `${HEAD}  - name: piece\n${lines.replace(/^/gm, '    ')}\n`;
const STRIP = part('family: bent-strip\nwidth: 80\nlegs: [40, 60, 50]\nangles: [90, -45]');
const BOX = part('family: open-box\nlength: 180\nwidth: 120\nheight: 40');
const CHANNEL = part(
  'family: hemmed-channel\nlength: 200\nwidth: 120\nheight: 40\nhem: { type: closed, length: 10 }',
);

/** Numbers of a text, and the text without them. */
const NUMBER = /-?\d+(?:\.\d+)?/g;
const numbers = (text: string): readonly number[] => (text.match(NUMBER) ?? []).map(Number);
const wordsOf = (text: string): string => text.replaceAll(NUMBER, '#');

interface Told {
  readonly action: string;
  readonly clauses: readonly string[];
}

/** Steps by `order`: action and clauses of each. */
async function ordered(job: string, shop: readonly string[]): Promise<readonly Told[]> {
  const { exit, out } = await tinwright('order', job, ...shop);
  expect(exit).toBe(0);
  return [...out.matchAll(/^ +\d+ +(?:brake|press|vise|hand) +(.*)$/gm)].map(([, line]) => {
    const [action, ...clauses] = (line as string).split('; ');
    return { action: action as string, clauses };
  });
}

/** Words of the packet from one bend of the piece to the next. */
async function printed(job: string, shop: readonly string[]): Promise<readonly string[]> {
  const path = join(await emptyFolder(), 'packet.html');
  const { exit } = await tinwright('packet', job, ...shop, '--sections', 'operations', '--out', path);
  expect(exit).toBe(0);
  const html = (await readFile(path, 'utf8')).replace(/<style[\s\S]*?<\/style>/g, '');
  const text = html
    .replace(/<[^>]*>/g, ' ')
    .replaceAll(/\s+/g, ' ')
    .replaceAll(/\bB\d+ /g, '');
  return text.split(/(?=piece: (?:bend|fold|close|roll) )/).slice(1);
}

test.each([
  ['a strip in the default shop', STRIP, null],
  ['a box on a brake with a rear stop', BOX, BRAKE],
  ['a box on a press', BOX, PRESS],
  ['a channel with hems in the default shop', CHANNEL, null],
])('%s', async (_, text, machines) => {
  const job = await jobFile(text);
  const shop = machines === null ? [] : ['--shop', await jobFile(machines)];
  const [steps, pages] = [await ordered(job, shop), await printed(job, shop)];
  expect(pages.map((p) => p.slice('piece: '.length).split('.')[0])).toEqual(
    steps.map((s) => s.action.split('.')[0]),
  );
  steps.forEach(({ action, clauses }, i) => {
    const page = pages[i] as string;
    for (const clause of clauses) {
      const [label] = clause.split(':') as [string];
      // a page that is like an earlier one says only what differs
      if (/\. As operation \d/.test(page) && !page.toLowerCase().includes(`${label}:`)) continue;
      // what is held for a bend, and the angle that is set, stand in what hands do
      const bent = /^(bend|fold) /.test(action);
      if (label === 'held' && bent) expect(page, action).toContain(clause.replace(/held: ([^,]*).*/, '$1'));
      else if (label === 'angle')
        expect(numbers(page), action).toEqual(expect.arrayContaining([...numbers(clause)]));
      else expectSaid(page, clause);
    }
  });
});

/** The same words in any case, and every number as near as a page prints it. */
function expectSaid(page: string, clause: string): void {
  const [said, wanted] = [wordsOf(page).toLowerCase(), wordsOf(clause).toLowerCase()];
  expect(said).toContain(wanted);
  const before = said.slice(0, said.indexOf(wanted)).split('#').length - 1;
  const own = numbers(page).slice(before);
  numbers(clause).forEach((n, i) => {
    expect(Math.abs((own[i] as number) - n), clause).toBeLessThan(0.51);
  });
}
