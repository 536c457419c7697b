import type { Placed, Vec3 } from '@tinwright/core';
import { place3 } from '@tinwright/core/internal';
import { describe, expect, test } from 'vitest';
import { told as spoken } from '../../../../tests/kit/told.js';
import {
  BODY,
  type Changes,
  carrier,
  codesOf,
  END,
  HANDLE,
  type JobLike,
  plan,
  problemsOf,
  R,
  T,
} from '../carrier.js';

function pieceOf(job: unknown, name: string): Placed {
  const found = plan(job).assembly?.placed.find((p) => p.piece === name);
  if (found === undefined) throw new Error(`${name} is not placed`);
  return found;
}

/** Where a point of a piece's own frame stands. */
const at = (placed: Placed, p: Vec3) => place3(placed.pose, p);
const near = (p: Vec3) => p.map((v) => expect.closeTo(v, 6));

describe('a carrier', () => {
  // between the inside of a side and the end: half of what the end is narrower than the channel is inside
  const aside = (BODY.width - 2 * T - END.width) / 2;

  test('its channel stays at home', () => {
    const body = pieceOf(carrier(), 'body');
    expect(at(body, [0, 0, 0])).toEqual(near([0, 0, 0]));
    expect(at(body, [BODY.length, BODY.width, T])).toEqual(near([BODY.length, BODY.width, T]));
  });

  test('the west end stands on the inside of the tabs, upright, as far off the floor as off the sides', () => {
    const end = pieceOf(carrier(), 'end-1');
    // its x runs along the channel's width, its marked face looks east
    expect(at(end, [0, 0, 0])).toEqual(near([T, T + aside, T + aside]));
    expect(at(end, [END.width, 0, 0])).toEqual(near([T, BODY.width - T - aside, T + aside]));
    expect(at(end, [0, END.height, T])).toEqual(near([2 * T, T + aside, T + aside + END.height]));
  });

  test('the east end looks back at it', () => {
    const end = pieceOf(carrier(), 'end-2');
    const x = BODY.length - T;
    expect(at(end, [0, 0, 0])).toEqual(near([x, BODY.width - T - aside, T + aside]));
    expect(at(end, [END.width, END.height, T])).toEqual(near([x - T, T + aside, T + aside + END.height]));
  });

  test('the handle hangs between the crowns, its top flush with them, in the middle of the width', () => {
    const handle = pieceOf(carrier(), 'handle');
    const top = T + aside + END.height;
    const south = (BODY.width - HANDLE.width) / 2;
    // the marked face of its base is its top, its west tab lies against the west end
    expect(at(handle, [0, 0, T])).toEqual(near([2 * T, south, top]));
    expect(at(handle, [HANDLE.span, HANDLE.width, T])).toEqual(
      near([2 * T + HANDLE.span, south + HANDLE.width, top]),
    );
  });

  test('its loop closes with the gap that the handle is short', () => {
    const { seated, findings } = plan(carrier()).assembly ?? {};
    expect(findings).toEqual([]);
    // insideLength less two ends less the span
    const short = BODY.length - 2 * T - 2 * T - HANDLE.span;
    expect(seated?.map((s) => s.joint.name)).toEqual(['west', 'east', 'grip-west', 'grip-east']);
    expect(seated?.map((s) => s.gap)).toEqual([0, 0, 0, expect.closeTo(short, 6)]);
  });
});

describe('shift', () => {
  test('up lifts the second part on the first', () => {
    const [plain, up] = [carrier(), carrier({ joints: { west: { shift: { up: 6 } } } })];
    const move = at(pieceOf(up, 'end-1'), [0, 0, 0]).map(
      (v, k) => v - (at(pieceOf(plain, 'end-1'), [0, 0, 0])[k] as number),
    );
    expect(move).toEqual(near([0, 0, 6]));
  });

  test('across moves it to the right of somebody who looks at the site', () => {
    // looking west at the inside of the west tabs, right is north
    const [plain, moved] = [carrier(), carrier({ joints: { west: { shift: { across: 0.1 } } } })];
    const move = at(pieceOf(moved, 'end-1'), [0, 0, 0]).map(
      (v, k) => v - (at(pieceOf(plain, 'end-1'), [0, 0, 0])[k] as number),
    );
    expect(move).toEqual(near([0, 0.1, 0]));
  });

  test('a joint written the other way round: up is down, right stays right', () => {
    const shifted = carrier({ joints: { west: { shift: { up: 6, across: 0.1 } } } });
    const back = { from: 'end-1.rim', to: 'body.west', shift: { up: -6, across: 0.1 } };
    const turned = carrier({ joints: { west: back } });
    expect(pieceOf(turned, 'end-1').pose).toEqual(pieceOf(shifted, 'end-1').pose);
  });

  test('a minus and a unit of its own are read', () => {
    const down = carrier({
      joints: { 'grip-west': { shift: { up: '-1/4 in' } }, 'grip-east': { shift: { up: -6.35 } } },
    });
    const { assembly } = plan(down);
    expect(assembly?.findings).toEqual([]);
    expect(assembly?.seated).toHaveLength(4);
  });
});

