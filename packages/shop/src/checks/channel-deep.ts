import type { FlatBend, Say } from '@tinwright/core';
import type { Brake, Shop } from '../machines/shop.js';
import { setBackFor } from '../tools/leaf-tools.js';
import { isTooDeep } from './box-deep.js';
import type { ShopCheck, Subject } from './check.js';
import { middleOf } from './geometry/panels.js';
import { between, heightOf, isOpposite, shared, sidesOf } from './geometry/sides.js';
import { limitCheck, type Place } from './limit-check.js';
import { longestReturn, MARGIN, marginFor } from './machine/leaf.js';
import { viseTakes } from './machine/vise.js';

/** What stands in the way: the fingers while the web is turned, the beam or the foot while it is held. */
type Way = 'nose' | 'beam' | 'foot';

interface Channel extends Place {
  readonly way: Way;
}

const WORDS: Readonly<Record<Way, (web: string, found: string, say: Say, limit: number) => string>> = {
  nose: (web, found, say, limit) =>
    `the lower flange on ${web} is ${found} high, ${say.most(limit)} at most to clear the fingers while the other is bent`,
  beam: (web, found, say, limit) =>
    `the lower flange on ${web} is ${found} high, ${say.most(limit)} at most to stand under the beam while the other is bent`,
  foot: (web, found, say, limit) =>
    `${web} is ${found} wide between flanges that turn the same way, ${say.least(limit)} at least for the fingers to stand on it`,
};

/**
 * A channel whose second bend cannot be made on a leaf brake, whichever comes first: with the web on the leaf the first
 * flange runs into the fingers, with the web under the fingers it stands where they are. A quick rule for square bends;
 * the order of bends is another matter. Not for a shop with a press brake.
 */
export const channelDeep: ShopCheck = limitCheck<Channel>({
  code: 'channel-deep',
  leansOn: ['brake.finger', 'brake.clearHeight', 'brake.beam', 'brake.overbend'],
  severity: 'warning',
  unit: 'mm',
  bound: 'most',
  places: (subject, shop) =>
    shop.brake === null || shop.press !== null ? [] : channels(subject, shop, shop.brake),
  message: ({ value, limit, what, way }, say) => WORDS[way](what, say.size(value), say, limit),
  source: () =>
    'web on the leaf: corner of the flange clear of nose and upright, overbend included; web under the fingers: set-back and foot; derived, sections of the fingers from the shop file, ' +
    MARGIN,
  aim: ({ limit, bound }, say) =>
    bound === 'least' ? `make it ${say.least(limit)} or wider` : `make it ${say.most(limit)} or lower`,
  remedy: ({ severity }) => (severity === 'note' ? 'bend it by hand in the vise' : 'join it from two parts'),
});

function channels(subject: Subject, shop: Shop, brake: Brake): readonly Channel[] {
  const { part, flat } = subject;
  const room = Math.max(brake.gaps.end, brake.gaps.inner);
  return part.panels.flatMap(({ id }) => {
    const sides = sidesOf(part, id).filter((s) => s.hem === null && Math.abs(Math.abs(s.angle) - 90) < 1e-6);
    return sides.flatMap((a, i) =>
      sides.slice(i + 1).flatMap((b): readonly Channel[] => {
        if (!isOpposite(a, b) || a.angle > 0 !== b.angle > 0 || shared(a, b) <= room) return [];
        const bends = [a, b].map((s) => flat.bends.find((f) => f.id === s.bend) as FlatBend);
        const byHand = bends.some((f) => viseTakes(subject, shop, f));
        const best = bestWay(subject, brake, between(a, b), Math.min(heightOf(part, a), heightOf(part, b)));
        // a box too deep for the beam is told as that
        if (best.way === 'beam' && isTooDeep(subject, shop, id)) return [];
        const severity = byHand ? 'note' : 'warning';
        return [{ ...best, what: id, at: middleOf(bends[0] as FlatBend), severity }];
      }),
    );
  });
}

type Judged = Pick<Channel, 'value' | 'limit' | 'way'> & { readonly bound: 'least' | 'most' };

const slack = ({ value, limit, bound }: Judged) => (bound === 'least' ? value - limit : limit - value);

/** Of both ways to make the second bend, the one that fails by less; the lower flange is bent first. */
function bestWay({ sheet, flat }: Subject, brake: Brake, web: number, height: number): Judged {
  const { thickness, insideRadius } = sheet;
  const margin = marginFor(Math.max(...flat.blank.max));
  const s = setBackFor(brake, thickness, insideRadius);
  const nose = longestReturn(brake, { wall: web, thickness, insideRadius, margin });
  const turned: Judged = { way: 'nose', bound: 'most', value: height, limit: nose };
  const foot: Judged = {
    way: 'foot',
    bound: 'least',
    value: web,
    limit: s + brake.finger.foot + thickness + margin,
  };
  const beam: Judged = {
    way: 'beam',
    bound: 'most',
    value: height,
    limit: web > s + brake.beam + margin ? brake.clearHeight + thickness - margin : Infinity,
  };
  const held = slack(beam) < slack(foot) ? beam : foot;
  return slack(turned) > slack(held) ? turned : held;
}
