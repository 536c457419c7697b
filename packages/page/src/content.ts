/** What a page is made with. */
export interface PageContent {
  /** The job, YAML or JSON. */
  readonly text: string;
  readonly language: 'en' | 'de';
  /** Paths of values that stay as they are, `parts.body.length`, `stock`; everything under one too. */
  readonly locked: readonly string[];
  /** True where numbers that follow are left for the pupils to find. */
  readonly worksheet: boolean;
}
