import type { Scene } from './scene.js';

/** A piece of tool where it stands along the line, from the operator's left. mm */
export interface MountedPiece {
  readonly width: number;
  readonly from: number;
  readonly to: number;
}

/** Groups of pieces from the operator's left to his right; null where tools stand along the whole line. */
export function mountedPieces({
  step,
  state,
}: Pick<Scene, 'step' | 'state'>): readonly (readonly MountedPiece[])[] | null {
  if (step.tools === null || state.tools === null) return null;
  const stands = state.tools;
  return step.tools
    .map(({ pieces, gap }, i) => {
      let [at] = stands[i] as readonly [number, number];
      return pieces.map((width): MountedPiece => {
        const from = at;
        at += width + gap;
        return { width, from, to: from + width };
      });
    })
    .toSorted((a, b) => (a[0]?.from ?? 0) - (b[0]?.from ?? 0));
}
