import type { PartPlan, StopSignal, Unit } from '@tinwright/core';
import { form } from '@tinwright/core/internal';
import { pageSvg, stepDrawings } from '@tinwright/paper';
import { type BendStep, DEFAULT_SHOP, planSequenceAsync } from '@tinwright/shop';
import { type ReplayTurn, turned, turns } from '@tinwright/shop/internal';
import { mendWords, plainPrint, reasonWords, stepLine } from '@tinwright/words';
import { claimText, sayOf } from '@tinwright/words/internal';
import type { OrderView, SolidView } from '../protocol.js';
import { solidView } from './solid.js';

/**
 * The order a part is bent in on the machines of the default shop, a line and a section for each step.
 * @throws what `signal` was aborted for
 */
export async function orderView(
  part: PartPlan,
  units: Unit,
  language: 'en' | 'de',
  signal: StopSignal,
): Promise<OrderView> {
  const sequence = await planSequenceAsync(part, DEFAULT_SHOP, { signal });
  const say = sayOf(units, language);
  const pages = stepDrawings(part, sequence, DEFAULT_SHOP, { dims: units, language });
  return {
    part: part.name,
    status: sequence.status,
    steps: sequence.steps,
    claim: claimText(sequence, language),
    words: sequence.steps.map((s) => stepLine(s, language, plainPrint(say, say, language))),
    sections: pages.map((p) => pageSvg(p, language)),
    reasons: [
      ...sequence.reasons.map((r) => reasonWords(r, say, language)),
      ...sequence.mends.map((m) => mendWords(m, say, language)),
    ],
  };
}

/** The part with `at` steps of its order done; of a step under way, as much of its turn. */
export function stageView({ part }: PartPlan, steps: readonly BendStep[], at: number): SolidView {
  const done = Math.floor(at);
  const [old, next] = [turns(part, steps.slice(0, done)), turns(part, steps.slice(0, done + 1))];
  const now = new Map(
    [...next].map(([id, to]): [string, ReplayTurn] => {
      const from = old.get(id) ?? to;
      const share = at - done;
      return [
        id,
        {
          angle: from.angle + share * (to.angle - from.angle),
          // a bend that starts has no radius yet that means anything: it is wound from its own angle on
          insideRadius: from.angle < 0.01 ? to.insideRadius : between(from, to, share),
        },
      ];
    }),
  );
  return solidView(form(turned(part, now)));
}

const between = (from: ReplayTurn, to: ReplayTurn, share: number): number =>
  from.insideRadius + share * (to.insideRadius - from.insideRadius);
