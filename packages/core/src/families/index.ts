import { frozen } from '../units/frozen.js';
import { bentStrip } from './bent-strip/build.js';
import { bracket } from './bracket/build.js';
import { cover } from './cover/build.js';
import { divider } from './divider/build.js';
import { drawer } from './drawer/build.js';
import { duct } from './duct/build.js';
import { flaredPan } from './flared-pan/build.js';
import { gussetEnd } from './gusset-end/build.js';
import { handle } from './handle/build.js';
import { hemmedChannel } from './hemmed-channel/build.js';
import { hingedBox } from './hinged-box/build.js';
import { hopper } from './hopper/build.js';
import { lid } from './lid/build.js';
import { offsetCheek } from './offset-cheek/build.js';
import { openBox } from './open-box/build.js';
import { scoop } from './scoop/build.js';
import { shelf } from './shelf/build.js';
import { toteEnd } from './tote-end/build.js';
import { tray } from './tray/build.js';

/** The built-in families, in the order help shows them. A new family is its folder, its two lines here and one in the door. */
export const FAMILIES = /* @__PURE__ */ frozen([
  hemmedChannel,
  gussetEnd,
  toteEnd,
  handle,
  openBox,
  hingedBox,
  tray,
  drawer,
  duct,
  offsetCheek,
  lid,
  cover,
  divider,
  flaredPan,
  hopper,
  scoop,
  bracket,
  shelf,
  bentStrip,
] as const);

/** A built-in family. */
export type BuiltInFamily = (typeof FAMILIES)[number];
