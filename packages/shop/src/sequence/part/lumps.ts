import type { Vec3 } from '@tinwright/core';
import { bendAxis, homePose, place3, radians } from '@tinwright/core/internal';
import { type FoldTree, type Stage, type TreePanel, turnAt } from './fold-tree.js';

/** What of a part can be in the way: a panel, or the bent material of a bend. */
export interface BentLump {
  readonly kind: 'panel' | 'bend';
  /** The panel, or the panel that the bend folds. */
  readonly panel: number;
}

/** A convex solid by its corners, in the frame of a panel. mm */
export type Corners = readonly Vec3[];

/** All lumps of a part: its panels, then its bends. */
export function lumpsOf({ panels }: FoldTree): readonly BentLump[] {
  const bends = panels.flatMap((p, panel): readonly BentLump[] =>
    p.bend === null ? [] : [{ kind: 'bend', panel }],
  );
  return [...panels.map((_, panel): BentLump => ({ kind: 'panel', panel })), ...bends];
}

/** The panel in whose frame a lump is told: its own, or for a bend the parent's. */
export function homeOf({ panels }: FoldTree, { kind, panel }: BentLump): number {
  return kind === 'panel' ? panel : (panels[panel] as TreePanel).parent;
}

/** Convex solids that make up a lump; a bend not yet made has none. */
export function solidsOf(tree: FoldTree, { kind, panel }: BentLump, stage: Stage): readonly Corners[] {
  const it = tree.panels[panel] as TreePanel;
  if (kind === 'panel')
    return it.pieces.map((piece) =>
      [0, tree.thickness].flatMap((z) => piece.map(([x, y]): Vec3 => [x, y, z])),
    );
  const turn = it.bend === null ? null : turnAt(tree, it.bend, stage);
  if (it.bend === null || turn === null) return [];
  const axis = bendAxis(homePose(), it.bend.hinge, turn, tree.thickness);
  const sweep = radians(Math.abs(turn.angle));
  const count = Math.max(1, Math.ceil(sweep / QUARTER - 1e-9));
  return Array.from({ length: count }, (_, i): Corners => {
    const [from, to] = [(sweep * i) / count, (sweep * (i + 1)) / count];
    const middle = (from + to) / 2;
    // the outside by its tangents, so that no bent material lies outside of the solid
    const out = turn.insideRadius + tree.thickness;
    const apex = out / Math.cos((to - from) / 2);
    const ring: readonly (readonly [number, number])[] = [
      [out, from],
      [apex, middle],
      [out, to],
      [turn.insideRadius, from],
      [turn.insideRadius, to],
    ];
    return ring.flatMap(([r, phi]) =>
      (it.bend?.ends ?? []).map((x) => place3(axis, [x, r * Math.cos(phi), r * Math.sin(phi)])),
    );
  });
}

const QUARTER = Math.PI / 2;
