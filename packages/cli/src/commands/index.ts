import type { AnyCommand } from '../line/command.js';
import { bend } from './bend.js';
import { check } from './check.js';
import { completion } from './completion.js';
import { explain } from './explain.js';
import { families } from './families.js';
import { gauges } from './gauges.js';
import { make } from './make.js';
import { materials } from './materials.js';
import { nest } from './nest.js';
import { order } from './order.js';
import { packet } from './packet.js';
import { page } from './page.js';
import { plan } from './plan.js';
import { refit } from './refit.js';
import { shear } from './shear.js';
import { shop } from './shop.js';
import { sizes } from './sizes.js';
import { starter } from './starter.js';
import { strip } from './strip.js';
import { template } from './template.js';
import { worker } from './worker.js';

/** Every verb, in the order help shows them. A new one is its file and a line here. */
export const COMMANDS: readonly AnyCommand[] = [
  make,
  check,
  refit,
  explain,
  order,
  plan,
  template,
  packet,
  page,
  shear,
  nest,
  sizes,
  worker,
  shop,
  strip,
  starter,
  families,
  bend,
  materials,
  gauges,
  completion,
];
