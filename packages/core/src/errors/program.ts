import { frozen } from '../units/frozen.js';

/** The program, as its lists and files name it: who wrote them. */
export const PROGRAM: { readonly name: string; readonly version: string; readonly mark: string } = frozen({
  name: 'tinwright',
  version: '0.1.0',
  mark: 'tinwright 0.1.0',
});
