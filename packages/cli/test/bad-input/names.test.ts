import { describe, expect, test } from 'vitest';
import { HEAD, STRIP, stripJob } from '../jobs.js';
import { make, refused } from '../place.js';

const LETTERS = 'letters, digits, - and _ allowed';

describe('a part name that could not be a file name everywhere', () => {
  test.each([
    ['with a slash', 'a/b', `"a/b" given; ${LETTERS}`],
    ['with a backslash', "'a\\b'", LETTERS],
    ['of one dot', '.', `"." given; ${LETTERS}`],
    ['of two dots', '..', `".." given; ${LETTERS}`],
    ['with a dot', 'a.b', `"a.b" given; ${LETTERS}`],
    ['that climbs out of the folder', '../../tray', LETTERS],
    ['with a blank', 'seed tray', LETTERS],
    ['with a dash first', '-tray', 'a letter or digit first'],
    ['with a line break', '"a\\nb"', '"aU+000Ab" given'],
    ['with a zero byte', '"a\\0b"', '"aU+0000b" given'],
    ['with an escape character', '"a\\e[31mb"', '"aU+001B[31mb" given'],
    ['with a mark that turns the writing round', '"a\\u202Eb"', '"aU+202Eb" given'],
    ['with an isolate that turns the writing round', '"a\\u2066b"', '"aU+2066b" given'],
    ['with a blank of no width', '"a\\u200Bb"', '"aU+200Bb" given'],
    ['with half a pair', '"\\uD800"', '"U+D800" given'],
    ['of no letter', '""', 'an empty name given'],
    ['that some systems keep for a device', 'CON', '"CON" given; some systems keep that name for a device'],
    ['of 41 letters', 'x'.repeat(41), 'a name of 41 characters given, up to 40 allowed'],
    ['of 10 000 letters', 'x'.repeat(10_000), 'a name of 10000 characters given, up to 40 allowed'],
    ['that is a number', '5', '5 given, text allowed'],
    ['that is nothing', '~', 'nothing given, text allowed'],
  ])('%s is refused', async (_, name, says) => {
    const [problem, ...more] = await refused(stripJob(['bracket', name]));
    expect(more).toEqual([]);
    expect(problem).toContain('10:11: part 1: name: ');
    expect(problem).toContain(says);
    expect(problem).toMatch(/^[ -~]*$/); // nothing invisible on the terminal
  });
});

test.each(['Kräuter_2', '漢字', 'a', '2', 'x'.repeat(40), 'constructor', 'toString'])(
  'the name %s is taken',
  async (name) => {
    const { exit, files } = await make(stripJob(['bracket', `"${name}"`]));
    expect(exit).toBe(0);
    expect(files).toContain(`out/parts/${name}.dxf`);
  },
);

test('the name of a device with its number raised is refused', async () => {
  const [problem] = await refused(stripJob(['bracket', 'com¹']));
  expect(problem).toContain('"com¹" given; some systems keep that name for a device');
});

describe('two parts with one name', () => {
  test.each([
    ['letter by letter', 'bracket'],
    ['but for capitals: one file on some systems', 'Bracket'],
    ['but for capitals beyond ASCII', 'ÄRMEL', 'ärmel'],
    ['but for the way the accent is written', 'cafe\u0301', 'caf\u00e9'],
  ])('the same %s', async (_, second, first = 'bracket') => {
    const job = HEAD + STRIP.replace('bracket', first) + STRIP.replace('bracket', second);
    const [problem, ...more] = await refused(job);
    expect(more).toEqual([]);
    expect(problem).toBe(
      `15:11: part "${second}": name: the name "${second}" is taken by part 1. Give every part a name of its own.`,
    );
  });

  test('one of them a piece of the other, of which several are made', async () => {
    const several = STRIP.replace('bracket', 'end').replace('    width', '    quantity: 2\n    width');
    const [problem, ...more] = await refused(HEAD + several + STRIP.replace('bracket', 'end-2'));
    expect(more).toEqual([]);
    expect(problem).toContain('part "end-2": name: the name "end-2" is taken by piece 2 of 2 of "end".');
    expect((await make(HEAD + several + STRIP.replace('bracket', 'end-3'))).exit).toBe(0);
  });

  test('three of them are two problems', async () => {
    const problems = await refused(HEAD + STRIP + STRIP + STRIP);
    expect(problems.map((p) => p.split(' ')[0])).toEqual(['15:11:', '20:11:']);
  });
});

describe('a name or note of more than one plain line', () => {
  test.each([
    [
      'note of a part with a line break',
      stripJob(['    width', '    note: "a\\nb"\n    width']),
      '12:11: part "bracket": note',
    ],
    [
      'note with a carriage return',
      stripJob(['    width', '    note: "a\\rb"\n    width']),
      '12:11: part "bracket": note',
    ],
    [
      'note with a line separator',
      stripJob(['    width', '    note: "a\\u2028b"\n    width']),
      '12:11: part "bracket": note',
    ],
    [
      'note that turns the writing round',
      stripJob(['    width', '    note: "\\u202E"\n    width']),
      '12:11: part "bracket": note',
    ],
    [
      'note of a block of text',
      stripJob(['    width', '    note: |\n      a\n      b\n    width']),
      '12:11: part "bracket": note',
    ],
    ['note of a job with a line break', `note: "a\\nb"\n${stripJob()}`, '1:7: note'],
    ['name of a job with a line break', `name: "a\\nb"\n${stripJob()}`, '1:7: name'],
  ])('%s', async (_, job, place) => {
    const [problem, ...more] = await refused(job);
    expect(more).toEqual([]);
    expect(problem).toContain(`${place}: `);
    expect(problem).toContain('one line of plain text without control characters allowed');
    expect(problem).not.toContain('\u202e');
  });

  test('a note of 300 letters is refused, with the number allowed', async () => {
    const [problem] = await refused(stripJob(['    width', `    note: ${'x'.repeat(300)}\n    width`]));
    expect(problem).toContain('12:11: part "bracket": note: longer than 200 characters');
  });
});
