// Plans, templates and packets of every example on every paper, in mm and in fractions, read by a second reader: plans.mjs FOLDER.
// pdftotext tells where every word stands; no two may overlap, and pages are of the paper asked for.
import { execFileSync } from 'node:child_process';
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { ready, root } from './ready.mjs';

ready();
const [folder] = process.argv.slice(2);
const { main } = await import(pathToFileURL(join(root, 'packages/cli/dist/index.js')).href);
const PAPERS = { A4: [210, 297], letter: [215.9, 279.4], A3: [297, 420], tabloid: [279.4, 431.8] };
/** On the paper at hand in both; on the large one in the unit of who has it. */
const DIMS = { A4: ['mm', '1/16'], letter: ['mm', '1/16'], A3: ['mm'], tabloid: ['mm'] };
const FACES = 0.2; // of a box's height, white above and below the letters

const host = {
  out: () => undefined,
  err: (text) => process.stderr.write(text),
  colour: false,
  stdin: async () => Buffer.from(''),
};
const run = async (...args) => {
  const exit = await main([...args, '--with', join(root, 'examples/row-marker.mjs')], host);
  if (exit !== 0) throw new Error(`${args.join(' ')} ended with ${exit}`);
};

/** Pages with their words, points from the upper left corner. */
function read(pdf) {
  const html = execFileSync('pdftotext', ['-bbox', pdf, '-'], { encoding: 'utf8', maxBuffer: 1e8 });
  return html
    .split('<page ')
    .slice(1)
    .map((page) => ({
      size: ['width', 'height'].map(
        (k) => Number(new RegExp(`${k}="([\\d.]+)"`).exec(page)[1]) * (25.4 / 72),
      ),
      words: [
        ...page.matchAll(
          /<word xMin="([\d.-]+)" yMin="([\d.-]+)" xMax="([\d.-]+)" yMax="([\d.-]+)">(.*?)<\/word>/g,
        ),
      ].map(([, x0, y0, x1, y1, text]) => ({ box: [x0, y0, x1, y1].map(Number), text })),
    }));
}

/** A word's box without the white over and under its letters, which lies beside them where it stands upright. */
function letters({ box: [x0, y0, x1, y1], text }) {
  const upright = y1 - y0 > x1 - x0 && text.length > 1;
  const [dx, dy] = upright ? [(x1 - x0) * FACES, 0] : [0, (y1 - y0) * FACES];
  return [x0 + dx, y0 + dy, x1 - dx, y1 - dy];
}

function overlaps(words) {
  const boxes = words.map(letters);
  return words.flatMap((w, i) =>
    words.slice(i + 1).flatMap((v, k) => {
      const [a, b] = [boxes[i], boxes[i + 1 + k]];
      const meet =
        Math.min(a[2], b[2]) - Math.max(a[0], b[0]) > 0.05 &&
        Math.min(a[3], b[3]) - Math.max(a[1], b[1]) > 0.05;
      return meet ? [`"${w.text}" and "${v.text}"`] : [];
    }),
  );
}

/** Pages of a file, all of a size and without words on words. @throws Error that says what is wrong */
function checked(pdf, size) {
  const found = read(pdf);
  for (const { size: read, words } of found) {
    const wrong = read.toSorted((a, b) => a - b).some((v, k) => Math.abs(v - size[k]) > 0.01);
    if (wrong) throw new Error(`${pdf}: a page of ${read.join(' x ')} mm`);
    const faults = overlaps(words);
    if (faults.length > 0) throw new Error(`${pdf}: ${faults.slice(0, 5).join('; ')} overlap`);
    if (words.length < 10) throw new Error(`${pdf}: a page of ${words.length} words`);
  }
  return found;
}

let pages = 0;
for (const file of readdirSync(join(root, 'examples')).filter((f) => /(?<!-shop)\.yaml$/.test(f)))
  for (const [paper, size] of Object.entries(PAPERS))
    for (const dims of DIMS[paper]) {
      const out = join(folder, `${file.replace('.yaml', '')}-${paper}-${dims.replace('/', '-')}`);
      const job = join(root, 'examples', file);
      await run('plan', job, '--paper', paper, '--dims', dims, '--out', out);
      await run('template', job, '--paper', paper, '--dims', dims, '--out', out);
      for (const list of ['plans.json', 'templates.json'])
        for (const part of JSON.parse(readFileSync(join(out, list), 'utf8')).parts) {
          const found = checked(join(out, part.pdf), size);
          if (found.length !== part.pages)
            throw new Error(`${out}/${part.pdf}: ${found.length} pages, ${part.pages} said`);
          pages += found.length;
        }
      if (dims !== 'mm') continue;
      const packet = join(out, 'packet.pdf');
      const language = paper === 'A4' ? 'en' : 'de';
      await run('packet', job, '--paper', paper, '--lang', language, '--out', packet);
      pages += checked(packet, size).length;
    }
process.stdout.write(
  `${pages} pages of plans, templates and packets read by pdftotext: no word on another\n`,
);
