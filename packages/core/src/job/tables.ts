import type { RuleKind } from '../bending/kind.js';
import { RULE_KINDS } from '../bending/kinds.js';
import { radiusRule } from '../stock/least-radius.js';
import { MATERIALS, type Material } from '../stock/materials.js';

/** Rows of one's own that a job may name beside the built-in ones. */
export interface OwnTables {
  readonly materials?: readonly Material[];
  /** Kinds of bend rules, made with `ruleKind`. */
  readonly rules?: readonly RuleKind[];
}

/** Every material and bend rule a job may name. */
export type Tables = Required<OwnTables>;

/**
 * The built-in tables with rows of one's own.
 * @throws RangeError when a name is there twice
 */
export function tablesWith({ materials = [], rules = [] }: OwnTables = {}): Tables {
  const own = materials.map((m): Material => ({ ...m, ...radiiOf(m) }));
  return { materials: once([...MATERIALS, ...own]), rules: once<RuleKind>([...RULE_KINDS, ...rules]) };
}

/** What a material says of radii, so that plans with it cross to a worker. */
function radiiOf({ leastRadius: least, strictRadius: strict }: Material): Partial<Material> {
  const leastRadius = radiusRule(least.source, (t, angle) => least.at(t, angle));
  if (strict === undefined) return { leastRadius };
  return { leastRadius, strictRadius: radiusRule(strict.source, (t, angle) => strict.at(t, angle)) };
}

function once<Row extends { readonly name: string }>(rows: readonly Row[]): readonly Row[] {
  const names = rows.map((r) => r.name);
  const twice = names.find((name, i) => names.indexOf(name) !== i);
  if (twice !== undefined) throw new RangeError(`there is a "${twice}" already, another name allowed`);
  return rows;
}
