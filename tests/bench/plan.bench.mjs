// A plan of the carrier's body to PDF, a page of it, against pdfkit drawing the same lines and texts bare.
import { planJob, readJob } from '@tinwright/core';
import { makingOf, packetFiles, pagesPdf, partPlan } from '@tinwright/paper';
import { typeface } from '@tinwright/paper/internal';
import PDFDocument from 'pdfkit';
import { toBytes } from 'pdfkit/output';
import { carrierData } from './carrier.mjs';
import { median } from './measure.mjs';

const POINTS = 72 / 25.4;
const ROUNDS = 40;
const PACKETS = 4;

export default async function run() {
  const plan = planJob(readJob(carrierData()));
  const { job, parts } = plan;
  const [body] = parts;
  const face = typeface();
  const options = { paper: 'A4', dims: 'mm', face };
  const draw = async () => {
    const { pages } = partPlan(job.name, body, options);
    return { pages, bytes: await pagesPdf(pages, { title: 'plan', language: 'en', face }) };
  };
  const { pages, bytes } = await draw();
  const ours = await measured(ROUNDS, draw);
  const peer = await measured(ROUNDS, () => bare(pages));
  const packet = async () =>
    (await packetFiles(plan, makingOf(plan, null), { paper: 'A4', dims: 'mm' }, ['pdf'])).files[0].content;
  const packetBytes = (await packet()).length;
  const packetTime = await measured(PACKETS, packet);
  return {
    ours: ours / pages.length,
    peer: peer / pages.length,
    peerName: 'pdfkit 0.20.2 drawing the same lines and texts',
    unit: 'ms',
    n: ROUNDS,
    detail: `${pages.length} pages of A4, ${bytes.length} bytes; laying out, pictures with hidden lines removed and PDF, per page; medians. The whole packet of the carrier, ${parts.reduce((n, p) => n + p.quantity, 0)} pieces: ${(packetTime / 1000).toFixed(2)} s, ${(packetBytes / 1e6).toFixed(2)} MB; bend orders, operations and pictures of every bend with it`,
  };
}

/** Median time of one call, ms, after a quarter of the rounds to warm up. */
async function measured(rounds, work) {
  const times = [];
  for (let i = 0; i < 1.25 * rounds; i++) {
    const start = performance.now();
    await work();
    times.push(performance.now() - start);
  }
  return median(times.slice(-rounds));
}

async function bare(pages) {
  const doc = new PDFDocument({ autoFirstPage: false });
  const bytes = toBytes(doc);
  for (const { width, height, blocks } of pages) {
    doc.addPage({ size: [width * POINTS, height * POINTS], margin: 0 });
    const to = ([x, y]) => [x * POINTS, (height - y) * POINTS];
    for (const item of blocks.flatMap((b) => b.items)) {
      if (item.kind === 'words') words(doc, item, to);
      else if (item.kind === 'ring') doc.circle(...to(item.centre), item.radius * POINTS).stroke();
      else {
        const [first, ...more] = item.points;
        doc.moveTo(...to(first));
        for (const p of more) doc.lineTo(...to(p));
        if (item.kind === 'fill') doc.fill();
        else doc.stroke();
      }
    }
  }
  doc.end();
  return bytes;
}

function words(doc, { at, text, height, turn }, to) {
  const [x, y] = to(at);
  doc.font('Helvetica').fontSize(height * 1.4 * POINTS);
  if (turn === 90) doc.save().rotate(-90, { origin: [x, y] });
  doc.text(text, x, y, { lineBreak: false, baseline: 'alphabetic' });
  if (turn === 90) doc.restore();
}
