// A thousand sizes of the carrier's body to DXF and SVG text, against dxf-writer alone on the same entities.
import { planJob, readJob } from '@tinwright/core';
import { flatDrawing, toDxf, toSvg } from '@tinwright/files';
import Drawing from 'dxf-writer';
import { carrierData } from './carrier.mjs';

const COUNT = 1000;

export default function run() {
  const data = carrierData();
  const body = data.parts[0];
  const jobs = Array.from({ length: COUNT }, (_, i) => ({
    ...data,
    joints: [],
    parts: [{ ...body, length: 300 + i / 4, width: 150 + i / 10 }],
  }));
  const draw = (job) => {
    const [part] = planJob(readJob(job)).parts;
    return flatDrawing(part.flat, part.name, [part.name]);
  };
  draw(jobs[0]);
  const start = performance.now();
  let bytes = 0;
  for (const job of jobs) {
    const drawing = draw(job);
    bytes += toDxf(drawing).length + toSvg(drawing).length;
  }
  const ours = (performance.now() - start) / 1000;
  const drawings = jobs.map(draw);
  const bare = performance.now();
  for (const drawing of drawings) alone(drawing);
  const peer = (performance.now() - bare) / 1000;
  return {
    ours,
    peer,
    peerName: 'dxf-writer 1.18.4 on the same entities, DXF only',
    unit: 's',
    n: COUNT,
    detail: `reading, planning, verifying and both texts: ${(bytes / 1e6).toFixed(1)} MB; the peer gets finished drawings`,
  };
}

function alone(drawing) {
  const file = new Drawing();
  for (const { name, shapes } of drawing.layers) {
    file.addLayer(name, 7, 'CONTINUOUS').setActiveLayer(name);
    for (const s of shapes) {
      if (s.kind === 'line') file.drawLine(...s.from, ...s.to);
      else if (s.kind === 'circle') file.drawCircle(...s.centre, s.radius);
      else if (s.kind === 'loop')
        file.drawPolyline(
          s.loop.map((v) => [...v.at, v.bulge]),
          true,
        );
      else file.drawText(...s.at, s.height, 0, s.text);
    }
  }
  return file.toDxfString();
}
