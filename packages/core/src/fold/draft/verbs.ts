import { type HemSpec, hemFold, leastHemLength } from '../../bending/hem.js';
import { type BendInput, type BendRule, type BendTerms, outsideSetback } from '../../bending/rule.js';
import { curlOf, type WiredEdge, wireAllowance } from '../../bending/wired-edge.js';
import { suggestion } from '../../errors/nearest.js';
import { fail, type Path, type Refusal, within } from '../../errors/problem.js';
import type { Point } from '../../plane/point.js';
import { roundOf } from '../../plane/shapes.js';
import { inRange, PLACE, ROOM, SIZE } from '../../schema/in-range.js';
import type { CornerStyle } from './corner-style.js';
import { hingeAt } from './hinge.js';
import { legOf, reaches } from './least.js';
import type { NameOf } from './names.js';
import { nextDraft } from './next-draft.js';
import { edgeIndex } from './outline.js';
import { cornered } from './sound.js';
import type {
  Asked,
  Bend,
  Cutout,
  Draft,
  Edge,
  EdgeFold,
  Hole,
  Mark,
  Measured,
  Outline,
  Panel,
  Seat,
  Site,
  Step,
} from './tree.js';

/** Panel and edge a flange hangs on. */
export type On = readonly [panel: string, edge: string];

/**
 * Start a part with a flat panel; it stays put while the others fold. Its frame is the part's frame.
 * @param by the parameters it gets its extent along x and y from: they are named where it is too small
 */
export function panel<const X extends Path = [], const Y extends Path = []>(
  id: string,
  outline: Outline,
  by?: readonly [x: X, y: Y],
): Step<NameOf<X> | NameOf<Y>> {
  const { by: ways }: Pick<Panel, 'by'> = { by: by ?? [[], []] };
  return (draft) => {
    cornered(id, outline);
    return add(draft, {
      id,
      outline,
      bend: null,
      holes: [],
      slots: [],
      cutouts: [],
      scribes: [],
      marks: [],
      by: ways,
    });
  };
}

/** What everything that hangs on an edge may say of itself. */
export interface Inset<P extends Path = Path> {
  /** Shorter than the edge it hangs on, by so much at the start and the end of its x axis. mm */
  readonly inset?: readonly [number, number];
  /** The parameter its length comes from: it is named where the length cannot be. */
  readonly by?: P;
}

/** Size and bend of a flange. mm, degrees. */
export interface FlangeSpec<P extends Path = Path> extends Inset<P> {
  /** Outside leg: from the mould line (outer tangent above 90°) to the free edge or the next mould line. */
  readonly height: number;
  /** Bent through, positive up. Default 90. */
  readonly angle?: number;
  /** Default: the sheet's. */
  readonly insideRadius?: number;
  /** Its far edge reaches further out, by so much at either end: a wall that leans out grows wider. Default 0. */
  readonly spread?: number;
  /** Its far corners, at the low and the high end of its x, where they are no rectangle's. */
  readonly far?: readonly [Point, Point];
}

/**
 * Fold a flange on an edge, rectangular unless it spreads. Its edges: `near` (the bend), `far`, and the two ends, which are called
 * after the parent's edges beside them (`inner` where that is the parent's own bend).
 */
export function flange<const P extends Path = []>(id: string, on: On, spec: FlangeSpec<P>): Step<NameOf<P>> {
  return hang(id, on, spec, null);
}

/** Fold a hem on an edge, up (over the marked face) or down. `spec.length` is its finished width. */
export function hem<const P extends Path = []>(
  id: string,
  on: On,
  spec: HemSpec & Inset<P>,
  side: 'up' | 'down' = 'up',
): Step<NameOf<P>> {
  const { inset = [0, 0] } = spec;
  const by: Path = spec.by ?? [];
  return (draft) => {
    const { thickness } = draft.sheet;
    const refused = hemProblem(draft, on[0], spec, by);
    // one that is refused is folded at its least, so that whatever else is wrong is found too
    const fits = refused === null ? spec : { ...spec, length: leastHemLength(spec, thickness) };
    const { angle, insideRadius, leg } = hemFold(fits, thickness);
    const turn = side === 'up' ? angle : -angle;
    const fold = { height: leg, angle: turn, insideRadius, by, inset };
    const hung = hang(id, on, fold, { kind: spec.type })(draft);
    return refused === null ? hung : nextDraft(hung, { refused: [...hung.refused, refused] });
  };
}

/**
 * Roll an edge round a wire, down (to the outside of a wall) or up. The wall ends at the roll's outer tangent. Laid
 * out without compensation it ends where the allowance starts, and the edge is only turned over.
 */
