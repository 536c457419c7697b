import { insideOf, type Label, placed } from '../figure/labels.js';
import type { PaperRoom } from '../figure/room.js';
import type { Item } from '../page/page.js';
import type { StepSetting } from './setting.js';

/** Numbers in place of labels that find no room. It fills as figures are drawn, and lives as long as the figures of one step. */
export interface LabelKey {
  /** The number of a text: the same for the same text. */
  readonly numberOf: (text: string) => string;
  /** What the numbers stand for, in one line; empty where every label found room. */
  readonly text: () => string;
}

/** What the figures of one step are drawn with. */
export interface FigureSetting extends StepSetting {
  readonly key: LabelKey;
}

/** A setting with a key of its own. */
export function keyed(setting: StepSetting): FigureSetting {
  const texts: string[] = [];
  return {
    ...setting,
    key: {
      numberOf: (text) => {
        if (!texts.includes(text)) texts.push(text);
        return String(texts.indexOf(text) + 1);
      },
      text: () => texts.map((t, i) => `${i + 1}\u00A0${t}`).join('; '),
    },
  };
}

/** Labels where they have room, one after the other; a number where one has none. */
export function labelled(
  labels: readonly Label[],
  room: PaperRoom,
  { face, height, key }: FigureSetting,
): readonly Item[] {
  const at = (label: Label) =>
    placed(label, room, face, height) ?? placed(besides(label), room, face, height);
  return labels.flatMap((label) => {
    const items = at(label) ?? at({ ...label, texts: [key.numberOf(label.texts[0] as string)] }) ?? [];
    room.add(items);
    return items;
  });
}

/** What has no room inside an area stands beside it. */
const besides = ({ texts, of }: Label): Label => ({
  texts,
  of: of.kind === 'area' ? { kind: 'points', at: insideOf(of.corners), radius: 0 } : of,
});
