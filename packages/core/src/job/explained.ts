import type { Path, Problem } from '../errors/problem.js';
import type { AnyFamily } from '../families/family.js';
import { withWords } from '../schema/problems.js';
import { declaredAt } from '../schema/value.js';

/** A parameter that is missing told with what it is. @param path to it, from the part */
export const explained = (problem: Problem, family: AnyFamily | undefined, path: Path): Problem =>
  withWords(problem, (family && declaredAt(family.values, path)?.words) ?? '');
