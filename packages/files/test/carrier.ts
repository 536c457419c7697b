import type { Assembly, JobPlan } from '@tinwright/core';
import { planned } from './samples.js';

/** A small harvest carrier as planned: channel, two ends, handle. `by` fastens every joint. */
export function plannedCarrier(by: unknown = 'spot-weld', head: object = {}): JobPlan {
  const joint = (name: string, from: string, to: string) => ({ name, from, to, by });
  return planned(
    [
      {
        name: 'body',
        family: 'hemmed-channel',
        length: 320,
        width: 160,
        height: 50,
        hem: { type: 'closed', length: 12 },
        endTabs: { length: 20 },
      },
      {
        name: 'end',
        family: 'gusset-end',
        quantity: 2,
        width: { of: 'body.seatWidth', less: 0.4 },
        shoulderHeight: 48,
        height: 140,
        crownWidth: 60,
      },
      {
        name: 'handle',
        family: 'handle',
        span: { of: 'body.insideLength', less: 2.2 },
        width: 40,
        sideDepth: 20,
        hem: { type: 'closed', length: 8 },
        tabs: { length: 28 },
      },
    ],
    {
      name: 'carrier',
      joints: [
        joint('west', 'body.west', 'end-1.rim'),
        joint('east', 'body.east', 'end-2.rim'),
        joint('grip-west', 'end-1.crown', 'handle.west'),
        joint('grip-east', 'end-2.crown', 'handle.east'),
      ],
      ...head,
    },
  );
}

/** The object of a plan. @throws Error when it has no joints */
export function objectOf({ assembly }: Pick<JobPlan, 'assembly'>): Assembly {
  if (assembly === null) throw new Error('no joints');
  return assembly;
}
