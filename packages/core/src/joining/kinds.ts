import { frozen } from '../units/frozen.js';
import { blindRivet } from './blind-rivet.js';
import { plugWeld } from './plug-weld.js';
import { screw } from './screw.js';
import { spotWeld } from './spot-weld.js';

/** Every kind of fastener a job can name. A new one is its file and a line here. */
export const FASTENER_KINDS = frozen([spotWeld, blindRivet, screw, plugWeld] as const);
