import { type Loop, loopArea } from '../../plane/loop.js';
import type { Point } from '../../plane/point.js';
import { inRange, PLACE, ROOM, SIZE, shown, unsound } from '../../schema/in-range.js';
import { LEAST } from '../../schema/kit.js';
import type { Draft, Outline, Panel, Site, Step } from './tree.js';

const wrong = (message: string): never => unsound('family', message);

function inPlace(at: Point, where: () => string): void {
  inRange(at?.[0], PLACE, where);
  inRange(at?.[1], PLACE, where);
}

/** The verbs of a family, where it gave some. @throws JobError */
export function verbs(steps: unknown): readonly Step[] {
  const all: readonly unknown[] = Array.isArray(steps) ? steps : [steps];
  const odd = all.findIndex((step) => typeof step !== 'function');
  if (all !== steps || odd >= 0) {
    const given = odd < 0 ? 'one verb' : shown(all[odd]);
    wrong(`${given} given${all === steps ? ` as verb ${odd + 1}` : ''}, a list of verbs allowed`);
  }
  return all as readonly Step[];
}

/** Refuse an outline that is no list of three corners or more. @throws JobError */
export function cornered(id: string, outline: Outline): void {
  if (Array.isArray(outline) && outline.length >= 3) return;
  const given = Array.isArray(outline) ? `${outline.length} corners` : shown(outline);
  wrong(`panel "${id}": ${given} given, an outline of 3 corners or more allowed`);
}

/**
 * Refuse a draft with numbers that are none, or with another number of panels that hang on nothing than one.
 * @throws JobError for the first
 */
export function sound({ panels, corners, asked, sites }: Draft): void {
  const [first, second] = panels.filter((p) => p.bend === null);
  if (first === undefined) wrong('no panel given, one or more allowed');
  else if (second !== undefined)
    wrong(`panels "${first.id}" and "${second.id}" hang on nothing, one such panel allowed`);
  panels.forEach(soundPanel);
  for (const { panel, style } of corners) {
    const { name, gap, relief } = style;
    inRange(gap, ROOM, () => `panel "${panel}": gap of corner style "${name}"`);
    const cut = relief?.kind === 'hole' ? relief.diameter : relief?.depth;
    if (relief !== null) inRange(cut, SIZE, () => `panel "${panel}": relief of corner style "${name}"`);
  }
  for (const { name, value } of asked) inRange(value, PLACE, () => `size "${name}" asked for`);
  sites.forEach(soundSite);
}

function soundPanel({ id, outline, bend, holes, cutouts, scribes, marks }: Panel): void {
  const each = <T>(what: string, list: readonly T[], look: (item: T, where: () => string) => void) => {
    let i = 0;
    const where = () => `panel "${id}": ${what} ${i + 1}`;
    for (; i < list.length; i++) look(list[i] as T, where);
  };
  each('corner', outline, ({ from }, where) => inPlace(from, where));
  if (bend === null && isEmpty(outline.map(({ from }) => ({ at: from, bulge: 0 }))))
    wrong(`panel "${id}" ${EMPTY}`);
  each('hole', holes, ({ at, diameter }, where) => {
    inPlace(at, where);
    inRange(diameter, SIZE, () => `${where()}, diameter`);
  });
  each('cut-out', cutouts, ({ loop }, where) => {
    for (const { at, bulge } of loop) {
      inPlace(at, where);
      inRange(bulge, PLACE, () => `${where()}, bulge`);
    }
    if (isEmpty(loop)) wrong(`${where()} ${EMPTY}`);
  });
  each('scribed line', scribes, (ends, where) => {
    for (const at of ends) inPlace(at, where);
  });
  each('mark', marks, ({ at, hole }, where) => {
    inPlace(at, where);
    if (hole !== null) inRange(hole, SIZE, () => `${where()}, hole`);
  });
}

function soundSite({ name, seat, width }: Site): void {
  const where = () => `site "${name}"`;
  for (const at of [seat.at, seat.up, seat.looks]) if (typeof at !== 'string') inPlace(at, where);
  if (seat.lift !== 'top') inRange(seat.lift, PLACE, () => `${where()}, lift`);
  if (width !== null) inRange(width, SIZE, () => `${where()}, width`);
}

const isEmpty = (loop: Loop) => !(loopArea(loop) > LEAST * LEAST);
const EMPTY = 'encloses nothing: its corners go round counter-clockwise, seen from the marked face';
