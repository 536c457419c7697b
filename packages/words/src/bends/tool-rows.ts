import type { BendStep, ToolGroup } from '@tinwright/shop';

/** Where a row of tools stands, told from what can be touched: the end of the bend that its own end is nearer to. mm */
export interface RowPlace {
  readonly from: 'left' | 'right' | 'both';
  /** How far the end of the row lies inside that end of the bend; negative where it stands out. */
  readonly inside: number;
  /** It stands out past the other end too. */
  readonly onward: boolean;
}

/** Pieces of tool beside each other, from the left of who stands before the machine. mm */
export interface ToolRow extends Pick<ToolGroup, 'pieces' | 'gap'>, RowPlace {
  /** Left edge of every piece and the right one of the last, from the left end of the bend. */
  readonly edges: readonly number[];
}

const ALIKE = 0.1; // mm between both ends that no rule shows

/** The rows of tools of a step from the left; none where they may stand anywhere. */
export const toolRows = ({ tools, length }: Pick<BendStep, 'tools' | 'length'>): readonly ToolRow[] =>
  (tools ?? []).toSorted((a, b) => a.from - b.from).map((group) => rowOf(group, length));

function rowOf({ pieces, from, gap }: ToolGroup, length: number): ToolRow {
  let right = from - gap;
  const edges = [
    from,
    ...pieces.map((wide, i) => {
      right += gap + wide;
      return i < pieces.length - 1 ? right + gap : right;
    }),
  ];
  const [left, other] = [from, length - right];
  const place: RowPlace =
    Math.abs(left - other) < ALIKE
      ? { from: 'both', inside: left, onward: false }
      : Math.abs(left) < Math.abs(other)
        ? { from: 'left', inside: left, onward: other < -ALIKE }
        : { from: 'right', inside: other, onward: left < -ALIKE };
  return { pieces, gap, edges, ...place };
}
