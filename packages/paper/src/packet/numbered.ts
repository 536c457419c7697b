import type { Flowing } from '../page/flow.js';
import { letter } from '../page/letter.js';
import type { Words } from '../page/page.js';
import type { PendingPage } from '../page/pending.js';
import { tableFlow } from '../page/table.js';
import type { PacketKit } from './kit.js';

/** Name of the cover, to lead to. */
export const COVER = 'cover';

const BASE = 4; // mm from the lower edge of the paper: under frames and tiles
const SIDE = 10; // mm from the left or right edge

/**
 * A cover with a list of contents, and pages behind it, all with their numbers.
 * @param cover lays itself out round the list; as many pages whatever numbers stand in it
 */
export function numbered(
  cover: (contents: readonly Flowing[]) => readonly PendingPage[],
  body: readonly PendingPage[],
  kit: PacketKit,
): readonly PendingPage[] {
  // what stands on the cover itself is known once it is laid out, and on which page once the list is as long as it will be
  const behind = (own: readonly PendingPage[]) => [...own, ...body];
  const laid = [0, 1].reduce((own) => cover(contents(behind(own), kit)), cover(contents(body, kit)));
  const pages = behind(laid);
  return pages.map((page, i) => withNumber(page, kit.words.page(i + 1, pages.length), kit));
}

/** A list of what starts where, the cover left out; none for one line of it. */
function contents(pages: readonly PendingPage[], { words, setting }: PacketKit): readonly Flowing[] {
  const rows = pages.flatMap(({ anchors = [] }, i) =>
    anchors
      .filter((a) => a.name !== COVER)
      .map(({ name, title, level }) => [
        { text: `${level === 0 ? '' : '\u00A0\u00A0\u00A0\u00A0'}${title}`, link: name },
        { text: String(i + 1), link: name },
      ]),
  );
  if (rows.length < 2) return [];
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
export const withFoot = (page: PendingPage, text: string, { setting }: PacketKit): PendingPage =>
  withWords(page, () => letter(setting.face, text, [SIDE, BASE], { height: setting.height }));

const withNumber = (page: PendingPage, text: string, { setting }: PacketKit): PendingPage =>
  withWords(page, () =>
    letter(setting.face, text, [page.width - SIDE, BASE], { height: setting.height, align: 'end' }),
  );

const withWords = (page: PendingPage, words: () => Words): PendingPage => ({
  ...page,
  draw: () => [...page.draw(), { alt: null, items: [words()] }],
});
