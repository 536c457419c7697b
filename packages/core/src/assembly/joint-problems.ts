import { suggestion } from '../errors/nearest.js';
import type { Problem } from '../errors/problem.js';
import { quoted } from '../errors/quote.js';
import { namedSite, siteNames } from './named-site.js';
import { type AssemblyPart, type JointEnd, type JointSpec, pieceNames } from './types.js';

/** What is wrong with the ends of joints: unknown pieces and sites, a piece with itself, sites claimed twice. */
export function jointProblems(
  parts: readonly AssemblyPart[],
  joints: readonly JointSpec[],
): readonly Problem[] {
  return [...joints.flatMap((j) => endProblems(parts, j)), ...claimedTwice(joints)];
}

function endProblems(parts: readonly AssemblyPart[], joint: JointSpec): readonly Problem[] {
  const { from, to, path } = joint;
  const ends = (['from', 'to'] as const).flatMap((end) => oneEnd(parts, joint[end], [...path, end]));
  if (ends.length > 0) return ends;
  if (from.piece === to.piece && from.site === to.site)
    return [
      {
        code: 'joint-self',
        path,
        message: `${from.piece}.${from.site} is joined to itself`,
        fix: 'Join two different pieces, or two sites of one',
      },
    ];
  return [];
}

function oneEnd(
  parts: readonly AssemblyPart[],
  { piece, site }: JointEnd,
  path: Problem['path'],
): readonly Problem[] {
  const part = parts.find((p) => pieceNames(p).includes(piece));
  if (part === undefined) return [unknownPiece(parts, piece, path)];
  if (namedSite(part.part, site) !== null) return [];
  const names = siteNames(part.part);
  const fix = names.length === 0 ? 'It has no sites as it is' : suggestion(site, names);
  return [{ code: 'site-unknown', path, message: `${piece} has no site ${quoted(site)}`, fix }];
}

function unknownPiece(parts: readonly AssemblyPart[], piece: string, path: Problem['path']): Problem {
  const whole = parts.find((p) => p.name === piece);
  if (whole !== undefined) {
    const message = `there are ${whole.quantity} pieces of ${quoted(piece)}`;
    return {
      code: 'piece-which',
      path,
      message,
      fix: `Say which: ${pieceNames(whole).slice(0, 4).join(', ')}`,
    };
  }
  const numbered = parts.find(
    (p) => piece.startsWith(`${p.name}-`) && /^\d+$/.test(piece.slice(p.name.length + 1)),
  );
  if (numbered !== undefined) {
    const many =
      numbered.quantity === 1
        ? `is one piece of ${quoted(numbered.name)}, called just that`
        : `are ${numbered.quantity} pieces of ${quoted(numbered.name)}`;
    return {
      code: 'piece-unknown',
      path,
      message: `${quoted(piece)} given, there ${many}`,
      fix: 'Raise its quantity, or join one that is there',
    };
  }
  return {
    code: 'piece-unknown',
    path,
    message: `there is no part ${quoted(piece)}`,
    fix: suggestion(piece, parts.flatMap(pieceNames)),
  };
}

function claimedTwice(joints: readonly JointSpec[]): readonly Problem[] {
  // a part joined to itself leaves its sites free, and so do places along a site
  const taking = joints.filter((j) => j.from.piece !== j.to.piece);
  const ends = taking.flatMap((j) =>
    (j.places === null ? [j.from, j.to] : [j.to]).map((e) => ({ joint: j, key: `${e.piece}.${e.site}` })),
  );
  return ends.flatMap(({ joint, key }, i) => {
    const first = ends.findIndex((e) => e.key === key);
    if (first === i || ends[first]?.joint === joint) return [];
    const message = `${key} is taken by the joint "${ends[first]?.joint.name}"`;
    return [{ code: 'site-twice', path: joint.path, message, fix: 'Give every joint a site of its own' }];
  });
}