describe('a loop that does not close', () => {
  const open = (changes: Changes) => plan(carrier(changes)).findings.filter((f) => f.code === 'loop-open');

  test('a handle too short by 2 mm: the gap in mm', () => {
    const [found, ...more] = open({ handle: { span: BODY.length - 4 * T - 2 } });
    expect(more).toEqual([]);
    expect(found).toMatchObject({ severity: 'error', part: 'handle', unit: 'mm' });
    expect(found?.value).toBeCloseTo(2, 6);
    expect(spoken(found)?.message).toContain('joint grip-east');
    expect(spoken(found)?.message).toContain('a gap of 2 mm stays open');
  });

  test('half a millimetre of gap is drawn together, more is not', () => {
    expect(open({ handle: { span: BODY.length - 4 * T - 0.5 } })).toEqual([]);
    expect(open({ handle: { span: BODY.length - 4 * T - 0.51 } })).toHaveLength(1);
  });

  test('a handle too long by 0.7 mm: the parts run into each other, and the clash is told too', () => {
    const { findings } = plan(carrier({ handle: { span: BODY.length - 4 * T + 0.7 } }));
    const loop = findings.find((f) => f.code === 'loop-open');
    expect(loop?.value).toBeCloseTo(0.7, 6);
    expect(spoken(loop)?.message).toContain('run 0.7 mm into each other');
    expect(findings.find((f) => f.code === 'clash')?.value).toBeCloseTo(0.7, 6);
  });

  test('a handle too long by 5 mm: the clash says to take off all of it, not what is in one sheet', () => {
    const { findings } = plan(carrier({ handle: { span: BODY.length - 4 * T + 5 } }));
    const clash = findings.find((f) => f.code === 'clash' && spoken(f).message.includes('end-2'));
    expect(clash?.value).toBeLessThan(4);
    expect(spoken(clash)?.fix).toContain('smaller there by 5 mm');
  });

  test('one grip shifted up by 3 mm: the seats lie 3 mm beside each other', () => {
    const [found] = open({ joints: { 'grip-west': { shift: { up: 3 } } } });
    expect(found?.value).toBeCloseTo(3, 6);
    expect(spoken(found)?.message).toContain('3 mm beside each other');
  });

  test('faces that look at each other, but the part turned on its face: by how many degrees', () => {
    // a strip folded back over itself stands across the floor; at an open end upright is along the channel
    const job = carrier({ body: { endTabs: undefined } });
    const stay = { name: 'stay', family: 'bent-strip', width: 20, legs: [40, 20, 40], angles: [90, 90] };
    const joints = [
      { name: 'foot', from: 'body.floor', to: 'stay.leg-1-back', by: 'none' },
      { name: 'head', from: 'body.west', to: 'stay.leg-3', by: 'none' },
    ];
    const { findings } = plan({ ...job, parts: [...job.parts.slice(0, 1), stay], joints });
    const [found] = findings.filter((f) => f.code === 'loop-open');
    expect(spoken(found)?.message).toContain('the parts stand at 90° to each other');
    expect(spoken(found)?.fix).toBe(
      'change an angle of one of the parts by 90°, or join them at other sites',
    );
  });

  test('nothing is fastened at the joint that stays open', () => {
    const { assembly } = plan(carrier({ handle: { span: 200 } }));
    expect(assembly?.fasteners.filter((f) => f.joint === 'grip-east')).toEqual([]);
    expect(assembly?.fasteners.filter((f) => f.joint === 'grip-west').length).toBeGreaterThan(0);
    expect(assembly?.placed.map((p) => p.piece)).toEqual(['body', 'end-1', 'end-2', 'handle']);
  });
});

/** A row of strips, each fastened to the one before it. */
function chain(count: number) {
  const strip = (name: string) => ({ name, family: 'bent-strip', width: 40, legs: [30, 50], angles: [90] });
  const names = Array.from({ length: count }, (_, i) => `rail-${String.fromCharCode(97 + i)}`);
  return {
    units: 'mm',
    stock: { material: 'mild-steel', thickness: T },
    bending: { rule: 'k-factor', k: 0.42, insideRadius: R },
    parts: names.map(strip),
    joints: names.slice(1).map((name, i) => ({
      name: `joint-${i + 1}`,
      from: `${names[i]}.leg-2`,
      to: `${name}.leg-2-back`,
      by: 'none',
    })),
  };
}

