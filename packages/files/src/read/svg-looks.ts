/// <reference path="./svg-parser.d.ts" />
import { fail, quoted } from '@tinwright/core/internal';
import type { ElementNode } from 'svg-parser';

type Properties = NonNullable<ElementNode['properties']>;

/** What draws a shape elsewhere, or shows a part of it alone: read nowhere, so that what says it is refused. */
const CHANGES = ['clip-path', 'clip', 'mask', 'translate', 'rotate', 'scale', 'zoom', 'offset-path'];
/** What changes a transform, where there is one. */
const TURNS = ['transform-origin', 'transform-box'];
/** What stands as an attribute of its element; said by a style, it is not read. */
const SIZES = ['d', 'cx', 'cy', 'r', 'rx', 'ry', 'x', 'y', 'width', 'height', 'points'];
/** What hides what is drawn; read with the element, not from a style sheet. */
const HIDES = ['display', 'visibility', 'transform'];
/** An opacity of nothing; of any other, a shape is seen. */
const NOTHING = String.raw`0*\.?0+%?`;

/** How an element is to look, by its style and its attributes. */
export interface Looks {
  /** Nothing of it and in it is shown. */
  readonly isGone: boolean;
  /** It is not shown itself, though what stands in it may be. */
  readonly isHidden: boolean;
  /** As it is written; empty where none is. */
  readonly transform: string;
}

/**
 * How an element looks that stands in one which is hidden or not.
 * @throws JobError for what would show it elsewhere, or in part
 */
export function looksOf(p: Properties, isAroundHidden: boolean): Looks {
  const style = styleOf(String(p.style ?? ''));
  const says = (name: string) => style.get(name) ?? String(p[name] ?? '').trim();
  const transform = says('transform').replace(/^none$/i, '');
  const changing = transform === '' ? CHANGES : [...CHANGES, ...TURNS];
  const changed = changing.find((name) => !['', 'none', 'auto'].includes(says(name)));
  if (changed !== undefined) return refuse('the drawing says', changed);
  const visibility = says('visibility').toLowerCase();
  return {
    isGone: says('display').toLowerCase() === 'none' || new RegExp(`^${NOTHING}$`).test(says('opacity')),
    isHidden:
      visibility === '' || visibility === 'inherit'
        ? isAroundHidden
        : ['hidden', 'collapse'].includes(visibility),
    transform,
  };
}

/** Refuses a shape, or a drawing, whose style says where it lies or how large it is. @throws JobError */
export function checkSizes(p: Properties): void {
  const style = styleOf(String(p.style ?? ''));
  const sized = SIZES.find((name) => style.has(name));
  if (sized !== undefined) refuse('a style in the drawing says', sized);
}

/** Properties of a style, the last word on each. */
function styleOf(text: string): ReadonlyMap<string, string> {
  const said = withoutComments(text).split(';');
  return new Map(
    said.map((one) => {
      const [name = '', ...value] = one.split(':');
      const plain = value.join(':').replace(/!\s*important\s*$/i, '');
      return [name.trim().toLowerCase(), plain.trim()];
    }),
  );
}

const withoutComments = (css: string) => css.replace(/\/\*[\s\S]*?\*\//g, ' ');

const SHAPING = new RegExp(
  [
    String.raw`(?:^|[{;\s])(?:(${[...CHANGES, ...TURNS, ...SIZES, ...HIDES].join('|')})\s*:`,
    String.raw`|(opacity)\s*:\s*${NOTHING}\s*(?:[;}!]|$))|(@import)`,
  ].join(''),
  'i',
);

/** Refuses a drawing whose style sheets decide what is seen where, which is not followed. @throws JobError */
export function checkStyles(text: string): void {
  if (/<\?xml-stylesheet\b/i.test(text)) refuse('a style sheet stands beside the drawing:', 'xml-stylesheet');
  for (const sheet of text.split(/<style\b/i).slice(1)) {
    const [rules = ''] = sheet.split(/<\/style/i, 1);
    const [, ...found] = SHAPING.exec(withoutComments(rules)) ?? [];
    const said = found.find((f) => f !== undefined);
    if (said !== undefined) refuse('a style sheet of the drawing says', said);
  }
}

function refuse(who: string, said: string): never {
  return fail(
    'drawing-entity',
    [],
    `${who} ${quoted(said)}, which is not followed`,
    'Say it with the shapes, or save it as plain SVG',
  );
}
