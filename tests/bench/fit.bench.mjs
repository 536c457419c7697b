// The carrier's pieces placed, fastened and checked against each other, against manifold-3d doing the same clash
// checks: ready solids moved to the same places, and the volume two of them share.

import { planJob, readJob } from '@tinwright/core';
import { assemble, atOnce } from '@tinwright/core/internal';
import manifold from 'manifold-3d';
import { solidOf } from '../kit/solid.mjs';
import { carrierData } from './carrier.mjs';
import { perCall } from './measure.mjs';

export default async function run() {
  const wasm = await manifold();
  wasm.setup();
  const { job, parts, assembly } = planJob(readJob(carrierData()));
  const given = parts.map(({ name, quantity, material, made, stands }) => ({
    name,
    quantity,
    material,
    made,
    ...stands,
  }));
  const ours = perCall(() => atOnce(assemble(given, job)));
  const solids = new Map(parts.map((p) => [p.name, solidOf(wasm, p.formed)]));
  const matrix = ({ x, y, z, origin }) => [...x, 0, ...y, 0, ...z, 0, ...origin, 1];
  let shared = 0;
  const peer = perCall(() => {
    shared = 0;
    const moved = assembly.placed.map((p) => solids.get(p.part.name).transform(matrix(p.pose)));
    moved.forEach((a, i) => {
      for (const b of moved.slice(i + 1)) {
        const both = a.intersect(b);
        shared += both.volume();
        both.delete();
      }
    });
    for (const m of moved) m.delete();
  });
  return {
    ours: ours.time,
    peer: peer.time,
    peerName: 'manifold-3d 3.5.4: the same pieces moved and intersected in pairs, no distances, no fasteners',
    unit: 'ms',
    n: ours.n,
    detail: `${assembly.placed.length} pieces, ${assembly.fasteners.length} fasteners, ${assembly.fits.length} fits; manifold-3d finds ${shared.toFixed(6)} mm³ shared`,
  };
}