describe('a chain of joints', () => {
  test('five strips, each seated in the one before: a thickness further each time', () => {
    const placed = plan(chain(5)).assembly?.placed ?? [];
    expect(placed).toHaveLength(5);
    const first = at(placed[0] as Placed, [0, 0, 0]);
    for (const [i, p] of placed.entries()) {
      const move = at(p, [0, 0, 0]).map((v, k) => v - (first[k] as number));
      // the marked face of an upright leg looks back over the first one: each sits a thickness inside
      expect(move).toEqual(near([-i * T, 0, 0]));
    }
  });

  test('the order of the joints in the job does not matter', () => {
    const job = chain(5);
    const back = { ...job, joints: job.joints.toReversed() };
    const poses = (j: JobLike) => plan(j).assembly?.placed.map((p) => p.pose);
    expect(poses(back)).toEqual(poses(job));
  });
});

describe('pieces that no joint reaches', () => {
  test('a third end: told by its name as a warning', () => {
    const found = plan(carrier({ end: { quantity: 3 } })).findings;
    expect(found).toMatchObject([{ code: 'piece-loose', severity: 'warning', part: 'end' }]);
    expect(spoken(found[0])?.message).toContain('end-3 is joined to nothing');
  });

  test('ten thousand ends: one warning with their number', () => {
    const found = plan(carrier({ end: { quantity: 10_000 } })).findings;
    expect(found).toMatchObject([{ code: 'piece-loose', values: { piece: 'end-3', more: 9997 } }]);
    expect(spoken(found[0])?.message).toContain('end-3 and 9997 more pieces of it are joined to nothing');
  });

  test('a part without a joint', () => {
    const job = carrier();
    const spare = { name: 'spare', family: 'bent-strip', width: 20, legs: [30, 30], angles: [90] };
    expect(codesOf(plan({ ...job, parts: [...job.parts, spare] }))).toEqual(['piece-loose']);
  });

  test('no joints at all: nothing is put together and nothing is said', () => {
    const { assembly, findings } = plan({ ...carrier(), joints: [] });
    expect(assembly).toBeNull();
    expect(findings).toEqual([]);
  });
});

describe('joints that cannot be', () => {
  const problems = (joints: Changes['joints'], more: Changes = {}) =>
    problemsOf(() => plan(carrier({ ...more, joints: joints ?? {} })));

  test('an unknown part: the nearest is named, and where it stands', () => {
    const [found, ...more] = problems({ east: { to: 'ent-2.rim' } });
    expect(more).toEqual([]);
    expect(found).toMatchObject({ code: 'piece-unknown', path: ['joints', 1, 'to'] });
    expect(found?.message).toContain('no part "ent-2"');
    expect(found?.fix).toContain('Did you mean "end-2"?');
  });

  test('an unknown site: the nearest is named, and the sites there are', () => {
    const [found] = problems({ west: { from: 'body.wset' } });
    expect(found).toMatchObject({ code: 'site-unknown', path: ['joints', 0, 'from'] });
    expect(found?.fix).toMatch(/^Did you mean "west"\? Known: west, east/);
  });

  test('both ends unknown: both are told', () => {
    const found = problems({ west: { from: 'bdoy.west', to: 'end-1.rmi' } });
    expect(found.map((p) => p.path)).toEqual([
      ['joints', 0, 'from'],
      ['joints', 0, 'to'],
    ]);
  });

  test('a part of several pieces named as one: which there are', () => {
    const [found] = problems({ west: { to: 'end.rim' } });
    expect(found).toMatchObject({ code: 'piece-which', message: 'there are 2 pieces of "end"' });
    expect(found?.fix).toBe('Say which: end-1, end-2');
  });

  test('more pieces joined than there are', () => {
    const [found] = problems({ east: { to: 'end-3.rim' } });
    expect(found?.code).toBe('piece-unknown');
    expect(found?.message).toContain('there are 2 pieces of "end"');
    expect(found?.fix).toContain('Raise its quantity');
  });

  test('a single piece has no number', () => {
    const found = problems({}, { end: { quantity: 1 } });
    expect(found.length).toBeGreaterThan(1);
    expect(found[0]?.message).toContain('there is one piece of "end", called just that');
  });

  test('a site with itself', () => {
    const joints = [{ name: 'ring', from: 'body.west', to: 'body.west', by: 'none' }];
    expect(problemsOf(() => plan({ ...carrier(), joints }))).toMatchObject([
      { code: 'joint-self', message: 'body.west is joined to itself', path: ['joints', 0] },
    ]);
  });

  test('two joints that claim one site: the first keeps it', () => {
    const [found, ...more] = problems({ east: { to: 'end-1.rim' } });
    expect(more).toEqual([]);
    expect(found).toMatchObject({ code: 'site-twice', path: ['joints', 1] });
    expect(found?.message).toBe('end-1.rim is taken by the joint "west"');
  });
});
