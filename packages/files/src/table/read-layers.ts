import { JobError, type Problem } from '@tinwright/core';
import { type Gives, type ParamKit, paramKit, strictGroup } from '@tinwright/core/family';
import { problemsOf, quoted } from '@tinwright/core/internal';
import * as z from 'zod/mini';
import type { LayerLooks, LayerRow, Linetype } from '../layer-looks.js';
import { type CutLayerName, LAYERS } from '../layers.js';

/** Layers as a user wants them: what they are called and look like, and which are left out. */
export interface LayerMap {
  readonly looks: LayerLooks;
  readonly without: readonly CutLayerName[];
}

/** Layers in the seven basic colours that every reader shows alike: red for ways in, white for what is cut. */
export const BASIC_LAYERS: LayerMap = Object.freeze({
  without: Object.freeze([]),
  looks: Object.freeze(
    Object.fromEntries(
      (
        [
          ['BEND-UP', 5],
          ['BEND-DOWN', 6],
          ['WELD-MARK', 3],
          ['SCRIBE', 4],
          ['LEAD', 1],
          ['CUT', 7],
          ['NOTE', 2],
        ] as const
      ).map(([name, number]) => [name, Object.freeze({ name, number, linetype: 'CONTINUOUS' })]),
    ),
  ),
});

interface Look {
  readonly name: string | null;
  readonly colour: number | null;
  readonly linetype: Linetype | null;
}

type Asked = Readonly<Partial<Record<CutLayerName, 'off' | Look | null>>>;

/** What a table cuts; the others it marks. */
const CUT: readonly CutLayerName[] = ['CUT', 'LEAD'];

/** What is marked under the name of what is cut would be cut as well. */
function cutAsWell(asked: Asked): Problem | null {
  const named = LAYERS.flatMap(({ name }) => {
    const look = asked[name];
    return look === 'off' ? [] : [{ name, outside: look?.name ?? name }];
  });
  const cut = named.filter((l) => CUT.includes(l.name));
  const marked = named.filter((l) => !CUT.includes(l.name));
  const wrong = marked.find((l) => cut.some((c) => c.outside === l.outside));
  const under = cut.find((c) => c.outside === wrong?.outside);
  if (wrong === undefined || under === undefined) return null;
  return {
    code: 'layer-shared',
    path: [asked[wrong.name] ? wrong.name : under.name, 'name'],
    message: `${quoted(wrong.outside)} is the name of what is cut and of ${wrong.name}, which is only marked`,
    fix: 'Give each a name of its own',
  };
}

/**
 * Read a map of layers from plain data: `{ CUT: { name, colour, linetype }, NOTE: off, … }`, each part optional.
 * @throws JobError with every problem found
 */
export function readLayers(data: unknown): LayerMap {
  const read = schema(paramKit('mm')).safeParse(data);
  if (!read.success) throw new JobError(problemsOf(read.error.issues, data));
  const asked = read.data as Asked;
  if (asked.CUT === 'off')
    throw new JobError([
      {
        code: 'layer-cut',
        path: ['CUT'],
        message: '"off" given for what is cut: nothing would be',
        fix: 'Give it a name, a colour or a linetype',
      },
    ]);
  const shared = cutAsWell(asked);
  if (shared !== null) throw new JobError([shared]);
  const looks = LAYERS.flatMap(({ name, number }) => {
    const look = asked[name] ?? 'off';
    if (look === 'off') return [];
    const row: LayerRow = {
      name: look.name ?? name,
      number: look.colour ?? number,
      linetype: look.linetype ?? 'CONTINUOUS',
    };
    return [[name, row] as const];
  });
  const without = LAYERS.map((l) => l.name).filter((name) => asked[name] === 'off');
  return { looks: Object.fromEntries(looks), without };
}

/** What also older readers take. */
const NAME = /^[A-Z0-9_$-]{1,31}$/;

const LINETYPES: readonly Linetype[] = ['CONTINUOUS', 'DASHED', 'DOTTED', 'DASHDOT'];

function schema(k: ParamKit): Gives<unknown> {
  const error = (issue: { input?: unknown }) =>
    `${JSON.stringify(issue.input)} given, 1 to 31 of A-Z 0-9 _ $ - allowed`;
  const look = strictGroup({
    name: k.maybe(z.string().check(z.regex(NAME, { error })) as Gives<string>),
    colour: k.maybe(k.count(1, 255)),
    linetype: k.maybe(k.oneOf(LINETYPES)),
  }) as Gives<unknown>;
  const layer = k.maybe(k.either(k.oneOf(['off']), look, '{ name, colour, linetype } or off'));
  return strictGroup(Object.fromEntries(LAYERS.map((l) => [l.name, layer]))) as Gives<unknown>;
}
