import type { Profile } from '../machines/shop.js';

/** What one source asks: the rule in its words, and who says it. */
export interface Asks {
  readonly rule: string;
  readonly by: string;
}

/** Sources that disagree, the stricter and the usual one. */
export type Disagreement = Readonly<Record<Profile, Asks>>;

/** Both sources named, the one in force first. */
export function bySources(profile: Profile, sources: Disagreement): string {
  const other: Profile = profile === 'strict' ? 'usual' : 'strict';
  const [now, then] = [sources[profile], sources[other]];
  return `${now.rule} by ${now.by} (profile ${profile}); ${then.rule} by ${then.by} (profile ${other})`;
}
