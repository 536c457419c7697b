import { doubtOf } from '../bending/doubt.js';
import { remark } from '../errors/core-findings.js';
import type { Remark } from '../errors/finding.js';
import { COMPUTED } from '../errors/source.js';
import type { Part, PartPanel } from '../fold/settle/part.js';
import type { Fastened } from './fasten.js';
import { type Fastener, MEET } from './fastener.js';
import type { Seated } from './types.js';

/**
 * Holes of a part joined to itself: both are cut flat where they still meet once it is bent, for all that the bends
 * between them may come out otherwise. Where they might not, the second sheet is only marked and drilled through.
 */
export function drilledLater(fastened: readonly Fastened[], seated: readonly Seated[]): readonly Fastened[] {
  return fastened.map((joint, i) => {
    const { from, to } = seated[i] ?? {};
    if (from === undefined || to === undefined) return joint; // of a bought part
    if (from.piece !== to.piece || from.part.made) return joint;
    const { part } = from.part;
    const missed = joint.fasteners.map((f) => apart(part, f));
    const worst = Math.max(0, ...missed);
    if (worst <= MEET) return joint;
    const drilled = joint.fasteners.some((f) => f.on.every((e) => e.hole !== null));
    if (!drilled) return joint;
    const fasteners = joint.fasteners.map((f, k) => ((missed[k] as number) <= MEET ? f : markedOnly(f)));
    return { ...joint, fasteners, remarks: [...joint.remarks, later(worst)] };
  });
}

const markedOnly = (f: Fastener): Fastener => ({
  ...f,
  on: f.on.map((end, i) => (i === 0 ? end : { ...end, hole: null })),
});

/** How far the two places of a fastener may miss each other once the bends between them are made, mm. */
function apart(part: Part, { on }: Fastener): number {
  const [a, b] = on.map((e) => wayTo(part, e.panel)) as [readonly PartPanel[], readonly PartPanel[]];
  const between = [...a.filter((p) => !b.includes(p)), ...b.filter((p) => !a.includes(p))];
  return between.reduce((sum, { hang }) => {
    if (hang === null) return sum;
    const { insideRadius, angle, terms } = hang.bend;
    const input = { thickness: part.sheet.thickness, insideRadius, angle: Math.abs(angle) };
    return sum + doubtOf(part.sheet.rule, input, terms.allowance);
  }, 0);
}

/** A panel and those it hangs on. */
function wayTo({ panels }: Part, id: string): readonly PartPanel[] {
  const panel = panels.find((p) => p.id === id) as PartPanel;
  return panel.hang === null ? [panel] : [panel, ...wayTo({ panels } as Part, panel.hang.bend.parent)];
}

const later = (worst: number): Remark =>
  remark('drill-after-bending', 'note', {
    value: worst,
    limit: MEET,
    unit: 'mm',
    values: {},
    source: COMPUTED,
  });
