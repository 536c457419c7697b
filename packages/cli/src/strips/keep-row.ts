import { plainNumber, stripOf } from '@tinwright/core/internal';
import type { Shop, StripRow } from '@tinwright/shop';
import { type Host, many } from '../host/console.js';
import { EXIT, type ExitCode, refuse, writing } from '../host/failure.js';
import { openShop } from '../open/open-shop.js';
import { givenText } from '../print/size-text.js';
import { rowData, withRow } from '../print/strip-row-text.js';

/** A row to keep: `named` when its name was given, `replace` when it may take the place of one that is more certain. */
export interface AskedRow {
  readonly row: StripRow;
  readonly named: boolean;
  readonly replace: boolean;
}

/** The row as it was kept, and the one whose place it took. */
export interface Kept {
  readonly row: StripRow;
  readonly replaced: StripRow | null;
}

/** `"coil 7" (K 0.378 ± 0.021 of 5 strips)` */
export const rowText = (row: StripRow): string => `${JSON.stringify(row.name)} (${certainty(row)})`;

/** An uncertainty of 0 was not stated. */
const certainty = ({ k, kError, strips }: StripRow) =>
  `K ${plainNumber(k, 3)}${kError > 0 ? ` ± ${plainNumber(kError, 3)}` : ''} of ${many(strips, 'strip')}`;

/**
 * Put a row in a shop file: in the place of the one of its metal, thickness and radius, under whose name it goes on
 * when it has none of its own, or behind the others. One that is less certain is refused unless that was asked for.
 */
export async function keepRow(
  host: Host,
  file: string,
  asked: AskedRow,
  json: boolean,
): Promise<Kept | { readonly exit: ExitCode }> {
  const opened = await openShop(host, file, json);
  if ('exit' in opened) return opened;
  const { changeFile } = await import('../write/files.js');
  let answer: Kept | { readonly exit: ExitCode } = { exit: EXIT.unwritable };
  const exit = await writing(host, json, () =>
    changeFile(file, async (content) => {
      const changed = await changedShop({ host, file, json }, content, asked);
      answer = changed;
      return 'text' in changed ? changed.text : null;
    }),
  );
  return exit === EXIT.done ? answer : { exit };
}

interface Told {
  readonly host: Host;
  readonly file: string;
  readonly json: boolean;
}

/** The shop file with the row in it, as its text is while no other run changes it. */
async function changedShop(
  { host, file, json }: Told,
  content: Uint8Array,
  { row, named, replace }: AskedRow,
): Promise<(Kept & { readonly text: string }) | { readonly exit: ExitCode }> {
  const opened = await openShop(host, file, json);
  if ('exit' in opened) return opened;
  const { units, strips }: Shop = opened.shop;
  const replaced = stripOf(strips, row.material, row) ?? null;
  const kept = replaced === null || named ? row : { ...row, name: replaced.name };
  const no = (message: string) => ({ exit: refuse(host, json, 'usage', 'strip', `${file}: ${message}`) });
  const taken = strips.find((s) => s.name === kept.name && s !== replaced);
  if (taken !== undefined)
    return no(
      `${JSON.stringify(taken.name)} is of ${taken.material}, ${givenText(taken.thickness, units)}, inside radius ${givenText(taken.insideRadius, units)}; give the new strips another name`,
    );
  const worse = replaced === null ? null : lessCertain(kept, replaced);
  if (replaced !== null && worse !== null && !replace)
    return no(`${rowText(replaced)} is there; the new one ${worse}. To take it all the same, give --replace`);
  const at = replaced === null ? null : strips.indexOf(replaced);
  const text = withRow(
    new TextDecoder('utf-8', { ignoreBOM: true }).decode(content),
    rowData(kept, units),
    at,
  );
  return { row: kept, replaced, text };
}

const STEP = 5e-5; // half of the last digit a shop file keeps

/** In what a new row is worse than the one in its place; null when in nothing. */
function lessCertain(fresh: StripRow, old: StripRow): string | null {
  if (old.kError > 0 && fresh.kError > old.kError + STEP) return `is less certain: ${certainty(fresh)}`;
  return old.springback !== null && fresh.springback === null ? 'has no springback' : null;
}
