import { remark } from '../errors/core-findings.js';
import type { Finding } from '../errors/finding.js';
import { cite } from '../errors/source.js';
import type { Mark } from '../fold/draft/tree.js';
import type { Lump } from '../fold/formed/lump.js';
import type { Part } from '../fold/settle/part.js';
import type { Loop } from '../plane/loop.js';
import { distance } from '../plane/point.js';
import type { Pieces } from '../units/pieces.js';
import type { Bought, Fitted, JobHardware } from './bought.js';
import { asCut } from './carry-bought.js';
import { drilledLater } from './drilled-later.js';
import { endsInWay } from './ends-in-way.js';
import { type Fastened, fasten } from './fasten.js';
import { type Fastener, type FastenerEnd, SAME_PLACE } from './fastener.js';
import { deepestPair, type FitRow, fitsOf, lumpsWhere } from './fit.js';
import { type StandingSheet, standingSheets } from './layers.js';
import { placePieces } from './place.js';
import { withRoom } from './room.js';
import { spelledOut } from './spelled-out.js';
import { type AssemblyPart, type JointSpec, type Placed, pieceNames, type Seated } from './types.js';

/** An object put together: where its pieces stand, how they are fastened, how they fit. */
export interface Assembly {
  readonly placed: readonly Placed[];
  /** Bought parts on them. */
  readonly bought: readonly Bought[];
  readonly seated: readonly Seated[];
  readonly fasteners: readonly Fastener[];
  readonly fits: readonly FitRow[];
  readonly findings: readonly Finding[];
}

/**
 * Put a job's parts together by its joints: place every piece, stand bought parts on them, spread fasteners, measure the
 * fit, open what is hinged.
 * @param cut fasteners as they were when the parts that are made were cut
 * @throws JobError for joints that cannot be
 */
export function* assemble(
  parts: readonly AssemblyPart[],
  job: Joined,
  cut: readonly Fastener[] = [],
): Pieces<Assembly> {
  const { joints, hardware } = job;
  const { placed, seated, loose, open, sheets, bought, fastened: fitted, bodies } = standing(parts, job);
  const wanted = [...(yield* fastenAll(seated, sheets, cut)), ...asCut(fitted, cut, placed)];
  const fastened = drilledLater(withRoom(wanted, placed), seated);
  const lumps = lumpsWhere(bodies);
  const { rows: fits, findings } = fitsOf(seated, bodies, lumps, open);
  const fasteners = fastened.flatMap((f) => f.fasteners);
  return {
    placed,
    bought,
    seated,
    fasteners,
    fits,
    findings: [
      ...open.map((o) => o.finding),
      ...findings,
      ...endsInWay(fasteners, seated, placed, lumps),
      ...(hardware?.tools.swing(bought, placed, seated) ?? []),
      ...fastenerFindings(fastened.map((f) => withoutTurn(f, fasteners))),
      ...(joints.length === 0 ? [] : looseFindings(parts, loose)),
      ...unevenFindings(parts, fasteners),
    ],
  };
}

/** True where two pieces of an object stand in one place: nothing is fastened or measured for it. @throws as `assemble` */
export function isClash(parts: readonly AssemblyPart[], job: Joined, pieces: readonly string[]): boolean {
  const bodies = standing(parts, job).bodies.filter((p) => pieces.includes(p.piece));
  const [a, b] = pieces.map(lumpsWhere(bodies)) as [readonly Lump[], readonly Lump[]];
  return deepestPair(a, b) !== null;
}

/** What a job joins its parts by. */
interface Joined {
  readonly joints: readonly JointSpec[];
  readonly hardware?: JobHardware | null;
}

/** Everything where it stands, before it is fastened. */
function standing(parts: readonly AssemblyPart[], { joints, hardware }: Joined) {
  const carries = new Set((hardware?.rows ?? []).flatMap(({ on, and }) => [on.piece, (and ?? on).piece]));
  const where = placePieces(parts, spelledOut(parts, joints), carries);
  const { placed, seated } = where;
  const sheets = standingSheets(placed.filter(({ piece }) => carries.has(piece) || isHeld(piece, seated)));
  const fit = hardware?.tools.fit(hardware.rows, placed, sheets) ?? NOTHING;
  // a clash is told of a part of the job, where there is one
  return { ...where, ...fit, sheets, bodies: [...fit.bought, ...placed] };
}

/** True for a piece that some fastener holds: what is only set in place is in no stack of sheets. */
const isHeld = (piece: string, seated: readonly Seated[]): boolean =>
  seated.some(({ joint, from, to }) => joint.by !== null && (from.piece === piece || to.piece === piece));

const NOTHING: Fitted = { bought: [], fastened: [] };

/** Joint after joint: each keeps its distances to the fasteners of those before it. */
function* fastenAll(
  seated: readonly Seated[],
  sheets: readonly StandingSheet[],
  cut: readonly Fastener[],
): Pieces<readonly Fastened[]> {
  const done: Fastened[] = [];
  const before: Fastener[] = [];
  for (const s of seated) {
    const fastened = fasten(s, sheets, { cut, before });
    done.push(fastened);
    before.push(...fastened.fasteners);
    yield;
  }
  return done;
}

