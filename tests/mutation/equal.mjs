// Mutants that no test can tell from what they replace, each read and with its reason: they are counted apart. Whatever
// is merely hard to tell is not in this list.

/** @type {readonly (readonly [path: string, text: string, from: string, to: string, why: string])[]} */
const EQUAL = [];

const is = ({ path, text, from, to }, [p, line, f, t]) =>
  path.endsWith(p) && text === line && from === f && to === t;

/** Why a mutant is the same program; null when it is not, or was never read. */
export const reasonOf = (mutant) => EQUAL.find((e) => is(mutant, e))?.[4] ?? null;

/** Entries that no mutant of their file is like any more. */
export const unmet = (mutants) =>
  EQUAL.filter((e) => mutants.some((m) => m.path.endsWith(e[0])) && !mutants.some((m) => is(m, e))).map(
    ([path, text]) => ({ path, text }),
  );
