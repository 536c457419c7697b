import type { PacketWords } from './words.js';

/** Cautions of a packet in English. */
export const ENGLISH_CAUTIONS: PacketWords['cautions'] = {
  columns: { where: 'where', what: 'what can hurt, and what to do (source)' },
  all: {
    edges: {
      where: 'cut edges',
      text: 'Sheared edges and burrs cut like knives. Wear gloves to carry and turn sheet, carry it upright, deburr every edge and hole before anything else is done with it.',
      source: 'edges as in ISO 13715, from memory',
    },
    'burr-rotating': {
      where: 'drill',
      text: 'No gloves, loose sleeves, rings or loose hair near a drill or any other turning tool. Clamp the sheet down: thin sheet grabs when the drill breaks through.',
      source: 'trade pages; 29 CFR 1910.138, from memory',
    },
    eyes: {
      where: 'eyes and ears',
      text: 'Eye protection marked ANSI Z87.1 or EN 166 for cutting, drilling, hammering and when mandrels snap; hearing protection for hammering.',
      source: '29 CFR 1910.133, from memory',
    },
    shear: {
      where: 'shear',
      text: 'Keep fingers behind the guard and away from blade and hold-down; one person works the shear; feet clear of what falls.',
      source: "29 CFR 1910.212, from memory; the shear's manual",
    },
    'leaf-brake': {
      where: 'brake',
      text: 'Jaw and leaf crush. Hands off the bend line before the jaw closes, everybody clear of the leaf and its counterweights; a large sheet whips up while it is bent: stand to the side.',
      source: "from memory; the brake's manual",
    },
    'press-brake': {
      where: 'press brake',
      text: 'Hands stay out of the point of operation. A distance of 4 in (100 mm) from it is only allowed where guards cannot be used, and for trained operators. The sheet whips up; the back gauge pinches.',
      source: 'OSHA CPL 02-01-025, 29 CFR 1910.212',
    },
    vise: {
      where: 'vise and hammer',
      text: 'Strike with a mallet on a bar or block, never on the edge; look out for fingers between sheet and jaw.',
      source: 'from memory',
    },
    'resistance-weld': {
      where: 'spot welder',
      text: 'Only for people trained on it. Fingers never between the electrodes; guard or two-hand control where they could be; foot switch guarded; sparks shielded, eyes and arms covered.',
      source: '29 CFR 1910.255(a)(3), (b)(4) to (b)(6)',
    },
    implants: {
      where: 'spot welder',
      text: 'People with a pacemaker or a similar implant keep away from resistance welders: the magnetic field can disturb it.',
      source: 'ANSI Z49.1, directive 2013/35/EU, from memory',
    },
    arc: {
      where: 'arc welding',
      text: 'The arc burns eyes and skin: welding helmet with the right shade, covered skin, screens for everybody else. Only for trained people.',
      source: 'ANSI Z49.1, from memory',
    },
    fire: {
      where: 'hot work',
      text: 'Move or cover what burns within 35 ft (11 m), keep an extinguisher at hand, and watch for at least 30 minutes after the work (NFPA 51B asks for 60). Welded metal stays hot.',
      source: '29 CFR 1910.252(a)(2)(iii)(B), (vii), second-hand; NFPA 51B from memory',
    },
    air: {
      where: 'welding fume',
      text: 'Ventilate: an extractor at the work, or 2000 ft³/min (57 m³/min) of air for each welder in a room that is small (under 10 000 ft³ for each), low (under 16 ft) or closed.',
      source: '29 CFR 1910.252(c)(2), (c)(3)',
    },
    zinc: {
      where: 'galvanised sheet',
      text: 'Heated zinc gives off fume that makes ill like a flu (limit 5 mg/m³). Take the zinc off where it is welded or extract at the work, and follow the data sheets of sheet and filler.',
      source: '29 CFR 1910.1000, 1910.252, second-hand',
    },
    chromium: {
      where: 'stainless steel',
      text: 'Welding and hot cutting of stainless steel make hexavalent chromium: extract at the work, follow the data sheets of sheet and filler.',
      source: '29 CFR 1910.1026',
    },
    table: {
      where: 'cutting table',
      text: 'Laser: enclosure closed, interlocks working, right glasses. Plasma: shaded eye protection, extraction; no aluminium over water, which makes hydrogen. Only for trained people.',
      source: 'ANSI Z136, IEC 60825-1, from memory',
    },
    mandrels: {
      where: 'rivets',
      text: 'Mandrels snap and fly: eyes protected, catch or sweep them up. They are sharp.',
      source: '29 CFR 1910.133, from memory',
    },
    object: {
      where: 'finished object',
      text: 'Corners stay sharp even when edges are hemmed: round and deburr what hands, clothes or children can reach. Lift with both hands and a straight back.',
      source: 'sharp edges as in UL 1439, from memory',
    },
    food: {
      where: 'food',
      text: 'If food is to lie or grow in it: no lead solder or flux (0.2 % lead at most), wash off oil, line it where sheet or coating are not meant for food.',
      source: 'FDA Food Code 4-101.13(C); 21 CFR 189.240',
    },
    'food-zinc': {
      where: 'food and zinc',
      text: 'Galvanised sheet must not touch acid food (fruit, tomatoes, vinegar, sauerkraut): it dissolves zinc.',
      source: 'FDA Food Code 4-101.15',
    },
    pupils: {
      where: 'pupils',
      text: 'Under supervision, and after the teacher has shown the machine; the rules of the school come first.',
      source: 'BS 4163, from memory',
    },
    rules: {
      where: 'always',
      text: "Follow the machines' manuals, the rules of your school or shop and local codes. Get trained or licensed people where they are required.",
      source: 'common practice, no source',
    },
  },
  load: {
    question: 'How much does it carry?',
    answer:
      'That is not answered here. What sheet-metal work carries depends on the welds or rivets as they were really made, on the sheet as it really is, on how the load lies and swings, and on wear and rust; none of that is in a drawing. For lifting, for loads over people, for vehicles, pressure or heat a competent person has to check the finished object (in the UK LOLER 1998, in the US ASME B30.20; from memory). No load rating.',
  },
  findings: 'What to know about this job before cutting',
  findingColumns: { part: 'part', what: 'what', fix: 'what to do' },
};