/** The same object with its parts as they are once their fasteners are marked and their holes cut. */
export function withParts(assembly: Assembly, parts: readonly AssemblyPart[]): Assembly {
  const fresh = new Map(
    assembly.placed.map((p) => [
      p.piece,
      { ...p, part: parts.find((a) => a.name === p.part.name) ?? p.part },
    ]),
  );
  const of = ({ piece }: Placed) => fresh.get(piece) as Placed;
  return {
    ...assembly,
    placed: assembly.placed.map(of),
    seated: assembly.seated.map((s) => ({ ...s, from: of(s.from), to: of(s.to) })),
  };
}

/** Without the remark that its parts turn about its only fastener, where another joint holds the same two pieces. */
function withoutTurn(joint: Fastened, all: readonly Fastener[]): Fastened {
  if (!joint.remarks.some((r) => r.code === 'joint-turns')) return joint;
  const [own] = joint.fasteners;
  const pair = own?.on.map((e) => e.piece) ?? [];
  const held = all.filter((f) => pair.every((p) => f.on.some((e) => e.piece === p)));
  return held.length <= 1
    ? joint
    : { ...joint, remarks: joint.remarks.filter((r) => r.code !== 'joint-turns') };
}

/** Remarks on joints as findings; what holds for several joints is said once. */
function fastenerFindings(fastened: readonly Fastened[]): readonly Finding[] {
  const all = fastened.flatMap(({ joint, part, remarks }) =>
    remarks.map((remark) => ({ joint, part, remark })),
  );
  // what differs by rounding only is the same
  const round = (_: string, v: unknown) => (typeof v === 'number' ? Math.round(v * 100) / 100 : v);
  const keys = all.map(({ remark: r }) => JSON.stringify([r.code, r.values, r.value, r.limit], round));
  return [...new Set(keys)].map((key) => {
    const group = all.filter((_, i) => keys[i] === key);
    const { remark: first, part } = group[0] as (typeof all)[number];
    const joints = group.map((g) => g.joint);
    return {
      ...first,
      where: { ...first.where, joints },
      part: group.every((g) => g.part === part) ? part : null,
    };
  });
}

/** One remark a part, however many of its pieces are joined to nothing. */
function looseFindings(parts: readonly AssemblyPart[], loose: readonly string[]): readonly Finding[] {
  const all = new Set(loose);
  return parts.flatMap((part) => {
    const [piece, ...others] = pieceNames(part).filter((name) => all.has(name));
    if (piece === undefined) return [];
    const values = { piece, more: others.length };
    return [{ part: part.name, ...remark('piece-loose', 'warning', { values, source: [cite('joints')] }) }];
  });
}

/** The marks all fasteners leave on a part, each place once, in the order of the fasteners. */
export const marksOf = (
  part: Pick<AssemblyPart, 'name' | 'quantity'>,
  fasteners: readonly Fastener[],
): readonly PanelMark[] => marksOn(pieceNames(part), fasteners);

function marksOn(pieces: readonly string[], fasteners: readonly Fastener[]): readonly PanelMark[] {
  const found: PanelMark[] = [];
  for (const { kind, joint, on } of fasteners)
    for (const end of on.filter((e) => pieces.includes(e.piece)))
      if (!found.some((m) => sameMark(m, end, kind)))
        found.push({
          kind,
          at: end.at,
          joint,
          hole: end.hole,
          panel: end.panel,
          ...(end.opening && { opening: end.opening }),
        });
  return found;
}

type PanelMark = Mark & { readonly panel: string; readonly opening?: Loop };

/** True when a mark is the one a fastener leaves there. */
export const sameMark = (mark: PanelMark, { panel, at, hole }: FastenerEnd, kind: string): boolean =>
  mark.kind === kind && mark.panel === panel && mark.hole === hole && distance(mark.at, at) < SAME_PLACE;

/** The part with marks added on its panels. */
export function withMarks(part: Part, marks: readonly PanelMark[]): Part {
  if (marks.length === 0) return part;
  const panels = part.panels.map((p) => {
    const own = marks.filter((m) => m.panel === p.id);
    if (own.length === 0) return p;
    const shaped = own.flatMap(({ opening }) => (opening === undefined ? [] : [{ loop: opening, by: [] }]));
    const plain = own.map(({ panel: _, opening: __, ...m }) => m);
    return { ...p, marks: [...p.marks, ...plain], cutouts: [...p.cutouts, ...shaped] };
  });
  return { ...part, panels };
}

/** Pieces of one part share one pattern: where their fasteners differ it carries the marks of all. */
function unevenFindings(parts: readonly AssemblyPart[], fasteners: readonly Fastener[]): readonly Finding[] {
  return parts.flatMap((part): readonly Finding[] => {
    // marks, not fasteners: one that joins a piece to itself leaves two on it
    const most = Math.max(...pieceNames(part).map((piece) => marksOn([piece], fasteners).length));
    const marks = marksOf(part, fasteners).length;
    if (part.quantity === 1 || marks === most) return [];
    return [
      {
        part: part.name,
        ...remark('pieces-differ', 'warning', {
          value: marks,
          limit: most,
          values: { quantity: part.quantity },
          source: [cite('joints')],
        }),
      },
    ];
  });
}
