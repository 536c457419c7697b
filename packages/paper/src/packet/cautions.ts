import type { Finding, JobPlan } from '@tinwright/core';
import { brakesOf } from '@tinwright/shop';
import { tellFindings } from '@tinwright/words';
import { type CautionName, severityWord } from '@tinwright/words/internal';
import type { Flowing } from '../page/flow.js';
import { notesFlow, tableFlow } from '../page/table.js';
import type { PacketKit } from './kit.js';
import type { Making } from './making.js';

/** The cautions of a job, those that apply, in the order of the work. */
export function cautionsFor(
  { parts, assembly }: Pick<JobPlan, 'parts' | 'assembly'>,
  { shop, assumed }: Pick<Making, 'shop' | 'assumed'>,
): readonly CautionName[] {
  const bent = parts.some((p) => p.flat.bends.length > 0);
  const used = (assembly?.seated ?? []).flatMap((s) => s.joint.by?.kind.facts ?? []);
  const resistance = used.some((f) => f.heat === 'resistance');
  const arc = used.some((f) => f.heat === 'arc');
  const drilled = used.some((f) => f.hole !== 'none') || parts.some((p) => p.flat.holes.length > 0);
  const zinc = parts.some((p) => p.material.zinc);
  const hot = resistance || arc;
  const applies: Readonly<Record<CautionName, boolean>> = {
    rules: true,
    pupils: true,
    edges: true,
    shear: true,
    'burr-rotating': drilled,
    eyes: true,
    'leaf-brake': bent && (brakesOf(shop).length > 0 || shop.press === null),
    'press-brake': bent && shop.press !== null,
    vise: bent,
    'resistance-weld': resistance,
    implants: resistance,
    arc,
    fire: hot,
    air: hot,
    zinc: zinc && hot,
    chromium: hot && parts.some((p) => p.material.name.startsWith('stainless')),
    table: shop.table !== null && !assumed,
    mandrels: used.some((f) => f.rivet === 'blind'),
    object: true,
    food: true,
    'food-zinc': zinc,
  };
  return (Object.keys(applies) as CautionName[]).filter((name) => applies[name]);
}

/** True for what is told with the cautions; what sizes come out at stands on the inspection sheet. */
export const isTold = ({ code }: Pick<Finding, 'code'>): boolean => code !== 'tolerance';

/** The sheet of cautions: what can hurt, no answer to what it carries, and what to know about this job. */
export function cautionFlows(
  { plan, words, setting, language, dims }: PacketKit,
  making: Pick<Making, 'shop' | 'assumed' | 'findings'>,
): readonly Flowing[] {
  const w = words.cautions;
  const list = cautionsFor(plan, making).map((name) => w.all[name]);
  const told = tellFindings(making.findings.filter(isTold), dims.unit, language);
  return [
    tableFlow(
      {
        heading: words.sections.cautions,
        columns: [{ title: w.columns.where }, { title: w.columns.what, grows: true }],
        rows: list.map(({ where, text, source }) => [where, `${text} (${source})`]),
      },
      setting,
    ),
    notesFlow(w.load.question, [w.load.answer], setting),
    ...(told.length === 0
      ? []
      : [
          tableFlow(
            {
              heading: w.findings,
              columns: [
                { title: w.findingColumns.part },
                { title: w.findingColumns.what, grows: true },
                { title: w.findingColumns.fix, grows: true },
              ],
              rows: told.map((f) => [
                f.part ?? '',
                `${severityWord(f.severity, language)}: ${f.message}`,
                f.fix,
              ]),
            },
            setting,
          ),
        ]),
  ];
}
