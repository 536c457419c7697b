import * as z from 'zod/mini';
import type { Gives } from './kit.js';

/** Longest line of text that is read, characters. */
const LONGEST = 200;

const short = () => z.maxLength(LONGEST, { error: `longer than ${LONGEST} characters` });

/** A line of text, which may be empty. */
export const textLine = (): Gives<string> => z.string().check(short());

/** A name that others are told apart by. */
export const textName = (): Gives<string> =>
  z.string().check(z.minLength(1, { error: 'an empty name given' }), short());
