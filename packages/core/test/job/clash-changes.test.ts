// Two pieces in one place come with a place in the job that parts them, and it does.
import { FAMILIES, type Finding, planJob, readJob } from '@tinwright/core';
import { hardware } from '@tinwright/core/hardware';
import { withValue } from '@tinwright/core/internal';
import { expect, test } from 'vitest';

const BIN = { name: 'bin', family: 'open-box', length: 300, width: 160, height: 80 };
const DIVIDER = { name: 'divider', family: 'divider', length: 158, height: 60, tabs: { length: 18 } };
const RIVET = { 'blind-rivet': { diameter: 3.2, count: 2 } };
const SHUT = { name: 'shut', from: 'body.rim', to: 'lid.rim', by: 'none' };
const HINGE = {
  name: 'hinge',
  type: 'hinge',
  on: 'body.north-out',
  and: 'lid.north-out',
  length: 60,
  holes: { diameter: 4.2, count: 2 },
};
const half = (name: string) => ({ name, family: 'hinged-box', length: 200, width: 120, height: 60 });

const job = (parts: readonly object[], joints: readonly object[], bought: readonly object[] = []) => ({
  units: 'mm',
  stock: { material: 'mild-steel', thickness: 0.8 },
  parts,
  joints,
  hardware: bought,
});

const clashes = (data: unknown): readonly Finding[] =>
  planJob(readJob(data as unknown, FAMILIES, { hardware })).findings.filter((f) => f.code === 'clash');

const dividers = (at: readonly number[]) =>
  job(
    [BIN, { ...DIVIDER, quantity: 2 }],
    [{ name: 'fronts', from: 'bin.south', to: 'divider.west', at, edge: 'west', by: RIVET }],
  );
const small = { family: 'open-box', length: 90, width: 60, height: 40 };
const onFloor = job(
  [BIN, { name: 'one', ...small }, { name: 'two', ...small }],
  [
    { name: 'a', from: 'bin.floor', to: 'one.underside', by: 'none', shift: { across: 0, up: 0 } },
    { name: 'b', from: 'bin.base', to: 'two.underside', by: 'none', shift: { across: 0, up: 0 } },
  ],
);
const hinges = job([half('body'), half('lid')], [SHUT], [{ ...HINGE, at: [{ west: 60 }, { west: 80 }] }]);

test.each([
  ['dividers at one place of a wall', dividers([100, 100]), 'at'],
  ['dividers too near', dividers([100, 105]), 'at'],
  ['boxes on one floor', onFloor, 'across'],
  ['hinges on one line', hinges, 'west'],
])('%s: the place that is told parts them', (_, data, name) => {
  const [clash] = clashes(data);
  const [change] = clash?.changes ?? [];
  if (change === undefined || !('found' in change)) throw new Error('nothing told');
  expect(change.path).toContain(name);
  expect(clashes(withValue(data, change.path, change.found))).toEqual([]);
});

interface Made {
  readonly made: readonly string[];
}

test('only what is made can be made smaller', () => {
  const made = (data: unknown) => clashes(data).map((f) => (f as Finding<'clash', Made>).values.made)[0];
  expect(made(hinges)).toEqual([]);
  expect(made(dividers([100, 100]))).toEqual(['divider-2', 'divider-1']);
});
