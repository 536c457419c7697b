import type { PartPlan, Refit } from '@tinwright/core';
import { plainNumber } from '@tinwright/core/internal';
import type { OutFile, Wanted } from '@tinwright/files';
import { WriteError } from '../host/failure.js';
import type { OwnList, OwnLists } from './files.js';
import type { Inputs } from './inputs.js';
import { refuseJobSet } from './job-set.js';
import { otherJobIn } from './one-job.js';

type Entry = Readonly<Record<string, unknown>>;

/** What was asked for: where to, in which form of DXF. */
export interface RefitWanted {
  readonly out: string;
  readonly dxf: Wanted['dxf'];
  readonly inputs: Inputs;
}

/** What is written, and what somebody who knows the folder has to be told of it. */
export interface RefitSet {
  readonly files: readonly OutFile[];
  /** Parts that need not be cut anew for what was measured, and stood there at other sizes. */
  readonly again: readonly string[];
  /** Files of the set that were of the sizes before, and go. */
  readonly gone: readonly string[];
}

/**
 * The files of the changed parts. Where a set of the job stands already, its manifest stays whole: parts that are as
 * they were keep their files, pictures and views are made anew for the others. What is of the sizes before and takes
 * more to be made, a cut list and bends of a shop, goes. Parts of an earlier refit are brought up to date also where
 * none has to be cut anew; null where nothing is to be written.
 * @throws WriteError where the set of another job stands in the way of changed parts, or one that was fitted to a
 * measure which this one does not have
 */
export async function refitFiles(
  { after, changed }: Refit,
  { out, dxf, inputs }: RefitWanted,
  lists: OwnLists,
): Promise<RefitSet | null> {
  const place = { out, list: 'job.json', of: 'some parts' } as const;
  const standing = lists.get('job.json');
  const none = changed.length === 0;
  if (none && (standing === undefined || otherJobIn(place, lists, after) !== null)) return null;
  await refuseJobSet({ ...place, plan: after, inputs }, lists);
  const [{ jobFiles, TABLE_STYLE }, { filesToMake, madeFile }] = await Promise.all([
    import('@tinwright/files'),
    import('@tinwright/files/internal'),
  ]);
  if (standing === undefined) {
    const files = jobFiles({ ...after, parts: changed, assembly: null }, { dxf });
    return { files, again: [], gone: [] };
  }
  refuseLostMeasure(out, standing, after.parts);
  const were = new Map(entries(standing.data).map((e) => [String(e.name), e]));
  const parts = after.parts.filter((p) => changed.includes(p) || were.has(p.name));
  const whole = parts.length === after.parts.length;
  const had = (folder: string) => [...standing.files].some((f) => f.startsWith(`${folder}/`));
  const style = { ...TABLE_STYLE, names: namesIn(standing) };
  const wanted = { dxf, style, pictures: had('pictures'), views: had('views') };
  const files = filesToMake({ ...after, parts, assembly: whole ? after.assembly : null }, wanted).map(
    madeFile,
  );
  const manifest = JSON.parse(String(files.at(-1)?.content)) as Entry;
  const same = (p: PartPlan) =>
    !changed.includes(p) && sameEntry(entryOf(manifest, p.name), were.get(p.name));
  const kept = parts.filter(same);
  if (kept.length === parts.length) return null;
  const theirs = filesToMake({ ...after, parts: kept, assembly: null }, wanted);
  const stay = new Set(theirs.map((f) => f.path).filter((f) => f !== 'job.json' && standing.files.has(f)));
  const named = [...(manifest.files as readonly string[]), ...stepsOf(standing, kept)];
  const list = {
    ...manifest,
    parts: entries(manifest).map((e) => (kept.some((p) => p.name === e.name) ? were.get(String(e.name)) : e)),
    ...shopOf(standing, kept),
    files: named,
  };
  return {
    files: [
      ...files.slice(0, -1).filter((f) => !stay.has(f.path)),
      { path: 'job.json', content: `${JSON.stringify(list, null, 2)}\n` },
    ],
    again: parts.filter((p) => !changed.includes(p) && !kept.includes(p)).map((p) => p.name),
    gone: [...standing.files].filter((f) => f !== 'job.json' && !named.includes(f)),
  };
}

const entries = (data: Entry): readonly Entry[] =>
  Array.isArray(data.parts) ? (data.parts as readonly Entry[]) : [];
const entryOf = (data: Entry, name: string) => entries(data).find((e) => e.name === name);

/**
 * What a set was fitted to, and this refit was not told, would be undone in it.
 * @throws WriteError that says how to give it again
 */
function refuseLostMeasure(out: string, { data }: OwnList, parts: readonly PartPlan[]): void {
  const known = parts.flatMap((p) => p.measured.map(({ size }) => `${p.name}.${size}`));
  const lost = Object.entries((data.measured ?? {}) as Entry).filter(([size]) => !known.includes(size));
  if (lost.length === 0) return;
  const options = lost.map(([size, mm]) => `--measured "${size}=${plainNumber(Number(mm), 4)} mm"`);
  throw new WriteError(
    out,
    `holds parts fitted to what was measured before: give that too, ${options.join(' ')}, or choose another folder with --out. Nothing was changed`,
  );
}

/** What cut files of a set are called. */
const namesIn = ({ data, files }: OwnList): 'part' | 'full' =>
  entries(data).every(({ name }) => files.has(`parts/${name}.dxf`)) ? 'part' : 'full';

/** True for entries of one pattern; what a shop adds is of the job as it was. */
function sameEntry(a: Entry | undefined, b: Entry | undefined): boolean {
  const text = ({ sequence: _, ...rest }: Entry) => JSON.stringify(rest);
  return a !== undefined && b !== undefined && text(a) === text(b);
}

/** The shop that bent the parts that stay; how all of them are set up together is of the parts before. */
const shopOf = ({ data }: OwnList, kept: readonly PartPlan[]): Entry =>
  kept.some((p) => entryOf(data, p.name)?.sequence !== undefined) ? { shop: data.shop } : {};

/** Pictures of the bends of parts that stay. */
const stepsOf = (standing: OwnList, kept: readonly PartPlan[]): readonly string[] =>
  [...standing.files].filter((f) => kept.some((p) => new RegExp(`^steps/${p.name}-\\d+\\.svg$`).test(f)));
