import type { Shape } from '@tinwright/files';
import { flatDrawing, toMakerModel } from '@tinwright/files';
import makerjs from 'makerjs';
import { describe, expect, test } from 'vitest';
import { samples } from '../samples.js';

const LEAK = 1e-4; // mm; by default gaps of 0.005 would count as closed

function layer(model: makerjs.IModel, name: string): makerjs.IModel {
  const found = model.models?.[name];
  if (found === undefined) throw new Error(`no layer ${name}`);
  return found;
}

/** Length of every line, arc and circle in a model. */
function pathsLength(model: makerjs.IModel): number {
  let sum = 0;
  makerjs.model.walk(model, {
    onPath: (walked) => {
      sum += makerjs.measure.pathLength(walked.pathContext);
    },
  });
  return sum;
}

describe.each(samples())('$name', ({ name, flat }) => {
  const drawing = flatDrawing(flat, name, [name]);
  const model = toMakerModel(drawing);

  test('is in millimetres, one model a layer', () => {
    expect(model.units).toBe(makerjs.unitType.Millimeter);
    expect(Object.keys(model.models ?? {})).toEqual(drawing.layers.map((l) => l.name));
  });

  test('makerjs finds as many chains to cut as there are outlines and holes, all closed', () => {
    const found = makerjs.model.findChains(layer(model, 'CUT'), { pointMatchingDistance: LEAK });
    const chains = found as readonly makerjs.IChain[];
    expect(chains.map((c) => c.endless)).toEqual([flat.outline, ...flat.holes].map(() => true));
  });

  test('makerjs measures the length of all cuts', () => {
    expect(pathsLength(layer(model, 'CUT'))).toBeCloseTo(flat.cutLength, 6);
  });

  test('makerjs measures the blank', () => {
    const box = makerjs.measure.modelExtents(layer(model, 'CUT'));
    expect(box?.low[0]).toBeCloseTo(0, 6);
    expect(box?.low[1]).toBeCloseTo(0, 6);
    expect(box?.high[0]).toBeCloseTo(flat.blank.max[0], 6);
    expect(box?.high[1]).toBeCloseTo(flat.blank.max[1], 6);
  });

  test('bend lines are lines of their own', () => {
    const bends = ['BEND-UP', 'BEND-DOWN'].flatMap((n) => Object.keys(model.models?.[n]?.models ?? {}));
    expect(bends).toHaveLength(flat.bends.length);
  });

  test('its note is a caption', () => {
    const models = Object.values(layer(model, 'NOTE').models ?? {});
    expect(models.map((m) => m.caption?.text)).toEqual([name]);
  });
});

test('two lines of a note are two captions, each where it stands', () => {
  const note = (text: string, y: number): Shape => ({ kind: 'text', at: [3, y], height: 2, text });
  const model = toMakerModel({
    title: 'seed tray',
    layers: [{ name: 'NOTE', shapes: [note('tray', 4), note('rack 3', 1)] }],
    box: { min: [0, 0], max: [10, 10] },
  });
  const captions = Object.values(layer(model, 'NOTE').models ?? {}).map((m) => m.caption);
  expect(captions.map((c) => [c?.text, c?.anchor.origin])).toEqual([
    ['tray', [3, 4]],
    ['rack 3', [3, 1]],
  ]);
});

test('points and arcs of a drawing of one’s own', () => {
  const shapes: readonly Shape[] = [
    { kind: 'point', at: [3, 4] },
    { kind: 'arc', centre: [10, 0], radius: 5, start: 0, end: 90 },
  ];
  const box = { min: [0, 0], max: [15, 5] } as const;
  const model = toMakerModel({ title: 'own', layers: [{ name: 'SCRIBE', shapes }], box });
  expect(pathsLength(model)).toBeCloseTo((5 * Math.PI) / 2, 9);
  expect(JSON.stringify(model)).toContain('"origin":[3,4]');
});
