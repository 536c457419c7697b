// In what order test files start: those that take long first, so that no core waits for one of them at the end.
import { relative } from 'node:path';
import { BaseSequencer, type TestSpecification } from 'vitest/node';

/** Ten seconds and more on an idle machine; a fresh clone has no times of its own to go by. */
const LONG = [
  'tests/packets.test.ts',
  'tests/families.test.ts',
  'tests/plans.test.ts',
  'tests/refold.test.ts',
  'packages/shop/test/checks/any-family.test.ts',
  'packages/cli/test/write/cut-off.test.ts',
  'packages/paper/test/packet/packet-pages.test.ts',
  'packages/shop/test/sequence/laws.test.ts',
  'tests/assembly.test.ts',
  'packages/cli/test/bad-input/advice.test.ts',
  'tests/cases.test.ts',
  'packages/shop/test/sequence/reasons.test.ts',
  'packages/cli/test/commands/order.test.ts',
  'packages/shop/test/sequence/brute-force.test.ts',
  'tests/docs.test.ts',
];

export class LongFirst extends BaseSequencer {
  override async sort(files: TestSpecification[]): Promise<TestSpecification[]> {
    const rank = ({ moduleId }: TestSpecification) => {
      const at = LONG.indexOf(relative(this.ctx.config.root, moduleId).replaceAll('\\', '/'));
      return at < 0 ? LONG.length : at;
    };
    return (await super.sort(files)).sort((a, b) => rank(a) - rank(b));
  }
}
