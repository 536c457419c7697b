import type { Material, Part } from '@tinwright/core';
import { brakesOf } from '../../machines/brakes.js';
import type { Shop } from '../../machines/shop.js';
import { type SheetSpringback, springbackOf } from '../../metal/springback.js';
import { foldSetting } from '../../tools/leaf-setting.js';
import { marginFor } from '../../tools/margin.js';
import type { DieChoice } from '../../tools/press-setting.js';
import { type Fold, foldTree } from '../part/fold-tree.js';
import { type LineBook, lineBook } from '../part/line-stands.js';
import type { Mask } from '../part/mask.js';
import { type LineStroke, type Work, workOf } from '../part/operations.js';
import { contactBook, type SelfContact } from '../part/self-contact.js';
import { brakeStation } from '../stations/brake-station.js';
import { handStation } from '../stations/hand-station.js';
import { benchStation, formerStation, seamerStation, viseStation } from '../stations/jaw-station.js';
import type { LeafBlank } from '../stations/leaf-work.js';
import { type Covers, pressRack } from '../stations/press-rack.js';
import type { Station } from '../stations/station.js';
import { setAtFirst, toolBook } from './tool-book.js';

/** A part on the machines of a shop: what can bend which line in which state, whatever it costs. */
export interface AtMachines {
  readonly work: Work;
  readonly stations: readonly Station[];
  /** What of the part an operation would drive into another, in a state. */
  readonly contact: (operation: LineStroke, done: Mask) => SelfContact | null;
  /** Whether the rack of a station has tools for a mounting. */
  readonly covers: Covers;
}

/** The same with what a search by seconds needs besides. */
export interface PartAtMachines extends AtMachines {
  readonly lines: LineBook;
  readonly springback: SheetSpringback;
}

/** What of a part decides how it stands on machines. */
export interface PartShape {
  readonly part: Part;
  readonly material: Material;
  /** Greatest size of the blank, mm. */
  readonly longest: number;
}

const HEM_FOLD = 135; // degrees a hem is folded to without a leaf; judgement

/** A part with its lines, apart from any machine. */
interface Lying extends Pick<PartAtMachines, 'work' | 'lines' | 'contact'> {
  readonly fold: string;
}

/**
 * A part set on the machines of one shop after another, which differ in machines alone: lines that lie the same, and machines that
 * are the same, are set up once.
 * @param quick for a look at few states, the steps that are done in it, the others left flat
 */
export function setOnMachines(
  { part, material, longest }: PartShape,
  quick: ((work: Work) => Mask) | null = null,
): (shop: Shop, dies: DieChoice) => PartAtMachines {
  const lying = new Map<string, Lying>();
  const lyingFor = (shop: Shop): Lying => {
    const how = foldFor(shop, part.sheet);
    const fold = `${how.angle} ${how.setBack}`;
    const known = lying.get(fold);
    if (known !== undefined) return known;
    const whole = workOf(foldTree(part, how));
    const work = quick === null ? whole : { ...whole, all: quick(whole), quick: true };
    const lines = lineBook(work);
    const made = { fold, work, lines, contact: contactBook(work, lines) };
    lying.set(fold, made);
    return made;
  };
  const machines = new WeakMap<object, Map<string, readonly Station[]>>();
  return (shop, dies) => {
    // of this shop alone: racks differ
    const tools = toolBook();
    const covers: Covers = (mounting, station) => tools(setAtFirst(station), mounting, station) !== 'none';
    const springback = springbackOf(shop.strips, material.name, part.sheet.thickness);
    const blank = { material, margin: marginFor(shop.margin, longest), springback };
    const { fold, ...own } = lyingFor(shop);
    const kept: Kept = (machine, name, make) => {
      const byName = machines.get(machine) ?? new Map<string, readonly Station[]>();
      machines.set(machine, byName);
      const key = `${fold} ${name}`;
      const made = byName.get(key) ?? make();
      byName.set(key, made);
      return made;
    };
    const stations = stationsOf({ ...own, blank, covers, dies }, shop, kept);
    return { ...own, springback, covers, stations };
  };
}

/** How a hem is folded before it is closed: with several brakes, as far as each of them folds one. */
function foldFor(shop: Shop, { thickness, insideRadius }: Part['sheet']): Fold {
  const [leaf] = brakesOf(shop)
    .map(({ brake }) => foldSetting(brake, thickness, insideRadius))
    .toSorted((a, b) => a.most - b.most);
  return { angle: leaf?.most ?? HEM_FOLD, setBack: leaf?.setBack ?? null };
}

/** Stations of a machine, set up once under a name. */
type Kept = (machine: object, name: string, make: () => readonly Station[]) => readonly Station[];

interface StationInput extends Pick<PartAtMachines, 'work' | 'lines' | 'covers'> {
  readonly blank: LeafBlank;
  readonly dies: DieChoice;
}

function stationsOf(
  { work, lines, blank, covers, dies }: StationInput,
  { press, profile, vise, handSeamer, formerBlock, ...shop }: Shop,
  kept: Kept,
): readonly Station[] {
  const { material } = blank;
  return [
    ...brakesOf(shop).flatMap(({ id, brake }) =>
      kept(brake, id, () => [brakeStation(work, lines, id, brake, blank)]),
    ),
    ...(press === null
      ? []
      : kept(press, dies, () => pressRack({ ...blank, work, lineAt: lines, press, profile, dies }, covers))),
    ...(vise === null
      ? []
      : kept(vise, 'vise', () => [
          viseStation(work, lines, vise, material),
          benchStation(work, lines, vise, material),
        ])),
    ...(handSeamer === null
      ? []
      : kept(handSeamer, 'seamer', () => [seamerStation(work, lines, handSeamer, material)])),
    ...(formerBlock === null
      ? []
      : kept(formerBlock, 'former', () => [formerStation(work, lines, formerBlock, material)])),
    handStation(),
  ];
}
