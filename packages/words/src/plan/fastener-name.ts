import type { FastenerWords } from '@tinwright/core/family';

/** What a fastener is called: in a language that has a name for it, else by its own words, else by its name in jobs. */
export const fastenerName =
  (names: Readonly<Record<string, string>>) =>
  (kind: string, words?: FastenerWords): string =>
    names[kind] ?? words?.one ?? kind.replaceAll('-', ' ');
