/** A language there are words in, by its tag (BCP 47). */
export type Language = 'en' | 'de';
