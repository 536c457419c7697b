// Boxes, pans, lids and dividers. 1 mm sheet, inside radius 1 mm: a square bend takes 2 mm of each leg (R + T). Limits by hand.
import type { SizeCase } from './size-case.js';

export const BOXES: readonly SizeCase[] = [
  // 60 − 2 − 1
  {
    family: 'open-box',
    way: ['hem', 'length'],
    given: 70,
    limit: 57,
    side: 'less',
    also: { corner: 'open' },
    why: 'longer than panel "north" of 60 mm has room for',
  },
  // half of 220 less the gap
  {
    family: 'open-box',
    way: ['tabs', 'length'],
    given: 200,
    limit: 109.5,
    side: 'less',
    why: 'tabs from both sides would meet across a width of 220 mm',
  },
  {
    family: 'open-box',
    way: ['tabs', 'length'],
    given: 2,
    limit: 2.5,
    side: 'more',
    why: 'panel "tab-north-west" has to reach past its bends',
  },
  // half of 220 less the gap less half a millimetre of the return's edge
  {
    family: 'open-box',
    way: ['flangeReturn'],
    given: 150,
    limit: 109,
    side: 'less',
    why: 'returns from both sides would meet',
  },
  {
    family: 'open-box',
    way: ['flangeReturn'],
    given: 1,
    limit: 2.5,
    side: 'more',
    also: { hem: { type: 'none' } },
    why: 'panel "return-north" has to reach past its bends',
  },
  {
    family: 'open-box',
    way: ['height'],
    given: 1,
    limit: 2.5,
    side: 'more',
    also: { hem: { type: 'none' }, corner: 'open' },
    why: 'panel "north" has to reach past its bends',
  },
  // bend 2, one thickness, and the hem of 8
  {
    family: 'lid',
    way: ['depth'],
    given: 3,
    limit: 11,
    side: 'more',
    why: 'panel "north" is too low for a closed hem on it',
  },
  // 25 less the bend less the hem's own thickness
  {
    family: 'lid',
    way: ['hem', 'length'],
    given: 30,
    limit: 22,
    side: 'less',
    why: 'longer than panel "north" of 25 mm has room for',
  },
  // the fold of 1, the bend of 2, half a millimetre between them, less the thickness the ledge does not count
  {
    family: 'lid',
    way: ['ledge'],
    given: 1,
    limit: 2.5,
    side: 'more',
    also: { fit: 'inside' },
    why: 'panel "ledge-north" has to reach past its bends',
  },
  {
    family: 'divider',
    way: ['tabs', 'length'],
    given: 2,
    limit: 2.5,
    side: 'more',
    why: 'panel "tab-west" has to reach past its bends',
  },
  // setback 2, half the slot of 1.2, half a millimetre
  {
    family: 'divider',
    way: ['slots', 'at', 0],
    given: 2,
    limit: 3.1,
    side: 'more',
    why: 'too near the bend at edge "west"',
  },
  // three quarters round a middle radius of 2, and nine tenths of the wire's radius
  {
    family: 'flared-pan',
    way: ['edge', 'allowance'],
    given: 20,
    limit: 10.77,
    side: 'less',
    why: 'the metal would run on into the wall',
  },
  // half round a middle radius of 2, and half a thickness
  {
    family: 'flared-pan',
    way: ['edge', 'allowance'],
    given: 4,
    limit: 6.79,
    side: 'more',
    why: 'the metal would not reach round the wire',
  },
];
