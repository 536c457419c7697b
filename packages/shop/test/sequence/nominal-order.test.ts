import { DEFAULT_SHOP, planSequence } from '@tinwright/shop';
import { expect, test } from 'vitest';
import { planned } from '../shops.js';

test.each(['nominal', 'k-factor'])(
  'a channel laid out by %s: hems, tabs, sides, all on the brake, in 8 operations',
  (rule) => {
    const inch = 25.4;
    const plan = planned(
      {
        family: 'hemmed-channel',
        length: 12 * inch,
        width: 7 * inch,
        height: 2 * inch,
        hem: { type: 'closed', length: 0.75 * inch },
        endTabs: { length: 0.75 * inch },
      },
      {
        stock: { material: 'galvanised-steel', thickness: 0.85344 },
        bending: { rule, insideRadius: 0.04 * inch },
      },
    );
    const { status, steps } = planSequence(plan, DEFAULT_SHOP);
    expect(status).toBe('optimal');
    expect(steps.map((s) => s.machine)).toEqual(Array.from({ length: 8 }, () => 'brake'));
    const kinds = steps.map((s) =>
      s.hem !== null ? 'hem' : s.bends.every((b) => b.startsWith('tab')) ? 'tab' : 'side',
    );
    expect(kinds).toEqual(['hem', 'hem', 'hem', 'hem', 'tab', 'tab', 'side', 'side']);
  },
);
