import type { DimsName } from '@tinwright/words/internal';
import type { Flowing } from '../page/flow.js';
import type { Page } from '../page/page.js';
import type { Paper } from '../page/paper.js';
import { stepDrawings } from '../steps/step-drawings.js';
import type { PacketKit } from './kit.js';
import type { Making } from './making.js';
import { operationFlows } from './operations.js';
import { stepSheets } from './step-sheets.js';
import { anchored } from './text-sheets.js';

/** The operations sheet, and pictures of every step of bending behind it. */
export function operationPages(
  kit: PacketKit,
  making: Making,
  paper: Paper,
  dims: DimsName,
  sheets: (name: string, title: string, passages: readonly Flowing[]) => readonly Page[],
): readonly Page[] {
  const { plan, words, steps, setting } = kit;
  const drawn = plan.parts.flatMap((part) => {
    const sequence = making.sequences.get(part.name);
    if (sequence === undefined) return [];
    const pictures = stepDrawings(part, sequence, making.shop, { dims, words: steps, face: setting.face });
    return pictures.length === 0 ? [] : [{ name: part.name, pictures }];
  });
  const links = drawn.map(
    ({ name, pictures }, i) => [name, { count: pictures.length, link: `steps-${i + 1}` }] as const,
  );
  return [
    ...sheets(
      'operations',
      words.sections.operations,
      operationFlows(kit, { ...making, pictures: new Map(links) }),
    ),
    ...drawn.flatMap(({ name, pictures }, i) =>
      anchored(
        stepSheets(pictures, paper, setting.height),
        `steps-${i + 1}`,
        words.operations.pictures(name),
        1,
      ),
    ),
  ];
}
