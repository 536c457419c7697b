/** A number and what it counts in English. @param more the plural, where it is not made with an s */
export const many = (count: number, one: string, more: string = `${one}s`): string =>
  `${count} ${count === 1 ? one : more}`;
