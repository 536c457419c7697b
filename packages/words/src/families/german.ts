import { bentStrip } from './german/bent-strip.js';
import { bracket } from './german/bracket.js';
import { cover } from './german/cover.js';
import { divider } from './german/divider.js';
import { drawer } from './german/drawer.js';
import { duct } from './german/duct.js';
import { flaredPan } from './german/flared-pan.js';
import { gussetEnd } from './german/gusset-end.js';
import { handle } from './german/handle.js';
import { hemmedChannel } from './german/hemmed-channel.js';
import { hingedBox } from './german/hinged-box.js';
import { hopper } from './german/hopper.js';
import { lid } from './german/lid.js';
import { offsetCheek } from './german/offset-cheek.js';
import { openBox } from './german/open-box.js';
import { scoop } from './german/scoop.js';
import { shelf } from './german/shelf.js';
import { toteEnd } from './german/tote-end.js';
import { tray } from './german/tray.js';
import type { FamilyWords } from './words.js';

/** Families in German; in English they say it themselves. */
export const GERMAN_FAMILIES: FamilyWords = {
  hem: {
    type: 'geschlossen, offen, tropfenförmig oder keiner',
    length: 'fertige Breite des Umschlags',
    gap: 'lichter Spalt eines offenen Umschlags, lichte Weite eines tropfenförmigen',
  },
  families: {
    'hemmed-channel': hemmedChannel,
    'gusset-end': gussetEnd,
    'tote-end': toteEnd,
    handle,
    'open-box': openBox,
    tray,
    duct,
    drawer,
    cover,
    shelf,
    'hinged-box': hingedBox,
    scoop,
    'offset-cheek': offsetCheek,
    lid,
    divider,
    'flared-pan': flaredPan,
    hopper,
    bracket,
    'bent-strip': bentStrip,
  },
};
