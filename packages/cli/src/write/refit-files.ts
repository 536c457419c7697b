import type { PartPlan, Refit } from '@tinwright/core';
import type { OutFile, Wanted } from '@tinwright/files';
import type { OwnList, OwnLists } from './files.js';
import { otherJobIn, refuseOtherJob } from './one-job.js';

type Entry = Readonly<Record<string, unknown>>;

/** What was asked for: where to, in which form of DXF. */
export interface RefitWanted {
  readonly out: string;
  readonly dxf: Wanted['dxf'];
}

/**
 * The files of the changed parts. Where a set of the job stands already, its manifest stays whole: parts that are as
 * they were keep their files, and what the set had besides cut files is made anew for the others. Parts of an earlier
 * refit are brought up to date also where none has to be cut anew; null where nothing is to be written.
 * @throws WriteError where the set of another job stands in the way of changed parts
 */
export async function refitFiles(
  { after, changed }: Refit,
  { out, dxf }: RefitWanted,
  lists: OwnLists,
): Promise<readonly OutFile[] | null> {
  const place = { out, list: 'job.json', of: 'some parts' } as const;
  const standing = lists.get('job.json');
  const none = changed.length === 0;
  if (none && (standing === undefined || otherJobIn(place, lists, after) !== null)) return null;
  refuseOtherJob(place, lists, after);
  const { jobFiles } = await import('@tinwright/files');
  if (standing === undefined) return jobFiles({ ...after, parts: changed, assembly: null }, { dxf });
  const were = new Map(entries(standing.data).map((e) => [String(e.name), e]));
  const parts = after.parts.filter((p) => changed.includes(p) || were.has(p.name));
  const whole = parts.length === after.parts.length;
  const had = (folder: string) => [...standing.files].some((f) => f.startsWith(`${folder}/`));
  const wanted = { dxf, pictures: had('pictures'), views: had('views') };
  const files = jobFiles({ ...after, parts, assembly: whole ? after.assembly : null }, wanted);
  const manifest = JSON.parse(String(files.at(-1)?.content)) as Entry;
  const same = (p: PartPlan) =>
    !changed.includes(p) && sameEntry(entryOf(manifest, p.name), were.get(p.name));
  const kept = parts.filter(same);
  if (kept.length === parts.length) return null;
  const theirs = jobFiles({ ...after, parts: kept, assembly: null }, wanted);
  const stay = new Set(theirs.map((f) => f.path).filter((f) => f !== 'job.json' && standing.files.has(f)));
  const steps = stepsOf(standing, kept);
  const { assembly: _, ...old } = standing.data;
  const list = {
    ...old,
    ...manifest,
    parts: entries(manifest).map((e) => (kept.some((p) => p.name === e.name) ? were.get(String(e.name)) : e)),
    files: [...(manifest.files as readonly string[]), ...steps],
  };
  return [
    ...files.slice(0, -1).filter((f) => !stay.has(f.path)),
    { path: 'job.json', content: `${JSON.stringify(list, null, 2)}\n` },
  ];
}

const entries = (data: Entry): readonly Entry[] =>
  Array.isArray(data.parts) ? (data.parts as readonly Entry[]) : [];
const entryOf = (data: Entry, name: string) => entries(data).find((e) => e.name === name);

/** True for entries of one pattern; what a shop adds is of the job as it was. */
function sameEntry(a: Entry | undefined, b: Entry | undefined): boolean {
  const text = ({ sequence: _, ...rest }: Entry) => JSON.stringify(rest);
  return a !== undefined && b !== undefined && text(a) === text(b);
}

/** Pictures of the bends of parts that stay. */
const stepsOf = (standing: OwnList, kept: readonly PartPlan[]): readonly string[] =>
  [...standing.files].filter((f) => kept.some((p) => new RegExp(`^steps/${p.name}-\\d+\\.svg$`).test(f)));