export function wired(
  id: string,
  on: On,
  { inset = [0, 0], kind = 'wired', ...edge }: WiredEdge & Inset & { readonly kind?: 'wired' | 'curl' },
  side: 'up' | 'down' = 'down',
): Step {
  return (draft) => {
    const { thickness, rule } = draft.sheet;
    inRange(wireAllowance(edge), SIZE, () => `panel "${id}": metal of the rolled edge`);
    const { angle, insideRadius, lip, terms } = curlOf(edge, thickness);
    const sign = side === 'up' ? 1 : -1;
    const roll = { height: terms.setback + lip, angle: sign * angle, insideRadius, inset };
    const turned = { height: wireAllowance(edge), angle: sign * 180, insideRadius, inset };
    return rule.compensates
      ? hang(id, on, roll, { kind, terms })(draft)
      : hang(id, on, turned, { kind })(draft);
  };
}

/** A hem has a leg to hold, and its wall has room for it; a wall too low for any such hem is what is to blame. */
function hemProblem(draft: Draft, wall: string, hem: HemSpec, by: Path): Refusal | null {
  const { thickness } = draft.sheet;
  const panel = panelOf(draft, wall);
  const named = `${hem.type === 'open' ? 'an' : 'a'} ${hem.type} hem`;
  const least = leastHemLength(hem, thickness);
  const room = panel.bend === null ? Infinity : legOf(panel) - panel.bend.setback - thickness;
  const refuse = (path: Path, message: Refusal['message']) => ({ code: 'hem-room', path, message, fix: '' });
  if (!reaches(room, least)) return refuse(panel.by[1], `panel "${wall}" is too low for ${named} on it`);
  if (!reaches(hem.length, least)) return refuse(by, `${named} needs a straight leg past its fold`);
  if (reaches(room, hem.length)) return null;
  return refuse(by, (say) => `longer than panel "${wall}" of ${say.size(legOf(panel))} has room for`);
}

/** How an edge is finished by the fold, and its terms where they are not the sheet's rule's to say. */
interface EdgeFinish {
  readonly kind: EdgeFold;
  readonly terms?: BendTerms;
}

function hang(id: string, on: On, spec: FlangeSpec, finish: EdgeFinish | null): Step {
  return (draft) => {
    const parent = panelOf(draft, on[0]);
    const i = edgeIndex(parent.outline, on[1]);
    const { length } = hingeAt(parent.outline, i);
    const [west, east] = spec.inset ?? [0, 0];
    const spread = spec.spread ?? 0;
    inRange(spec.height, PLACE, () => `panel "${id}": height`);
    const [low, high] = spec.far ?? [
      [west - spread, spec.height],
      [length - east + spread, spec.height],
    ];
    const n = parent.outline.length;
    const before = (parent.outline[(i + n - 1) % n] as Edge).name;
    const after = (parent.outline[(i + 1) % n] as Edge).name;
    // beside what the parent hangs by or ends with: no name twice in a panel
    const ends: Readonly<Record<string, string>> = { near: 'inner', far: 'outer' };
    const end = (name: string) => ends[name] ?? name;
    const outline: Outline = [
      { name: 'near', from: [west, 0] },
      { name: end(before), from: [length - east, 0] },
      { name: 'far', from: high },
      { name: end(after), from: low },
    ];
    return add(draft, {
      id,
      outline,
      bend: bendOf(draft, on, spec, finish),
      holes: [],
      slots: [],
      cutouts: [],
      scribes: [],
      marks: [],
      by: [[], spec.by ?? []],
    });
  };
}

/**
 * Finish the corners of these panels, where two of their edges are bent, in this style; tabs that it is to know of hang
 * there already.
 */
export function corners(panels: readonly string[], style: CornerStyle): Step {
  return (draft) => {
    const requests = panels.map((id) => ({ panel: panelOf(draft, id).id, style, there: draft.panels }));
    return nextDraft(draft, { corners: [...draft.corners, ...requests] });
  };
}

/** Cut a round hole through a panel; `at` in the panel's frame. */
export function hole(id: string, at: Hole): Step {
  return (draft) => change(draft, id, (p) => ({ ...p, holes: [...p.holes, at] }));
}

/** Cut an opening of any shape through a panel; the loop counter-clockwise in the panel's frame. A round one is a hole. */
export function cutout(id: string, { loop, by }: Cutout): Step {
  const round = roundOf(loop);
  if (round !== null) return hole(id, { at: round.centre, diameter: 2 * round.radius, asked: by });
  return (draft) => change(draft, id, (p) => ({ ...p, cutouts: [...p.cutouts, { loop, by }] }));
}

/** Scribe a line on a panel, on its marked face; both ends in the panel's frame. It is no cut and no bend. */
export function scribe(id: string, from: Point, to: Point): Step {
  return (draft) => change(draft, id, (p) => ({ ...p, scribes: [...p.scribes, [from, to]] }));
}

