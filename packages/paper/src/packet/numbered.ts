import type { Flowing } from '../page/flow.js';
import { letter } from '../page/letter.js';
import type { Page } from '../page/page.js';
import { tableFlow } from '../page/table.js';
import type { PacketKit } from './kit.js';

const BASE = 4; // mm from the lower edge of the paper: under frames and tiles
const SIDE = 10; // mm from the left or right edge

/**
 * A cover with a list of contents, and pages behind it, all with their numbers.
 * @param cover lays itself out round the list; as many pages whatever numbers stand in it
 */
export function numbered(
  cover: (contents: readonly Flowing[]) => readonly Page[],
  body: readonly Page[],
  kit: PacketKit,
): readonly Page[] {
  const own = cover(contents(body, 0, kit)).length;
  const pages = [...cover(contents(body, own, kit)), ...body];
  return pages.map((page, i) => withNumber(page, kit.words.page(i + 1, pages.length), kit));
}

function contents(body: readonly Page[], before: number, { words, setting }: PacketKit): readonly Flowing[] {
  const rows = body.flatMap(({ anchors = [] }, i) =>
    anchors.map(({ name, title, level }) => [
      { text: `${level === 0 ? '' : '\u00A0\u00A0\u00A0\u00A0'}${title}`, link: name },
      { text: String(before + i + 1), link: name },
    ]),
  );
  if (rows.length === 0) return [];
  return [
    tableFlow(
      {
        heading: words.contents,
        columns: [
          { title: '', grows: true },
          { title: words.contentsPage, align: 'end' },
        ],
        rows,
      },
      setting,
    ),
  ];
}

/** A page with a text at its left foot, beside where its number will stand. */
export function withFoot(page: Page, text: string, { setting }: PacketKit): Page {
  const foot = letter(setting.face, text, [SIDE, BASE], { height: setting.height });
  return { ...page, blocks: [...page.blocks, { alt: null, items: [foot] }] };
}

function withNumber(page: Page, text: string, { setting }: PacketKit): Page {
  const number = letter(setting.face, text, [page.width - SIDE, BASE], {
    height: setting.height,
    align: 'end',
  });
  return { ...page, blocks: [...page.blocks, { alt: null, items: [number] }] };
}
