import * as z from 'zod/mini';
import type { HardwareSpec } from '../assembly/bought.js';
import type { JointSpec } from '../assembly/types.js';
import type { Problem } from '../errors/problem.js';
import { quoted } from '../errors/quote.js';
import { type HardwareParams, hardware } from '../hardware/params.js';
import type { AnyFastenerKind } from '../joining/fastener.js';
import { type Gives, type ParamKit, strictGroup } from '../schema/kit.js';
import { shapeOf } from '../schema/value.js';
import { bySchema, endOf, endSchema } from './joints.js';
import { nameSchema } from './name.js';
import { type Counted, pieceNamed } from './piece-named.js';

const MOST_PLACES = 200;

type Place = Readonly<Record<string, number>>;

/** A row of bought parts as read from a job file, lengths in mm; the sizes of its kind stand beside these. */
export interface HardwareData {
  readonly name: string;
  readonly type: HardwareParams['type'];
  readonly on: string;
  readonly and: string | null;
  readonly at: Place | readonly Place[];
  readonly turn: number;
  readonly by: JointSpec['by'];
}

/** Schema of one row of bought parts. */
export function hardwareSchema(kit: ParamKit, fasteners: readonly AnyFastenerKind[]): Gives<unknown> {
  const place = kit.named(kit.size({ min: 0 }));
  const places = kit.either(
    place,
    kit.list(place, 1, MOST_PLACES),
    'distances from edges, or a list of them',
  );
  const head = {
    name: nameSchema,
    on: endSchema,
    at: kit.or(places as Gives<HardwareData['at']>, {}),
    turn: kit.or(kit.angle(-360, 360), 0),
    by: kit.maybe(bySchema(kit, fasteners)),
    and: kit.maybe(endSchema),
  };
  const kinds = Object.entries(hardware);
  return kit.byName(
    'type',
    kinds.map(([type, values]) => strictGroup({ ...head, type: z.enum([type]), ...shapeOf(values, kit) })),
  );
}

/** Rows of bought parts as they were read, their places in a list. */
export function hardwareOf(list: readonly unknown[]): readonly HardwareSpec[] {
  return list.map((data, i): HardwareSpec => {
    const { name, on, and, at, turn, by, ...params } = data as HardwareData;
    return {
      name,
      params: params as unknown as HardwareParams,
      on: endOf(on),
      and: and === null ? null : endOf(and),
      at: Array.isArray(at) ? at : [at as Place],
      turn,
      by,
      path: ['hardware', i],
    };
  });
}

/** Bought parts with the name of another, of a part or a joint, or of a piece of one: fasteners and pieces go by it. */
export function hardwareTwins(data: unknown): readonly Problem[] {
  const rows = (key: string) => {
    const list = (data as Readonly<Record<string, unknown>> | null)?.[key];
    return Array.isArray(list) ? list.map((r: Row | null) => r ?? {}) : [];
  };
  const [bought, parts, joints] = [rows('hardware'), rows('parts'), rows('joints')];
  const places = bought.map(({ name, at }) => ({ name, count: Array.isArray(at) ? at.length : 1 }));
  const made = parts.map(({ name, quantity }) => ({ name, count: Number(quantity ?? 1) }));
  const others = [...made, ...joints].map((r) => r.name);
  return places.flatMap(({ name }, i): readonly Problem[] => {
    if (typeof name !== 'string') return [];
    const before = others.includes(name) || places.findIndex((p) => p.name === name) < i;
    const piece = pieceNamed(name, [...places, ...made]) ?? partNamed(places[i] as Counted, others);
    if (!before && piece === null) return [];
    const message = `the name ${quoted(name)} is taken${before || piece === null ? '' : ` by ${piece}`}`;
    return [{ code: 'name-twice', path: ['hardware', i, 'name'], message, fix: 'Give it a name of its own' }];
  });
}

interface Row {
  readonly name?: unknown;
  readonly at?: unknown;
  readonly quantity?: unknown;
}

/** A part or joint with the name of one of several bought pieces. */
function partNamed({ name, count }: Counted, others: readonly unknown[]): string | null {
  const number = count < 2 ? -1 : others.findIndex((o) => pieceNamed(o, [{ name, count }]) !== null);
  return number < 0
    ? null
    : `${quoted(String(others[number]))}, as one of its ${count} pieces would be called`;
}