/** Mark a place on a panel; `at` in the panel's frame. */
export function mark(id: string, at: Pick<Mark, 'kind' | 'at' | 'joint'> & Partial<Mark>): Step {
  const whole: Mark = { hole: null, ...at };
  return (draft) => change(draft, id, (p) => ({ ...p, marks: [...p.marks, whole] }));
}

/** A seat as a family says it: it looks as the panel's face among the site's faces does, and lies on it, unless said. */
export type SeatSpec = Omit<Seat, 'looks' | 'lift'> & Partial<Seat>;

/** Name a place where other parts may join. `width`: see `Site`. */
export function site(name: string, faces: Site['faces'], seat: SeatSpec, width: number | null = null): Step {
  return (draft) => {
    for (const { panel } of [...faces, seat]) panelOf(draft, panel);
    const looks = faces.find((f) => f.panel === seat.panel)?.face ?? faces[0]?.face ?? 'marked';
    const stands = { looks, lift: 0, ...seat };
    return nextDraft(draft, { sites: [...draft.sites, { name, faces, seat: stands, width }] });
  };
}

/**
 * Say which finished size was asked for; `verifyForm` looks for it on the formed part.
 * @param name path of the parameter, `hem.length` or `legs[1]`, or a sum of some, `depth + 2 tabs.length`; of a derived
 *   size its own, `asked(inside.name, inside.value, 'x')`
 */
export function asked<const N extends string>(
  name: N,
  value: number,
  axis: Asked['axis'],
  over: Measured = 'all',
): Step<N extends `${string}${'[' | ' + ' | ' - '}${string}` ? never : N> {
  return (draft) => nextDraft(draft, { asked: [...draft.asked, { name, value, axis, over }] });
}

function bendOf(draft: Draft, [parent, edge]: On, spec: FlangeSpec, finish: EdgeFinish | null): Bend {
  const { angle = 90, insideRadius = draft.sheet.insideRadius } = spec;
  const input = { thickness: draft.sheet.thickness, insideRadius, angle: Math.abs(angle) };
  if (!(input.angle > 0 && input.angle <= 270))
    return fail('bend-angle-range', ['angle'], `${angle} deg given, -270 to 270 and not 0 allowed`);
  inRange(insideRadius, ROOM, () => `bend on edge "${edge}" of panel "${parent}": inside radius`);
  const { terms, metal } = finish?.terms === undefined ? byRule(draft, input) : byTerms(finish.terms);
  const setback = outsideSetback(input);
  return { parent, edge, angle, insideRadius, terms, metal, setback, hem: finish?.kind ?? null };
}

/** By the sheet's rule; a bend that is alike and there already has been asked for. */
function byRule(draft: Draft, input: BendInput): Pick<Bend, 'terms' | 'metal'> {
  const { rule } = draft.sheet;
  for (const { bend } of draft.panels)
    if (bend?.insideRadius === input.insideRadius && Math.abs(bend.angle) === input.angle && !isRolled(bend))
      return bend;
  const sane = (terms: () => BendTerms) => within(['bending'], () => soundTerms(rule, terms()));
  const terms = sane(() => rule.terms(input));
  if (rule.forms === undefined) return byTerms(terms);
  const { allowance: width } = sane(() => (rule.forms as typeof rule.terms)(input));
  return { terms, metal: { width, setback: terms.setback + (width - terms.allowance) / 2 } };
}

/** Terms as a rule has to give them. */
function soundTerms({ name }: BendRule, terms: BendTerms): BendTerms {
  for (const key of ['allowance', 'setback', 'deduction'] as const)
    inRange(terms?.[key], PLACE, () => `${key} by rule "${name}"`, 'rule');
  return terms;
}

/** The roll of an edge has terms of its own. */
const isRolled = ({ hem }: Bend) => hem === 'wired' || hem === 'curl';

const byTerms = (terms: BendTerms): Pick<Bend, 'terms' | 'metal'> => ({
  terms,
  metal: { width: terms.allowance, setback: terms.setback },
});

function panelOf(draft: Draft, id: string): Panel {
  const found = draft.panels.find((p) => p.id === id);
  if (found !== undefined) return found;
  const known = draft.panels.map((p) => p.id);
  return fail('panel-unknown', [], `there is no panel "${id}"`, suggestion(id, known));
}

function add(draft: Draft, panel: Panel): Draft {
  if (draft.panels.some((p) => p.id === panel.id))
    return fail('panel-twice', [], `panel "${panel.id}" is there already`);
  return nextDraft(draft, { panels: [...draft.panels, panel] });
}

function change(draft: Draft, id: string, make: (panel: Panel) => Panel): Draft {
  const before = panelOf(draft, id);
  return nextDraft(draft, { panels: draft.panels.map((p) => (p === before ? make(p) : p)) });
}
