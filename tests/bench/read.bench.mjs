// The carrier's job read by a reader that is kept, against zod alone parsing the same data with the same shape.
import { jobReader } from '@tinwright/core';
import * as z from 'zod/mini';
import { carrierData } from './carrier.mjs';
import { perCall } from './measure.mjs';

export default function run() {
  const data = carrierData();
  const read = jobReader();
  const shape = shapeOf(data);
  const [ours, peer] = [perCall(() => read(data)), perCall(() => z.parse(shape, data))];
  const cold = perCall(() => jobReader()(data));
  return {
    ours: ours.time,
    peer: peer.time,
    peerName:
      'zod 4 mini parsing alone: the same keys, no units, defaults, gauges, derived sizes or joints looked up',
    unit: 'ms',
    n: ours.n,
    detail: `${data.parts.length} parts, ${data.joints.length} joints; with a reader made for every job ${cold.time.toPrecision(3)} ms`,
  };
}

/** A strict schema for data of this shape. */
function shapeOf(value) {
  if (Array.isArray(value)) return z.tuple(value.map(shapeOf));
  if (typeof value === 'object' && value !== null)
    return z.strictObject(Object.fromEntries(Object.entries(value).map(([k, v]) => [k, shapeOf(v)])));
  if (typeof value === 'number') return z.number().check(z.nonnegative());
  return typeof value === 'boolean' ? z.boolean() : z.string().check(z.maxLength(200));
}
