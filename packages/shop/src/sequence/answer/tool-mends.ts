import { DEFAULT_SHOP } from '../../machines/default-shop.js';
import { TOOL_LENGTHS } from '../../machines/press-shapes.js';
import type { Brake, Shop } from '../../machines/shop.js';
import type { Move } from '../search/states.js';
import { brakesIn, type MendTrial, machineMend, stoppedBy } from './mend-trial.js';
import type { Mend } from './plan.js';
import { pressMends } from './press-mends.js';

const FINGERS = (DEFAULT_SHOP.brake as Brake).fingers; // a usual rack
const MOST_PIECES = 8; // that are worth telling

/** Tools with which an impossible part can be bent on machines that the shop has: each tried. */
export function toolMends(trial: MendTrial): readonly Mend[] {
  const { shop } = trial;
  const { press } = shop;
  const fingers = brakesIn(shop).flatMap(({ brake, put, instead }): readonly Mend[] => {
    if (!stoppedBy(trial, 'brake', ['tools', 'fingers'])) return [];
    const has = (piece: number) => count(brake.fingers, piece);
    const more = pieces(trial, FINGERS, has, (add) => put({ ...brake, fingers: [...brake.fingers, ...add] }));
    return more.map((m) => ({ ...m, parameter: 'brake.fingers', instead }));
  });
  return press === null ? fingers : [...fingers, ...lengths(trial, press), ...pressMends(trial, press)];
}

function lengths(trial: MendTrial, press: NonNullable<Shop['press']>): readonly Mend[] {
  if (!stoppedBy(trial, 'press', ['tools'])) return [];
  const { shop } = trial;
  const has = (piece: number) => Math.min(...press.punches.map((p) => count(p.lengths, piece)));
  return pieces(trial, TOOL_LENGTHS, has, (add) => {
    const punches = press.punches.map((p) => ({ ...p, lengths: [...p.lengths, ...add] }));
    return { ...shop, press: { ...press, punches } };
  });
}

/** Pieces to add to a rack: those of a usual set that a plan with it uses, tried again with no others. */
function pieces(
  { inShop }: MendTrial,
  usual: readonly number[],
  has: (piece: number) => number,
  put: (add: readonly number[]) => Shop,
): readonly Mend[] {
  const moves = inShop(put(usual));
  if (moves === null) return [];
  const add = [...new Set(usual)].flatMap((piece) => {
    const lacks = Math.max(...moves.map((m) => count(used(m), piece))) - has(piece);
    return Array<number>(Math.max(0, lacks)).fill(piece);
  });
  if (add.length === 0 || add.length > MOST_PIECES || inShop(put(add)) === null) return [];
  return [machineMend('press.punches.lengths', { given: null, found: add, bound: 'tried' })];
}

const used = ({ position }: Move): readonly number[] => (position.tools ?? []).flat();
const count = (list: readonly number[], piece: number) => list.filter((p) => p === piece).length;
