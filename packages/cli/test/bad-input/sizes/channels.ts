// Channels, their ends and handles, strips. 1 mm sheet, inside radius 1 mm: a square bend takes 2 mm of each leg (R + T). Limits by hand.
import type { SizeCase } from './size-case.js';

export const CHANNELS: readonly SizeCase[] = [
  // 55 less the bend less the hem's own thickness
  {
    family: 'hemmed-channel',
    way: ['hem', 'length'],
    given: 60,
    limit: 52,
    side: 'less',
    why: 'longer than panel "north" of 55 mm has room for',
  },
  // the fold and one thickness to hold
  {
    family: 'hemmed-channel',
    way: ['hem', 'length'],
    given: 1,
    limit: 2,
    side: 'more',
    why: 'a closed hem needs a straight leg past its fold',
  },
  // (60 − 0.5 between them − 1) / 2
  {
    family: 'hemmed-channel',
    way: ['endTabs', 'length'],
    given: 40,
    limit: 29.25,
    side: 'less',
    also: { width: 60, height: 200 },
    why: 'the tabs of both sides would meet across a width of 60 mm',
  },
  // from the hem at 45° and from the mitre, half a millimetre of its far edge left between them
  {
    family: 'hemmed-channel',
    way: ['endTabs', 'length'],
    given: 30,
    limit: 27.57,
    side: 'less',
    why: 'the cuts at the ends of panel "tab-north-west" leave nothing of its far edge',
  },
  {
    family: 'hemmed-channel',
    way: ['endTabs', 'length'],
    given: 2,
    limit: 2.5,
    side: 'more',
    why: 'panel "tab-west" has to reach past its bends',
  },
  // the shortest hem, 2 mm: twice its start 1 + 1 + 0.7 and its 45° end of 2 − 1, and half a millimetre between them
  {
    family: 'hemmed-channel',
    way: ['length'],
    given: 5,
    limit: 7.9,
    side: 'more',
    also: { hem: { type: 'closed', length: 2 } },
    why: 'nothing is left of panel "hem-north"',
  },
  // too short for any hem; with the one given: twice 2.7 and 15 − 1, and half a millimetre
  {
    family: 'hemmed-channel',
    way: ['length'],
    given: 5,
    limit: 33.9,
    side: 'more',
    why: 'nothing is left of panel "hem-north"',
  },
  // a hem of 15 mm on a length of 30: half of what the starts of 2.7 and half a millimetre between them leave, and the sheet
  {
    family: 'hemmed-channel',
    way: ['hem', 'length'],
    given: 15,
    limit: 13.05,
    side: 'less',
    also: { length: 30 },
    why: 'the cuts at the ends of panel "hem-north" leave nothing of its far edge',
  },
  {
    family: 'gusset-end',
    way: ['crownWidth'],
    given: 300,
    limit: 197.6,
    side: 'less',
    why: 'wider than the end',
  },
  {
    family: 'gusset-end',
    way: ['shoulderHeight'],
    given: 300,
    limit: 120,
    side: 'less',
    why: 'higher than the end',
  },
  // half a millimetre of the side is kept: 53 − 0.5
  {
    family: 'gusset-end',
    way: ['cornerNip'],
    given: 100,
    limit: 52.5,
    side: 'less',
    why: 'nothing would be left of the lower edge or the sides',
  },
  // both bends, half a millimetre between them, and what the corners with the sides take
  {
    family: 'handle',
    way: ['span'],
    given: 1,
    limit: 5.21,
    side: 'more',
    why: 'panel "base" has to reach past its bends',
  },
  // both bends, and half a millimetre between them
  {
    family: 'handle',
    way: ['width'],
    given: 1,
    limit: 4.5,
    side: 'more',
    why: 'panel "base" has to reach past its bends',
  },
  {
    family: 'handle',
    way: ['sideDepth'],
    given: 2,
    limit: 2.5,
    side: 'more',
    also: { hem: { type: 'none' } },
    why: 'panel "north" has to reach past its bends',
  },
  // 14 − 2 − 1
  {
    family: 'handle',
    way: ['hem', 'length'],
    given: 30,
    limit: 11,
    side: 'less',
    why: 'longer than panel "north" of 14 mm has room for',
  },
  {
    family: 'handle',
    way: ['tabs', 'length'],
    given: 2,
    limit: 2.5,
    side: 'more',
    why: 'panel "tab-west" has to reach past its bends',
  },
  // two bends of 2 mm, and half a millimetre of the leg
  {
    family: 'bent-strip',
    way: ['legs', 1],
    given: 3,
    limit: 4.5,
    side: 'more',
    why: 'panel "leg-2" has to reach past its bends',
  },
  {
    family: 'bent-strip',
    way: ['legs', 0],
    given: 1,
    limit: 2.5,
    side: 'more',
    why: 'panel "leg-1" has to reach past its bends',
  },
  // half the hole and half a millimetre of metal
  {
    family: 'tote-end',
    way: ['bar', 'below'],
    given: 10,
    limit: 13.5,
    side: 'more',
    why: 'too little metal would be left to edge "crown"',
  },
];
