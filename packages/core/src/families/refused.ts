import { valueAt } from '../advice/values.js';
import { inWords, type Refusal } from '../errors/problem.js';
import type { Complaint } from './limits.js';

/** A family's complaint as a refusal that names the size given, if it is one. */
export function refused({ path, why, fix = '' }: Complaint, params: unknown): Refusal {
  const plain: Refusal = { code: 'size-impossible', path, message: why, fix };
  return fix === '' ? withGiven(plain, params) : plain;
}

/** A refusal that names the size given, where its path leads to one: "5 mm given, …". */
export function withGiven(refusal: Refusal, params: unknown): Refusal {
  const given = refusal.path.length === 0 || refusal.at === 'key' ? null : valueAt(params, refusal.path);
  if (typeof given !== 'number') return refusal;
  return { ...refusal, message: (say) => `${say.size(given)} given, ${inWords(refusal.message, say)}` };
}
