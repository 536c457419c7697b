// The routine steps through a bend in 48, so a round of outside radius r that turns its quarter between two steps is
// seen short by up to r (1 − cos(sweep / 96)) at either end: 0.027 mm on a wired edge of 14 mm, past its own 0.02 mm.
const STEPS = 48;
const TOLERANCE = 0.02; // mm, the routine's own

/** What the routine prints. */
export interface Refolded {
  readonly parts: readonly RefoldedPart[];
  readonly assembly: readonly string[];
}

interface RefoldedPart {
  readonly part: string;
  readonly formed: readonly number[];
  readonly problems: readonly string[];
}

interface ManifestPart {
  readonly name: string;
  readonly thickness: number;
  readonly formed: { readonly x: number; readonly y: number; readonly z: number };
  readonly bends: readonly { readonly angle: number; readonly insideRadius: number }[];
}

/** What is asked of a manifest here. */
export interface FoldedManifest {
  readonly parts: readonly ManifestPart[];
  readonly assembly?: {
    readonly bought?: readonly { readonly fasteners: readonly unknown[] }[];
    readonly fasteners: readonly unknown[];
  };
}

/** What is wrong with the parts as the routine folded them. */
export function formedProblems(
  { parts }: FoldedManifest,
  folded: readonly RefoldedPart[],
): readonly string[] {
  return parts.flatMap((part) => {
    const found = folded.find((p) => p.part === part.name);
    const problems = found === undefined ? ['not folded'] : problemsOf(part, found);
    return problems.map((text) => `${part.name}: ${text}`);
  });
}

function problemsOf(part: ManifestPart, folded: RefoldedPart): readonly string[] {
  const sorted = (values: readonly number[]) => values.toSorted((a, b) => a - b);
  const got = sorted(folded.formed);
  const extents = sorted(Object.values(part.formed)).flatMap((size, k) => {
    const found = got[k] as number;
    const over = size - found;
    const far = over < -TOLERANCE || over > TOLERANCE + shortfall(part);
    return far ? [`formed extent ${found.toFixed(3)} but the manifest says ${size.toFixed(3)}`] : [];
  });
  return [...extents, ...folded.problems.filter((text) => !text.startsWith('formed extent '))];
}

function shortfall({ bends, thickness }: ManifestPart): number {
  const short = ({ angle, insideRadius }: ManifestPart['bends'][number]) =>
    (insideRadius + thickness) * (1 - Math.cos((angle * Math.PI) / 180 / STEPS / 2));
  return 2 * Math.max(0, ...bends.map(short));
}
