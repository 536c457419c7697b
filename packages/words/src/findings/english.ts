import { pathText } from '@tinwright/core';
import type { FindingGrammar } from './telling.js';

const list = (names: readonly string[]) => names.join(', ');

/** What findings share in English. */
export const ENGLISH_GRAMMAR: FindingGrammar = {
  severity: { error: 'error', warning: 'warning', note: 'note' },
  joints: (names) => `joint${names.length === 1 ? '' : 's'} ${list(names)}: `,
  others: (names) => `; also ${list(names)}`,
  places: (count) => `; at ${count} more places`,
  there: (count) => `; ${count} more there`,
  and: 'and',
  or: ', or ',
  spot: ({ piece, panel, what }) => (what === 'bend' ? `bend ${panel} of ${piece}` : `${piece}.${panel}`),
  change: (change, t) => {
    const name = pathText(change.path);
    if ('words' in change) return `set ${name}: ${change.words[0]}`;
    return `make ${name} ${t.size(change.found)} or ${change.bound === 'most' ? 'less' : 'more'}`;
  },
  basis: {
    computed: 'computed from the formed parts',
    derived: 'derived',
    judgement: 'judgement',
    memory: 'from memory',
    'common-practice': 'common practice, no source',
    'second-hand': 'read second-hand',
    stricter: 'the stricter taken',
  },
  kinds: {
    'shop-file': 'shop file',
    job: 'the job',
    joints: 'the joints of the job',
    measured: 'the measured sizes',
    'design-guide': 'a design guide',
    'design-guides': 'design guides',
    'cautious-guides': 'cautious design guides',
    fabricator: "a fabricator's guide",
    fabricators: "fabricators' pages",
    'general-practice': 'general practice',
    'makers-tables': "makers' tables",
    'brake-manual': "a 4 ft brake's printed manual",
    planner: 'every order tried on the machines of the shop',
  },
  by: (rule, work) => `${rule} by ${work}`,
  profile: { strict: 'profile strict', usual: 'profile usual' },
  assumed: (paths) => `not given in the shop file, so assumed by judgement or from memory: ${list(paths)}`,
};
