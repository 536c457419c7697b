// Long work is asked whether to go on, tells how far it is, lets others have their turn, and gives the same in the end.
import {
  job,
  openBox,
  type PartPlan,
  planJob,
  planJobAsync,
  readJob,
  type StopSignal,
} from '@tinwright/core';
import { findNest, QUARTER_TURNS, readRack } from '@tinwright/cutting';
import { jobFiles, streamJobFiles } from '@tinwright/files';
import { makingOf, packetFiles } from '@tinwright/paper';
import { DEFAULT_SHOP, planShop } from '@tinwright/shop';
import { describe, expect, test } from 'vitest';

const BOX = { name: 'box', family: 'open-box', length: 120, width: 80, height: 30 } as const;
const plan = job({ units: 'mm', stock: { material: 'mild-steel', thickness: 1 } })
  .part('box', openBox, { length: 120, width: 80, height: 30 })
  .plan();

describe('the pace of work', () => {
  const parts = ['a', 'b', 'c'].map((name) => ({ ...BOX, name }));
  const three = readJob({ units: 'mm', stock: { material: 'mild-steel', thickness: 1 }, parts } as unknown);

  test('progress counts the parts', () => {
    const seen: string[] = [];
    planJob(three, { onProgress: (done, of) => seen.push(`${done}/${of}`) });
    expect(seen).toEqual(['1/3', '2/3', '3/3']);
  });

  test('a signal ends the work between two parts, with its reason', async () => {
    const stop = new AbortController();
    const work = planJobAsync(three, {
      signal: stop.signal,
      onProgress: () => stop.abort(new Error('enough')),
    });
    await expect(work).rejects.toThrow('enough');
    expect(() => planJob(three, { signal: AbortSignal.abort(new Error('enough')) })).toThrow('enough');
  });

  /** A signal of one's own that is aborted once it was asked so often: nothing has to happen outside for it. */
  const askedOnly = (times: number): StopSignal & { readonly left: () => number } => {
    let left = times;
    return {
      throwIfAborted: () => {
        if (left === 0) throw new Error('enough');
        left -= 1;
      },
      left: () => left,
    };
  };
  const one = readJob({
    units: 'mm',
    stock: { material: 'mild-steel', thickness: 1 },
    parts: [BOX],
  } as unknown);

  test('a signal is asked within a part: between its tree, its views and its verifying', () => {
    const signal = askedOnly(100);
    planJob(one, { signal });
    expect(100 - signal.left()).toBeGreaterThan(2);
    expect(() => planJob(one, { signal: askedOnly(2) })).toThrow('enough');
  });

  test('a signal is asked for every size that is tried for a part that cannot be', () => {
    const low = { ...BOX, height: 1 };
    const job = readJob({
      units: 'mm',
      stock: { material: 'mild-steel', thickness: 1 },
      parts: [low],
    } as unknown);
    expect(() => planJob(job)).toThrow(/Use/);
    expect(() => planJob(job, { signal: askedOnly(6) })).toThrow('enough');
  });

  test('a signal is asked within the search for a bend order, in a nest and in a packet', async () => {
    const [box] = planJob(one).parts as [PartPlan];
    expect(() => planShop(planJob(one), DEFAULT_SHOP, { signal: askedOnly(1) })).toThrow('enough');
    const part = { part: 'box', material: 'mild-steel', thickness: 1, quantity: 4, grain: null, holes: [] };
    const rack = readRack({
      units: 'mm',
      sheets: [{ name: 'sheet', material: 'mild-steel', thickness: 1, size: [500, 400] }],
    });
    const parts = [{ ...part, outline: box.flat.outline }];
    const ask = { parts, rack, spacing: 3, edge: 5, turns: QUARTER_TURNS };
    expect(() => findNest(ask, { seeds: [1], moves: 1e6, signal: askedOnly(3) })).toThrow('enough');
    const paper = { paper: 'A4', dims: 'mm', signal: askedOnly(3) } as const;
    const plan = planJob(one);
    await expect(packetFiles(plan, makingOf(plan, DEFAULT_SHOP), paper, ['pdf'])).rejects.toThrow('enough');
  });

  test.each([{}, { sections: ['cuts', 'templates'] }, { worksheet: true }] as const)(
    'a packet says how far it is, first as it is set, then as its pages are drawn: %j',
    async (which) => {
      const plan = planJob(three);
      const heard: { what: string; of: number; seen: number[] }[] = [];
      const onProgress = async (what: string, of: number) => {
        const seen: number[] = [];
        heard.push({ what, of, seen });
        return (done: number) => void seen.push(done);
      };
      const options = { paper: 'A4', dims: 'mm', ...which, onProgress } as const;
      const { pages } = await packetFiles(plan, makingOf(plan, DEFAULT_SHOP), options, ['html']);
      expect(heard.map((h) => h.what)).toEqual(['set', 'drawn']);
      const [set, drawn] = heard;
      expect(set?.seen).toEqual(Array.from({ length: Number(set?.of) + 1 }, (_, i) => i));
      expect([drawn?.of, drawn?.seen.at(-1)]).toEqual([pages, pages]);
    },
  );

  test('timers run between two parts, and the plan is the same', async () => {
    let turns = 0;
    const timer = setInterval(() => {
      turns += 1;
    }, 0);
    const slow = await planJobAsync(three);
    clearInterval(timer);
    expect(turns).toBeGreaterThan(0);
    expect(slow.parts.map((p) => p.flat)).toEqual(planJob(three).parts.map((p) => p.flat));
  });

  test('without verifiers a sound part is the same, and one that runs into itself is not refused', () => {
    expect(planJob(three, { verify: 'none' }).parts[0]?.flat).toEqual(planJob(three).parts[0]?.flat);
    const coil = {
      name: 'coil',
      family: 'bent-strip',
      width: 20,
      legs: [40, 20, 20, 20, 40],
      angles: [90, 90, 90, 90],
    };
    const data = { units: 'mm', stock: { material: 'mild-steel', thickness: 1 }, parts: [coil] } as unknown;
    expect(() => planJob(readJob(data))).toThrow();
    expect(planJob(readJob(data), { verify: 'none' }).parts).toHaveLength(1);
  });

  test('files come one by one, the same as the list', async () => {
    const files = [];
    for await (const file of streamJobFiles(plan, { dxf: 'r12' })) files.push(file);
    expect(files).toEqual(jobFiles(plan, { dxf: 'r12' }));
  });
});
