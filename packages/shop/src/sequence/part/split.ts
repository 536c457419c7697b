import type { Part, PartPanel } from '@tinwright/core';
import { clipPolygon } from '@tinwright/core/internal';

/**
 * A part in several: what is left of it without some panels and all that hangs on them, and each of them with a strip of
 * the panel it hung on, to be joined on by. @param lap width of the strip up to the mould line, mm
 */
export function splitOff(part: Part, ids: readonly string[], lap: number): readonly Part[] {
  const own = ids.map((id) => hanging(part, id));
  const rest = part.panels.filter((p) => !own.some((s) => s.has(p.id)));
  return [
    { ...part, panels: rest },
    ...own.map((s): Part => {
      const panels = part.panels.filter((p) => s.has(p.id));
      return { ...part, panels: [stripFor(part, panels[0] as PartPanel, lap), ...panels] };
    }),
  ];
}

/** A panel and all that hangs on it: parents come before what hangs on them. */
function hanging({ panels }: Part, id: string): ReadonlySet<string> {
  const own = new Set([id]);
  for (const p of panels) if (p.hang !== null && own.has(p.hang.bend.parent)) own.add(p.id);
  return own;
}

/** Of the panel that another hangs on, what lies beside the line. */
function stripFor({ panels }: Part, { hang }: PartPanel, lap: number): PartPanel {
  if (hang === null) throw new Error('the first panel hangs on nothing');
  const parent = panels.find((p) => p.id === hang.bend.parent) as PartPanel;
  const { origin, y } = hang.hinge.frame;
  const shape = clipPolygon(
    parent.shape.map((e) => e.from),
    y,
    y[0] * origin[0] + y[1] * origin[1] - lap,
  );
  const names = new Map(parent.shape.map((e) => [e.from.join(), e.name]));
  return {
    ...parent,
    hang: null,
    shape: shape.map((from) => ({ name: names.get(from.join()) ?? 'cut', from })),
    holes: [],
    cutouts: [],
    scribes: [],
    marks: [],
  };
}
