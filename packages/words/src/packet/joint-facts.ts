import type { KnownFastener } from '@tinwright/core/family';
import type { JointFacts } from './words.js';

/** Names of joints. */
export const names = (joints: readonly JointFacts[]): string => joints.map((j) => j.joint).join(', ');

/** True for a fastener that goes through a hole of its own. */
export const inHole = ({ facts }: KnownFastener): boolean => facts.hole === 'through';
