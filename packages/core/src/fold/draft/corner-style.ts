/** A flange at a corner, as a corner style sees it. mm; t along the bend from the mould corner, d away from it. */
export interface CornerArm {
  /** Name of the edge of the host panel the flange hangs on; null for a tab at the end of a flange. */
  readonly edge: string | null;
  /** t of the host's corner once both bends are set back. */
  readonly start: number;
  /** d of the flange's own tangent line. */
  readonly tangent: number;
  /** Bent through, degrees, without sign. */
  readonly angle: number;
  readonly thickness: number;
  /** True when the neighbour lies in the same plane or meets this flange along a line, and is kept apart already. */
  readonly meets: boolean;
}

/** Keep the material where t·`t` + d·`d` ≥ `c`. */
export interface ArmCut {
  readonly t: number;
  readonly d: number;
  readonly c: number;
}

/** What is taken out at the root of the notch: a round hole, or a slot into the panel past both tangent lines. */
export type Relief =
  | { readonly kind: 'hole'; readonly diameter: number }
  | { readonly kind: 'slot'; readonly depth: number };

/** How the two flanges at a corner are cut. One value a style, one file a style. */
export interface CornerStyle {
  readonly name: string;
  /** Least distance kept between the two flanges once formed, mm. */
  readonly gap: number;
  /**
   * What keeps the two apart: the plane bisecting them (`mitre`), the tab starting above the host's flange where
   * they share a plane (`butt`), or the style's own cuts (`none`).
   */
  readonly meet: 'mitre' | 'butt' | 'none';
  /** What hangs on the far edges of the two: mitred like walls that close a corner, or free where they run on side by side. */
  readonly beyond?: 'mitre' | 'free';
  /** Ends of the bends: run to the root of the notch, or straight across. */
  readonly root: 'apex' | 'straight';
  readonly relief: Relief | null;
  /** What it cuts from one of the two flanges. */
  readonly cuts: (arm: CornerArm) => readonly ArmCut[];
}
