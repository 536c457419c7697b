import { type Assembly, type PartPlan, type Seated, sizesOf } from '@tinwright/core';
import { siteFrame } from '@tinwright/core/internal';

/** What is measured before a part is cut. mm */
export interface StageMeasure {
  /** Path of the size, `body.seatWidth`; null where the parts have no name for it. */
  readonly size: string | null;
  /** The size of the part that follows it; null where none is near. */
  readonly own: string | null;
  readonly between: readonly [string, string] | null;
  readonly planned: number;
  /** How much smaller the size that follows is, below 0 where it is larger; null where nobody says. */
  readonly play: number | null;
}

/** Parts that are made together, after those before them are put together. */
export interface MakingStage {
  readonly parts: readonly PartPlan[];
  /** By the name of the part. */
  readonly measures: Readonly<Record<string, readonly StageMeasure[]>>;
  readonly joints: readonly Seated[];
}

/**
 * In which order the parts of a job are made: what drops in between walls waits until those stand and are measured, and
 * so does what bridges two pieces that are in place already.
 */
export function stagesOf(parts: readonly PartPlan[], assembly: Assembly | null): readonly MakingStage[] {
  const seated = assembly?.seated ?? [];
  const following = parts.flatMap(followsOf);
  // a part waits for none that follows its own sizes, whichever of them is narrower
  const joined = waitsOf(seated.filter((s) => s.from.piece !== s.to.piece)).filter(
    (w) => !following.some((f) => f.part === w.after && f.after === w.part),
  );
  const met = joined.map((w) => ({ ...w, own: measureOf(w, parts).own }));
  // what is measured where two parts meet needs no second measure for the size that follows it
  const follows = following.filter(
    (f) => !met.some((m) => m.part === f.part && (m.after === f.after || m.own === ownOf(f))),
  );
  const waits = [...joined, ...follows];
  const level = (name: string, seen: readonly string[] = []): number => {
    if (seen.includes(name)) return 0;
    const others = waits.filter((w) => w.part === name).map((w) => 1 + level(w.after, [...seen, name]));
    return Math.max(0, ...others);
  };
  const levels = new Map(parts.map((p) => [p.name, level(p.name)]));
  const at = (name: string) => levels.get(name) ?? 0;
  const count = 1 + Math.max(0, ...levels.values());
  return Array.from({ length: count }, (_, stage): MakingStage => {
    const own = parts.filter((p) => at(p.name) === stage);
    return {
      parts: own,
      measures: Object.fromEntries(
        own.map((p) => [
          p.name,
          unique(waits.filter((w) => w.part === p.name).map((w) => withPlay(measureOf(w, parts), p))),
        ]),
      ),
      joints: seated.filter((s) => Math.max(at(s.from.part.name), at(s.to.part.name)) === stage),
    };
  });
}

interface Wait {
  readonly part: string;
  /** The part it waits for. */
  readonly after: string;
  readonly joints: readonly [Seated] | readonly [Seated, Seated];
  readonly follows?: undefined;
}

/** A part that follows a size of another one. */
interface Follows {
  readonly part: string;
  readonly after: string;
  readonly follows: PartPlan['follows'][number];
  readonly joints: readonly [];
}

const ownOf = ({ part, follows }: Follows): string => `${part}.${follows.own}`;

const followsOf = ({ name, follows }: PartPlan): readonly Follows[] =>
  follows.map((f) => ({ part: name, after: f.of.slice(0, f.of.indexOf('.')), follows: f, joints: [] }));

function waitsOf(seated: readonly Seated[]): readonly Wait[] {
  return [...seated.flatMap(dropsIn), ...bridges(seated)];
}

/** Where a part stands between the walls of another, the narrower one waits. */
function dropsIn(s: Seated): readonly Wait[] {
  const [a, b] = [s.sites[0].width, s.sites[1].width];
  const [from, to] = [s.from.part.name, s.to.part.name];
  if (a === null || b === null || from === to || a === b) return [];
  return [a > b ? { part: to, after: from, joints: [s] } : { part: from, after: to, joints: [s] }];
}

