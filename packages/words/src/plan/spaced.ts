/** Texts with a space between them, those that say nothing left out. */
export const spaced = (...texts: readonly string[]): string => texts.filter((t) => t !== '').join(' ');

/** How often, where it is more than once. */
export const times = (count: number): string => (count === 1 ? '' : `${count} ×`);
