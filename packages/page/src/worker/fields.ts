import type { AnyFamily } from '@tinwright/core';
import type { ParamKit, SizeRange, Value, Values } from '@tinwright/core/family';
import type { Language } from '@tinwright/words';
import { familyTitle, parameterWords } from '@tinwright/words/internal';
import type { FamilyView, Field } from '../protocol.js';

/** What a declaration says of a value, found by letting it describe itself. */
interface Seen {
  readonly least: number | null;
  readonly most: number | null;
  readonly fallback: unknown;
  readonly optional: boolean;
  readonly list: boolean;
}

const NOTHING: Seen = { least: null, most: null, fallback: undefined, optional: false, list: false };

/** A kit that reads nothing and notes what it is told: ranges, defaults, lists. */
function notingKit(): ParamKit {
  const note = (seen: Partial<Seen>): Seen => ({ ...NOTHING, ...seen });
  // what the kit can read, all of it
  const kit: { readonly [K in Exclude<keyof ParamKit, 'unit' | 'materials'>]: (...told: never[]) => Seen } & {
    readonly unit: 'mm';
    readonly materials: readonly never[];
  } = {
    unit: 'mm',
    materials: [],
    size: ({ min, max }: SizeRange = {}) => note({ least: min ?? null, most: max ?? null }),
    sizeOf: () => note({}),
    angle: (least: number, most: number) => note({ least, most }),
    count: (least: number, most: number) => note({ least, most }),
    hem: () => note({}),
    outlines: () => note({}),
    text: () => note({}),
    named: () => note({}),
    later: (inner: () => Seen) => inner(),
    oneOf: () => note({}),
    maybe: (inner: Seen) => ({ ...inner, optional: true }),
    or: (inner: Seen, fallback: unknown) => ({ ...inner, fallback: fallback ?? undefined, optional: true }),
    instead: (inner: Seen, fallback: unknown) => ({ ...inner, fallback, optional: true }),
    list: (_: Seen, least: number, most: number) => note({ least, most, list: true }),
    group: () => note({}),
    byName: () => note({}),
    either: (a: Seen, b: Seen) => (a.most === null && a.least === null ? b : a),
  };
  return kit as unknown as ParamKit;
}

const ENTRY = '[]';

/** Lists of groups, openings and finished edges, are written in the job's text: they have no field. */
const hasField = ({ inner }: Value): boolean =>
  Object.keys((inner[ENTRY] as Value | undefined)?.inner ?? {}).length === 0;

/** Fields of values, in the order they are declared; `told` has the words of each, by its path, or ''. */
function fieldsOf(values: Values, told: (path: string) => string, before = ''): readonly Field[] {
  const kit = notingKit();
  const asked = Object.entries(values).filter(([, value]) => hasField(value as Value));
  return asked.map(([name, value]): Field => {
    const { words, unit, options, inner } = value as Value;
    const path = before === '' ? name : `${before}.${name}`;
    return {
      ...(value.read(kit) as unknown as Seen),
      name,
      words: told(path) || words,
      unit,
      options,
      inner: fieldsOf(inner, told, path),
    };
  });
}

/** A family as one chooses it. */
export function familyView(family: AnyFamily, language: Language): FamilyView {
  const { name, values, describe } = family;
  const fields = fieldsOf(values, (path) => parameterWords(family, path, language));
  return { name, title: familyTitle(family, language), example: describe.example, fields };
}
