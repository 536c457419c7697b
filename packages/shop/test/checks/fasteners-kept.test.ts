import { planJob, readJob } from '@tinwright/core';
import { DEFAULT_SHOP } from '@tinwright/shop';
import { jobFindings, withChanges } from '@tinwright/shop/internal';
import { expect, test } from 'vitest';

/** Sizes that would mend the narrow notches of a box with corner tabs, riveted or not. */
function mends(joints: readonly object[]) {
  const plan = planJob(
    readJob({
      units: 'mm',
      stock: { material: 'mild-steel', thickness: 0.8 },
      parts: [
        {
          name: 'box',
          family: 'open-box',
          length: 300,
          width: 160,
          height: 80,
          corner: 'tabbed',
          tabs: { length: 17 },
        },
      ],
      joints,
    } as unknown),
  );
  const found = withChanges(jobFindings(plan, DEFAULT_SHOP), plan, DEFAULT_SHOP);
  return found.find((f) => f.code === 'notch-deep')?.changes.map((c) => c.path.join('.'));
}

test('a tab that rivets go through is not told to be shorter than they ask for', () => {
  expect(mends([])).toContain('tabs.length');
  const by = { 'blind-rivet': { diameter: 3.2, count: 8 } };
  const riveted = mends([{ name: 'corners', from: 'box.end-walls', to: 'box.corner-tabs', by }]);
  expect(riveted).not.toContain('tabs.length');
});
