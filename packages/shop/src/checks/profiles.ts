import { cite, type Source } from '@tinwright/core';
import type { Profile } from '../machines/shop.js';

/** Sources that disagree, the stricter and the usual one. */
export type Disagreement = Readonly<Record<Profile, Source>>;

/** Both sources, the one in force first. */
export function bySources(profile: Profile, sources: Disagreement): readonly Source[] {
  const other: Profile = profile === 'strict' ? 'usual' : 'strict';
  return [profile, other].map((p) => cite(sources[p].work, { ...sources[p], profile: p }));
}
