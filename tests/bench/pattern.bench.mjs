// Parameters of the carrier's body to its flat and formed views, against makerjs making the same outline from the
// same regions (panels and bend zones as closed shapes, united, then chained).
import { FAMILIES, jobReader } from '@tinwright/core';
import { form, unfold } from '@tinwright/core/internal';
import makerjs from 'makerjs';
import { carrierBody } from './carrier.mjs';
import { perCall } from './measure.mjs';

const FEW = 8; // rounds for each family, after two stretches to warm up

/** The example of every family from its parameters to both views, ms, the slowest first. */
function everyFamily() {
  const read = jobReader(FAMILIES);
  const times = FAMILIES.map(({ name, describe }) => {
    const [{ family, params, sheet }] = read({
      units: 'mm',
      stock: { material: 'mild-steel', thickness: 1 },
      parts: [{ name: 'part', family: name, ...describe.example }],
    }).parts;
    const { time } = perCall(
      () => {
        const part = family.part(params, sheet);
        return [unfold(part), form(part)];
      },
      FEW,
      2,
    );
    return { name, time };
  });
  return times.toSorted((a, b) => b.time - a.time).map(({ name, time }) => `${name} ${time.toPrecision(2)}`);
}

export default function run() {
  const { family, params, sheet } = carrierBody();
  const both = () => {
    const part = family.part(params, sheet);
    return { flat: unfold(part), formed: form(part) };
  };
  const { flat } = both();
  const regions = [
    ...flat.panels.map((p) => p.shape),
    ...flat.bends.map(({ tangents: [[a, b], [c, d]] }) => [a, b, d, c]),
  ];
  const united = () => {
    const shapes = regions.map(
      (r) =>
        new makerjs.models.ConnectTheDots(
          true,
          r.map((p) => [...p]),
        ),
    );
    const model = shapes.reduce((a, b) => makerjs.model.combineUnion(a, b));
    return makerjs.model.findChains(model, { pointMatchingDistance: 1e-5 });
  };
  const corners = flat.outline.map((v) => [...v.at]);
  const chained = () => makerjs.model.findSingleChain(new makerjs.models.ConnectTheDots(true, corners));
  const [ours, peer, chain] = [perCall(both), perCall(united), perCall(chained)];
  const found = united();
  const length = Math.max(...found.map((c) => c.pathLength));
  return {
    ours: ours.time,
    peer: peer.time,
    peerName: 'makerjs 0.19.2: union of the panels and bend zones, then chains',
    unit: 'ms',
    n: ours.n,
    detail: `outline ${flat.cutLength.toFixed(3)} mm here, ${length.toFixed(3)} mm by makerjs in ${found.length} chain(s); makerjs only chaining our finished corners takes ${chain.time.toPrecision(3)} ms\nevery family, ms: ${everyFamily().join(', ')}`,
  };
}
