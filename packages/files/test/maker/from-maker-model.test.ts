import { JobError, makePart, openBox } from '@tinwright/core';
import { asked, cutout, defineFamily, panel, rectangle, value } from '@tinwright/core/family';
import { loopArea, loopLength } from '@tinwright/core/internal';
import { fromMakerModel, partDrawing, TABLE_STYLE, toMakerModel } from '@tinwright/files';
import makerjs from 'makerjs';
import { describe, expect, test } from 'vitest';

const STOCK = { material: 'mild-steel', thickness: 1 } as const;

test('a rounded rectangle with a hole: its corners stay arcs, the hole a circle, both counter-clockwise', () => {
  const plate = new makerjs.models.RoundRectangle(80, 40, 5);
  const [outline, hole, ...more] = fromMakerModel({
    units: makerjs.unitType.Millimeter,
    models: { plate },
    paths: { hole: new makerjs.paths.Circle([40, 20], 6) },
  });
  expect(more).toEqual([]);
  expect(outline?.filter((v) => v.bulge !== 0)).toHaveLength(8); // four corners in two halves each
  expect(loopArea(outline ?? [])).toBeCloseTo(80 * 40 - (4 - Math.PI) * 25, 9);
  expect(loopLength(outline ?? [])).toBeCloseTo(2 * (70 + 30) + 10 * Math.PI, 9);
  expect(loopArea(hole ?? [])).toBeCloseTo(36 * Math.PI, 9);
});

test('origins of models within models add up, inches become millimetres', () => {
  const square = new makerjs.models.Square(1);
  const model = { units: 'inch', origin: [1, 0], models: { row: { origin: [0, 2], models: { square } } } };
  const [loop] = fromMakerModel(model);
  expect(loop?.map((v) => v.at)).toContainEqual([25.4, 50.8]);
  expect(loopArea(loop ?? [])).toBeCloseTo(25.4 ** 2, 9);
});

test('what a drawing became comes back with the same areas', () => {
  const part = makePart(openBox, openBox.describe.example, STOCK);
  const { flat } = part;
  const { models } = toMakerModel(partDrawing(part, TABLE_STYLE));
  const [outline] = fromMakerModel({ models: { CUT: models?.CUT ?? {} } });
  expect(loopArea(outline ?? [])).toBeCloseTo(loopArea(flat.outline), 6);
  expect(loopLength(outline ?? [])).toBeCloseTo(loopLength(flat.outline), 6);
});

test('a chain is an opening of a family', () => {
  const slot = new makerjs.models.Slot([20, 20], [50, 20], 5);
  const plate = defineFamily({
    name: 'slotted',
    values: { width: value.size('along x') },
    build: ({ width }) => [
      panel('plate', rectangle(width, 40)),
      ...fromMakerModel(slot).map((loop) => cutout('plate', { loop, by: [] })),
      asked('width', width, 'x'),
    ],
    describe: { title: 'plate', summary: 'A plate.', example: { width: 70 } },
  });
  const { flat } = makePart(plate, { width: 70 }, STOCK);
  expect(flat.area).toBeCloseTo(70 * 40 - (30 * 10 + 25 * Math.PI), 6);
});

const line = (x1: number, y1: number, x2: number, y2: number) => new makerjs.paths.Line([x1, y1], [x2, y2]);
const refusal = (model: makerjs.IModel) => {
  try {
    fromMakerModel(model);
  } catch (error) {
    if (error instanceof JobError) return error.problems[0];
    throw error;
  }
  return undefined;
};

describe('what is no closed chain is refused with its place', () => {
  test('an open chain', () => {
    const paths = { a: line(0, 0, 10, 0), b: line(10, 0, 10, 10) };
    const found = refusal({ models: { cut: { paths } } });
    expect(found).toMatchObject({ code: 'maker-open', path: ['models', 'cut', 'paths', 'b'] });
    expect(found?.message).toContain('10, 10 mm');
  });

  test('paths that cross', () => {
    const paths = {
      a: line(0, 0, 10, 10),
      b: line(10, 10, 10, 0),
      c: line(10, 0, 0, 10),
      d: line(0, 10, 0, 0),
    };
    expect(refusal({ paths })).toMatchObject({ code: 'maker-crossing', path: ['paths', 'c'] });
    expect(refusal({ paths })?.message).toContain('5, 5 mm');
  });

  test('a third path at an end, and a path drawn twice', () => {
    const square = { a: line(0, 0, 9, 0), b: line(9, 0, 9, 9), c: line(9, 9, 0, 0) };
    expect(refusal({ paths: { ...square, d: line(9, 0, 20, -5) } })?.code).toBe('maker-crossing');
    expect(refusal({ paths: { ...square, d: line(0, 0, 9, 0) } })?.code).toBe('maker-crossing');
  });

  test.each([
    [{ paths: { p: { type: 'bezier-seed', origin: [0, 0] } } }, 'maker-path'],
    [{ paths: { p: { type: 'line', origin: [0, 0], end: [Number.NaN, 1] } } }, 'maker-path'],
    [{ paths: { p: { type: 'circle', origin: [0, 0], radius: 0 } } }, 'maker-path'],
    [{ units: 'league', paths: {} }, 'maker-unit'],
  ])('a path or unit that is not read: %j', (model, code) => {
    expect(refusal(model as makerjs.IModel)?.code).toBe(code);
  });
});
