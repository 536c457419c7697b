import { readFileSync } from 'node:fs';
import { readJob } from '@tinwright/core';
import { parse } from 'yaml';

export const EXAMPLE = new URL('../../examples/harvest-carrier.yaml', import.meta.url);

/** The example job as data. */
export const carrierData = () => parse(readFileSync(EXAMPLE, 'utf8'));

/** The carrier's body: family, checked parameters and sheet. */
export function carrierBody() {
  const [body] = readJob(carrierData()).parts;
  return body;
}
