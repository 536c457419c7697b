// The examples in the default shop, read as a maker would: no errors, and a warning only where one is due.
import { readdirSync, readFileSync } from 'node:fs';
import { FAMILIES, planJob, readJob } from '@tinwright/core';
import { hardware } from '@tinwright/core/hardware';
import { DEFAULT_SHOP } from '@tinwright/shop';
import { jobFindings, shopFindings } from '@tinwright/shop/internal';
import { expect, test } from 'vitest';
import { parse } from 'yaml';
import marker from '../../../../examples/row-marker.mjs';

const folder = new URL('../../../../examples/', import.meta.url);
const names = readdirSync(folder).filter((f) => /(?<!-shop)\.yaml$/.test(f));

const plan = (name: string) =>
  planJob(
    readJob(parse(readFileSync(new URL(name, folder), 'utf8')), [...FAMILIES, marker as never], { hardware }),
  );

/** Warnings that are right, by job: part and code. */
const WARNED: Readonly<Record<string, readonly string[]>> = {
  // 5052-H32 of 1.2 mm folded flat, and bent to less than aircraft practice
  'timer-cover.yaml': ['base radius-strict', 'cover radius-strict'],
  // rivets go as near to the bend as the usual guides allow, the cautious ones ask for more
  'bench-shelf.yaml': ['bracket hole-near-bend'],
  'tool-tote.yaml': ['body radius-strict', 'body hem-tight', 'end radius-strict'],
};

test('there are examples', () => {
  expect(names.length).toBeGreaterThan(5);
});

test.each(names)('%s: no errors, warnings as they should be', (name) => {
  const job = plan(name);
  const own = job.parts.flatMap((p) => shopFindings(p, DEFAULT_SHOP));
  const weighty = own.filter((f) => f.severity !== 'note').map((f) => `${f.part} ${f.code}`);
  expect(weighty).toEqual(WARNED[name] ?? []);
});

test.each(names)('%s: no more than four notes on a part, one of them on sizes', (name) => {
  for (const part of plan(name).parts) {
    const notes = shopFindings(part, DEFAULT_SHOP).filter((f) => f.severity === 'note');
    expect(notes.length, part.name).toBeLessThanOrEqual(4);
    expect(notes.filter((f) => f.code === 'tolerance')).toHaveLength(1);
  }
});

test('the harvest carrier: what is said of it, part by part', () => {
  const said = jobFindings(plan('harvest-carrier.yaml'), DEFAULT_SHOP).map(
    (f) => `${f.part} ${f.severity} ${f.code}`,
  );
  expect(said).toEqual([
    'body note relief-shallow',
    'body note tolerance',
    'end note tolerance',
    'handle note relief-shallow',
    'handle note tolerance',
  ]);
});
