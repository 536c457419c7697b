import type { HardwareTools } from '../assembly/bought.js';
import type { RuleKind } from '../bending/kind.js';
import { RULE_KINDS } from '../bending/kinds.js';
import type { AnyFastenerKind } from '../joining/fastener.js';
import { FASTENER_KINDS } from '../joining/kinds.js';
import { MATERIALS, type Material } from '../stock/materials.js';
import { soundMaterials } from './own-materials.js';

/** Rows of one's own that a job may name beside the built-in ones. */
export interface OwnTables {
  readonly materials?: readonly Material[];
  /** Kinds of bend rules, made with `ruleKind`. */
  readonly rules?: readonly RuleKind[];
  /** Kinds of fasteners, made with `fastenerKind`. */
  readonly fasteners?: readonly AnyFastenerKind[];
  /** `hardware` of `@tinwright/core/hardware`, where jobs may have bought parts. */
  readonly hardware?: HardwareTools | null;
}

/** Every material, bend rule and fastener a job may name. */
export type Tables = Required<OwnTables>;

/**
 * The built-in tables with rows of one's own.
 * @throws RangeError when a name is there twice, and for a material whose numbers no metal has
 */
export function tablesWith({
  materials = [],
  rules = [],
  fasteners = [],
  hardware = null,
}: OwnTables = {}): Tables {
  soundMaterials(materials);
  return {
    materials: once<Material>([...MATERIALS, ...materials]),
    rules: once<RuleKind>([...RULE_KINDS, ...rules]),
    hardware,
    fasteners: once<AnyFastenerKind>([...FASTENER_KINDS, ...fasteners]),
  };
}

function once<Row extends { readonly name: string }>(rows: readonly Row[]): readonly Row[] {
  const names = rows.map((r) => r.name);
  const twice = names.find((name, i) => names.indexOf(name) !== i);
  if (twice !== undefined) throw new RangeError(`there is a "${twice}" already, another name allowed`);
  return rows;
}
