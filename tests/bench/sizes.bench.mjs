// A thousand sizes of the whole carrier, data to DXF and SVG text on one thread, against makerjs modelling and exporting
// the same outlines. The detail holds an open box, the share of verifying, dxf-writer and ezdxf alone, and the command
// with threads and a queue (`--fast`: a tenth of the rows).
import { spawnSync } from 'node:child_process';
import { jobReader, planJob, verifyFlat, verifyForm } from '@tinwright/core';
import { flatDrawing, toDxf, toSvg } from '@tinwright/files';
import DxfWriter from 'dxf-writer';
import makerjs from 'makerjs';
import { carrierData } from './carrier.mjs';
import { processorTime } from './measure.mjs';
import { byCommand } from './sizes-command.mjs';

const FAST = process.argv.includes('--fast') ? 10 : 1;
const COUNT = 1000 / FAST;
const BOX = {
  units: 'mm',
  stock: { material: 'galvanised-steel', thickness: 1 },
  bending: { rule: 'k-factor', insideRadius: 1 },
};

export default async function run() {
  const data = carrierData();
  const [body] = data.parts;
  const carriers = Array.from({ length: COUNT }, (_, i) => ({
    ...data,
    parts: [{ ...body, length: 300 + i / 4, width: 150 + i / 10 }, ...data.parts.slice(1)],
  }));
  const boxes = Array.from({ length: COUNT }, (_, i) => ({
    ...BOX,
    parts: [{ name: 'box', family: 'open-box', length: 150 + i / 4, width: 120, height: 50 }],
  }));
  const read = jobReader();
  const drawings = (job) => planJob(read(job)).parts.map((p) => flatDrawing(p.flat, p.name, [p.name]));
  const texts = (job) => drawings(job).flatMap((d) => [toDxf(d), toSvg(d)]);
  for (const job of carriers.slice(0, 50)) texts(job);
  const ours = seconds(() => carriers.forEach(texts));
  const box = seconds(() => boxes.forEach(texts));
  const parts = carriers.flatMap((job) => planJob(read(job)).parts);
  const verify = seconds(() => {
    for (const { flat, formed, part } of parts) {
      verifyFlat(flat);
      verifyForm(formed, part.asked);
    }
  });
  const drawn = carriers.flatMap(drawings);
  const peer = seconds(() => drawn.forEach(byMaker));
  const alone = seconds(() => drawn.forEach(byDxfWriter));
  return {
    ours,
    peer,
    peerName: 'makerjs 0.19.2 modelling the finished outlines and holes and exporting them as DXF and SVG',
    unit: 's',
    n: COUNT,
    detail: [
      `${drawn.length} parts, processor time: ${((1000 * ours) / COUNT).toPrecision(3)} ms a carrier, of which ${((100 * verify) / ours).toFixed(0)} % verify; an open box ${((1000 * box) / COUNT).toPrecision(3)} ms`,
      `dxf-writer 1.18.4 alone, DXF of the finished drawings: ${alone.toPrecision(3)} s; ezdxf: ${byEzdxf(drawn)}`,
      await byCommand(data, boxes[0], { carriers: COUNT, boxes: 10 * COUNT }),
    ].join('\n'),
  };
}

function seconds(work) {
  const start = processorTime();
  work();
  return (processorTime() - start) / 1000;
}

const loops = ({ layers }) => layers.flatMap((l) => l.shapes).filter((s) => s.kind === 'loop');

function byMaker(drawing) {
  const models = loops(drawing).map(({ loop }) => {
    const paths = loop.map((v, i) => {
      const end = loop[(i + 1) % loop.length].at;
      return v.bulge === 0
        ? new makerjs.paths.Line([...v.at], [...end])
        : new makerjs.paths.Arc([...v.at], [...end], radiusOf(v, end), false, v.bulge < 0);
    });
    return { paths: Object.fromEntries(paths.map((p, i) => [i, p])) };
  });
  const model = { units: 'mm', models: Object.fromEntries(models.map((m, i) => [i, m])) };
  makerjs.exporter.toDXF(model);
  makerjs.exporter.toSVG(model);
}

function radiusOf({ at, bulge }, end) {
  const chord = Math.hypot(end[0] - at[0], end[1] - at[1]);
  return (chord * (1 + bulge * bulge)) / (4 * Math.abs(bulge));
}

function byDxfWriter(drawing) {
  const file = new DxfWriter();
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

const EZDXF = `
import ezdxf, io, json, sys, time
parts = json.load(sys.stdin)
start = time.process_time()
for part in parts:
    doc = ezdxf.new("R2000")
    space = doc.modelspace()
    for layer, shapes in part:
        doc.layers.add(layer)
        at = {"layer": layer}
        for s in shapes:
            if s["kind"] == "loop":
                points = [(*v["at"], v["bulge"]) for v in s["loop"]]
                space.add_lwpolyline(points, format="xyb", close=True, dxfattribs=at)
            elif s["kind"] == "line":
                space.add_line(s["from"], s["to"], dxfattribs=at)
            elif s["kind"] == "circle":
                space.add_circle(s["centre"], s["radius"], dxfattribs=at)
            else:
                space.add_text(s["text"], height=s["height"], dxfattribs=at).set_placement(s["at"])
    doc.write(io.StringIO())
print(f"{time.process_time() - start:.3g}")
`;

/** The same entities written by ezdxf, seconds for all; a tenth of them is measured. */
function byEzdxf(drawn) {
  const few = drawn.filter((_, i) => i % 10 === 0);
  const input = JSON.stringify(few.map((d) => d.layers.map(({ name, shapes }) => [name, shapes])));
  const done = spawnSync('/usr/bin/python3', ['-c', EZDXF], { input, encoding: 'utf8' });
  return done.status === 0
    ? `${(10 * Number(done.stdout)).toPrecision(3)} s for the same entities`
    : 'not here';
}
