import type { JobPlan } from '@tinwright/core';
import type { Page, Words } from '@tinwright/paper';
import { type Making, makingOf, type PacketOptions, packetPages } from '@tinwright/paper';
import { plannedCarrier } from '../../../files/test/carrier.js';

export const A4: PacketOptions = { paper: 'A4', dims: 'mm' };

/** The small carrier, spot-welded: one plan for all tests, since its order of bends and its packet are kept with it. */
export const CARRIER: JobPlan = plannedCarrier();

const known = new WeakMap<JobPlan, Making>(); // orders of bends take their time

/** How a job is made where no shop is given. */
export function assumed(plan: JobPlan): Making {
  const making = known.get(plan) ?? makingOf(plan, null);
  known.set(plan, making);
  return making;
}

const set = new WeakMap<JobPlan, Map<string, readonly Page[]>>();

/** Pages of a packet for an assumed shop; those of one plan and the same options are made once. */
export function pagesOf(plan: JobPlan, options: Partial<PacketOptions> = {}): readonly Page[] {
  const kept = set.get(plan) ?? new Map<string, readonly Page[]>();
  const key = JSON.stringify({ ...A4, ...options });
  const pages = kept.get(key) ?? packetPages(plan, assumed(plan), { ...A4, ...options });
  set.set(plan, kept.set(key, pages));
  return pages;
}

/** Texts of pages in their order. */
export const wordsOf = (pages: readonly Page[]): readonly Words[] =>
  pages.flatMap((p) => p.blocks.flatMap((b) => b.items.filter((i): i is Words => i.kind === 'words')));

/** What pages say, as one text; broken lines are joined. */
export const saidOn = (pages: readonly Page[]): string =>
  wordsOf(pages)
    .map((w) => w.text)
    .join(' ');

/** Pages from an anchor to the next of the same or a higher level, and that one too where its title names both. */
export function sectionOf(pages: readonly Page[], name: string): readonly Page[] {
  const at = pages.findIndex((p) => p.anchors?.some((a) => a.name === name));
  const title = pages[at]?.anchors?.find((a) => a.name === name)?.title;
  if (title === undefined) throw new Error(`no section ${name}`);
  const titled = (p: Page) => wordsOf([p]).some((w) => w.bold && w.text.split(', ').includes(title));
  const rest = pages
    .slice(at + 1)
    .findIndex((p) => p.anchors?.some((a) => a.level === 0) === true && !titled(p));
  return pages.slice(at, rest < 0 ? undefined : at + 1 + rest);
}