/** A piece joined to two others that hold together without it. */
function bridges(seated: readonly Seated[]): readonly Wait[] {
  const joined: (readonly [string, string])[] = [];
  return seated.flatMap((s): readonly Wait[] => {
    const [a, b] = [s.from.piece, s.to.piece];
    const closes = connected(joined, a, b);
    joined.push([a, b]);
    if (!closes) return [];
    const before = seated.slice(0, seated.indexOf(s));
    const piece = [s.to, s.from].find((p) => before.filter((o) => touches(o, p.piece)).length === 1);
    const first = before.find((o) => piece !== undefined && touches(o, piece.piece));
    if (piece === undefined || first === undefined) return [];
    const [near, far] = [s, first].map((o) => (o.from.piece === piece.piece ? o.to.piece : o.from.piece));
    if (near === far) return []; // stands in one piece, on both its sides
    return [s, first].flatMap((o): readonly Wait[] => {
      const other = o.from.piece === piece.piece ? o.to : o.from;
      return other.part.name === piece.part.name
        ? []
        : [{ part: piece.part.name, after: other.part.name, joints: [first, s] }];
    });
  });
}

const touches = ({ from, to }: Seated, piece: string): boolean => from.piece === piece || to.piece === piece;

function connected(pairs: readonly (readonly [string, string])[], from: string, to: string): boolean {
  const reached = new Set([from]);
  for (let size = 0; size < reached.size; ) {
    size = reached.size;
    for (const [a, b] of pairs) {
      if (reached.has(a)) reached.add(b);
      if (reached.has(b)) reached.add(a);
    }
  }
  return reached.has(to);
}

const NEAR = 1e-6; // mm
const PLAY = 3; // mm that a part is smaller than what it fits into

function measureOf(wait: Wait | Follows, parts: readonly PartPlan[]): StageMeasure {
  if (wait.follows !== undefined) {
    const { of, value, play } = wait.follows;
    return { size: of, own: ownOf(wait), between: null, planned: value, play };
  }
  const { part, joints } = wait;
  const [s, other] = joints;
  if (other === undefined) {
    const wide = s.from.part.name === part ? 1 : 0;
    const holder = wide === 0 ? s.from : s.to;
    const planned = s.sites[wide].width as number;
    const [size, own] = [
      sizeName(holder.part.name, planned, parts, NEAR),
      sizeName(part, planned, parts, PLAY),
    ];
    return { size, own, between: null, planned, play: null };
  }
  const ends = [s, other].map((o) => {
    const own = o.from.part.name === part ? 1 : 0; // the piece that is not the part's
    const placed = own === 0 ? o.from : o.to;
    return { piece: placed.piece, ...siteFrame(placed.part.formed, o.sites[own], placed.pose) };
  });
  const [a, b] = ends as [(typeof ends)[number], (typeof ends)[number]];
  const along = a.normal.reduce(
    (sum, n, k) => sum + n * ((b.origin[k] as number) - (a.origin[k] as number)),
    0,
  );
  const planned = Math.abs(along);
  return {
    size: null,
    own: sizeName(part, planned, parts, PLAY),
    between: [a.piece, b.piece],
    planned,
    play: null,
  };
}

/** With how much smaller the size is than what the job says it follows. */
function withPlay(measure: StageMeasure, { name, follows }: PartPlan): StageMeasure {
  const said = follows.find((f) => `${name}.${f.own}` === measure.own);
  return measure.play !== null || said === undefined ? measure : { ...measure, play: said.play };
}

/** Path of the size of a part that is this large, or less by up to `play`; the nearest. */
function sizeName(name: string, value: number, parts: readonly PartPlan[], play: number): string | null {
  const part = parts.find((p) => p.name === name);
  if (part === undefined) return null;
  const size = sizesOf(part.family, part.params, part.sheet)
    .filter((k) => value - k.value > -NEAR && value - k.value < play)
    .toSorted((a, b) => b.value - a.value)[0];
  return size === undefined ? null : `${name}.${size.name}`;
}

const unique = (list: readonly StageMeasure[]): readonly StageMeasure[] =>
  list.filter((m, i) => list.findIndex((o) => JSON.stringify(o) === JSON.stringify(m)) === i);
