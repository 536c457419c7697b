import { FAMILIES, MATERIALS, refit, type StopSignal } from '@tinwright/core';
import { hardware } from '@tinwright/core/hardware';
import { materialName } from '@tinwright/words/internal';
import type { Answers, Asks, Message } from '../protocol.js';
import { familyView } from './fields.js';
import { FORMATS, filesFor } from './files.js';
import { orderView, stageView } from './order.js';
import { attempt, orProblems, type Planner, planner } from './plans.js';
import { printed } from './prints.js';
import { jobView, mendedFindings, pictureOf } from './views.js';

type Answering = {
  readonly [K in keyof Asks]: (ask: Asks[K], signal: StopSignal) => Answers[K] | Promise<Answers[K]>;
};

/** Answers every question of the page; keeps what it has read. */
export function answering(): (message: Pick<Message, 'kind' | 'ask'>, signal: StopSignal) => unknown {
  const plans = planner();
  const answers: Answering = {
    catalogue: ({ language }) => ({
      families: FAMILIES.map((f) => familyView(f, language)),
      materials: MATERIALS.map((m) => ({ name: m.name, title: materialName(m, language) })),
      formats: FORMATS,
    }),
    quick: ({ data, part }) => plans.quick(data, part),
    job: ({ data, language }) => orProblems(() => jobView(plans.plan(data), language)),
    findings: ({ data, language }) => {
      const plan = attempt(() => plans.plan(data));
      return plan === null ? [] : mendedFindings(plan, language);
    },
    mend: ({ data, path }) => plans.mend(data, path),
    order: ({ data, part, language }, signal) =>
      withPart(plans, data, part, (p, units) => orderView(p, units, language, signal)),
    stage: ({ data, part, steps, at }) => withPart(plans, data, part, (p) => stageView(p, steps, at)),
    refit: ({ data, measured }) =>
      orProblems(() => {
        const { measured: before, ...drawn } = (data ?? {}) as { readonly measured?: object };
        const { changes, changed } = refit(
          drawn,
          { measured: { ...before, ...measured }, made: [] },
          FAMILIES,
          { hardware },
        );
        return { changes, again: changed.map((p) => p.name) };
      }),
    files: (ask) => {
      const plan = attempt(() => plans.plan(ask.data));
      return plan === null ? [] : filesFor(plan, ask);
    },
    picture: ({ data, part }) => {
      const plan = attempt(() => plans.plan(data));
      return plan === null ? null : pictureOf(plan, part);
    },
    prints: ({ data, ...asked }) => {
      const plan = attempt(() => plans.plan(data));
      return plan === null ? [] : (attempt(() => printed(plan, asked)) ?? []);
    },
  };
  return ({ kind, ask }, signal) =>
    (answers[kind] as (ask: unknown, signal: StopSignal) => unknown)(ask, signal);
}

function withPart<T>(
  plans: Planner,
  data: unknown,
  name: string,
  view: (part: ReturnType<Planner['plan']>['parts'][number], units: 'mm' | 'in') => T,
): T | null {
  const plan = attempt(() => plans.plan(data));
  const part = plan?.parts.find((p) => p.name === name);
  return plan === null || part === undefined ? null : view(part, plan.job.units);
}
