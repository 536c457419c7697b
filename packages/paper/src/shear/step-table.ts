import type { ShearPlan, ShearStep } from '@tinwright/cutting';
import type { ShearWords } from '@tinwright/words/internal';
import type { Dims } from '../page/dims.js';
import type { Flowing } from '../page/flow.js';
import { type TypeSetting, tableFlow } from '../page/table.js';
import { pieceText } from './names.js';

/** Which side of a diagram a piece is. */
function sideOf(step: ShearStep, which: 'low' | 'high', { sides }: ShearWords): string {
  if (step.axis === 'x') return which === 'low' ? sides.left : sides.right;
  return which === 'low' ? sides.lower : sides.upper;
}

/** Distance to set or mark, or a dash where the stop stays. */
function stopText(step: ShearStep, before: ShearStep | undefined, words: ShearWords, dims: Dims): string {
  if (step.stop === null) return words.marked(dims.text(markOf(step)));
  const stays = before !== undefined && before.stop !== null && Math.abs(before.stop - step.stop) < 0.005;
  return stays ? words.same : dims.text(step.stop);
}

/** From the lower edge of the piece to the line, mm. */
const markOf = ({ axis, at, area }: ShearStep): number => (axis === 'x' ? at - area.x : at - area.y);

/** The cuts of a plan in order: what to set, what comes off, what stays in hand. @param first number of its first sheet */
export function stepTable(
  { steps, settings }: ShearPlan,
  first: number,
  words: ShearWords,
  dims: Dims,
  setting: TypeSetting,
): Flowing {
  const { columns: c } = words;
  return tableFlow(
    {
      heading: words.steps,
      columns: [
        { title: c.cut, align: 'end' },
        { title: c.piece },
        { title: `${c.stop}, ${dims.unit}`, align: 'end' },
        { title: c.behind, grows: true },
        { title: c.front, grows: true },
      ],
      rows: steps.map((step, i) => {
        const front = step.behind === 'low' ? 'high' : 'low';
        const told = (side: 'low' | 'high') =>
          words.side(sideOf(step, side, words), pieceText(step[side], first, words));
        return [
          String(i + 1),
          pieceText(step.piece, first, words),
          stopText(step, steps[i - 1], words, dims),
          told(step.behind),
          told(front),
        ];
      }),
      notes: [words.totals(settings, steps.length), ...words.notes],
    },
    setting,
  );
}
