import { cite, type Finding, type JobPlan } from '@tinwright/core';
import type { Nest, TorchWork } from '@tinwright/cutting';
import type { CutNest } from '@tinwright/files';

/** Shortest stretch worth a common cut, mm. Ours, no source. */
const LEAST = 10;

/** What became of common cuts: not asked for, not possible, or from which length on. */
export type CommonCuts =
  | { readonly state: 'off' }
  | { readonly state: 'none'; readonly why: 'kerf' | 'by-hand' }
  | { readonly state: 'on'; readonly least: number };

export function commonCutsOf(
  asked: 'asked' | 'not-asked',
  kerf: number,
  plans: readonly JobPlan[],
): CommonCuts {
  if (asked === 'not-asked') return { state: 'off' };
  const byHand = plans.some(({ job }) => job.parts.some((p) => p.cutBy?.by === 'hand'));
  if (byHand) return { state: 'none', why: 'by-hand' };
  return kerf > 0 ? { state: 'on', least: LEAST } : { state: 'none', why: 'kerf' };
}

/** The nest with edges brought a kerf apart where that is asked for. */
export async function drawn(
  nest: Nest,
  parts: Parameters<typeof import('@tinwright/cutting').drawTogether>[1],
  common: CommonCuts,
): Promise<Nest> {
  if (common.state !== 'on') return nest;
  const { drawTogether } = await import('@tinwright/cutting');
  return drawTogether(nest, parts, common.least);
}

/** What the torch has to do on each sheet by the rates of the shop; undefined where nobody asked for common cuts. */
export async function torchWorks(
  { cuts }: CutNest,
  common: CommonCuts,
  rates: Parameters<typeof import('@tinwright/cutting').torchWork>[1],
): Promise<readonly TorchWork[] | undefined> {
  if (common.state === 'off') return undefined;
  const { torchWork } = await import('@tinwright/cutting');
  return cuts.map(({ contours }) => torchWork(contours, rates));
}

/** Said where common cuts were asked for and there is none. */
export async function noCommonCuts(
  common: CommonCuts,
  works: readonly TorchWork[] | undefined,
): Promise<readonly Finding[]> {
  if (works === undefined || works.length === 0 || common.state === 'off') return [];
  if (works.some((w) => w.spared > 0)) return [];
  const { cuttingFinding } = await import('@tinwright/cutting/internal');
  const why = common.state === 'none' ? common.why : 'edges';
  return [
    cuttingFinding('common-cut-none', 'warning', null, {
      values: { why },
      source: [cite('general-practice')],
    }),
  ];
}
