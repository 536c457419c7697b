import type { PartPlan } from '@tinwright/core';
import type { DimsName } from '@tinwright/words/internal';
import type { Flowing } from '../page/flow.js';
import { letter } from '../page/letter.js';
import type { Page } from '../page/page.js';
import type { Paper } from '../page/paper.js';
import { bendNumber } from '../plan/features.js';
import { stepDrawings } from '../steps/step-drawings.js';
import type { PacketKit } from './kit.js';
import type { Making } from './making.js';
import { operationFlows } from './operations.js';
import { perSheet, stepSheets } from './step-sheets.js';
import { anchored } from './text-sheets.js';
import { twinsOf } from './twins.js';

const MARGIN = 3; // mm that pictures leave free at their edges

/** Pictures of the steps of a part, each kind of step once. */
interface Drawn {
  readonly name: string;
  readonly link: string;
  /** Of every step the first that is the same; null for one with a picture of its own. */
  readonly twins: readonly (number | null)[];
  readonly pictures: readonly Page[];
}

/**
 * The operations sheet, and pictures of the steps of bending behind it: of steps that are the same one picture, and no
 * sheet is begun before the last is full.
 */
export function operationPages(
  kit: PacketKit,
  making: Making,
  paper: Paper,
  dims: DimsName,
  sheets: (name: string, title: string, passages: readonly Flowing[]) => readonly Page[],
): readonly Page[] {
  const { plan, words, setting } = kit;
  const drawn = plan.parts.flatMap((part, i) => drawnOf(part, `steps-${i + 1}`, making, dims, kit));
  const pictures = drawn.flatMap((d) => d.pictures);
  const each = pictures[0] === undefined ? 1 : perSheet(pictures[0], paper, setting.height);
  const starts = drawn.map((_, i) => drawn.slice(0, i).reduce((sum, d) => sum + d.pictures.length, 0));
  const known = new Map(drawn.map(({ name, ...rest }) => [name, rest]));
  return [
    ...sheets('operations', words.sections.operations, operationFlows(kit, { ...making, pictures: known })),
    ...stepSheets(pictures, paper, setting.height).map((page, n) =>
      drawn.reduceRight<Page>((p, { name, link }, i) => {
        const here = Math.floor((starts[i] as number) / each) === n;
        return here ? (anchored([p], link, words.operations.pictures(name), 1)[0] as Page) : p;
      }, page),
    ),
  ];
}

function drawnOf(
  part: PartPlan,
  link: string,
  { sequences, shop }: Making,
  dims: DimsName,
  { steps, setting, words }: PacketKit,
): readonly Drawn[] {
  const sequence = sequences.get(part.name);
  if (sequence === undefined) return [];
  const all = stepDrawings(part, sequence, shop, { dims, words: steps, face: setting.face });
  if (all.length === 0) return [];
  const twins = twinsOf(part, sequence);
  const bendsOf = (i: number) =>
    (sequence.steps[i]?.bends ?? [])
      .map((id) => `${bendNumber(part.flat.bends.findIndex((b) => b.id === id))}\u00A0${id}`)
      .join(', ');
  const pictures = all.flatMap((page, i): readonly Page[] => {
    if (twins[i] !== null) return [];
    const same = twins.flatMap((t, j) => (t === i ? [[j + 1, bendsOf(j)] as const] : []));
    return [same.length === 0 ? page : captioned(page, words.operations.twice(same), setting.face)];
  });
  return [{ name: part.name, link, twins, pictures }];
}

/** A picture with a line under it. */
function captioned(page: Page, text: string, face: PacketKit['setting']['face']): Page {
  const line = letter(face, text, [MARGIN, 0.6], { height: 2.2, bold: true });
  return { ...page, blocks: [...page.blocks, { alt: null, items: [line] }] };
}
