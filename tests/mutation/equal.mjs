// Mutants that no test can tell from what they replace, each read and with its reason: they are counted apart. Whatever
// is merely hard to tell is not in this list.

/** @type {readonly (readonly [path: string, text: string, from: string, to: string, why: string])[]} */
const EQUAL = [
  [
    'fold/flat/verify-flat.ts',
    'a.min[0] > b.max[0] + SAME ||',
    'a.min[0] > b.max[0] + SAME ||',
    '(',
    'cuts whose boxes lie apart do not meet: the boxes only save work',
  ],
  [
    'fold/formed/prism.ts',
    'return boxDistance(a, b) >= margin;',
    'return boxDistance(a, b) >= margin;',
    'return;',
    'solids whose boxes lie apart are apart along an axis too: the boxes only save work',
  ],
  [
    'fold/formed/lump.ts',
    'let depth = 0;',
    '0',
    '-1',
    'no overlap is less than 0, and every lump has a piece',
  ],
  [
    'fold/settle/opening-problems.ts',
    'const inOrder = (a: Opening, b: Opening) => Number(a.by?.at(-1) ?? -1) - Number(b.by?.at(-1) ?? -1);',
    '1',
    '2',
    'places in a list start at 0: −2 comes before them as −1 does',
  ],
];

// a longer expression is told shortened
const is = ({ path, text, from, to }, [p, line, f, t]) =>
  path.endsWith(p) && text === line && from.startsWith(f) && to.startsWith(t);

/** Why a mutant is the same program; null when it is not, or was never read. */
export const reasonOf = (mutant) => EQUAL.find((e) => is(mutant, e))?.[4] ?? null;

/** Entries that no mutant of their file is like any more. */
export const unmet = (mutants) =>
  EQUAL.filter((e) => mutants.some((m) => m.path.endsWith(e[0])) && !mutants.some((m) => is(m, e))).map(
    ([path, text]) => ({ path, text }),
  );
