import { FAMILIES } from '@tinwright/core';
import { describe, expect, test } from 'vitest';
import { COMMANDS } from '../../src/commands/index.js';
import { tinwright } from '../host.js';

/** What a shell is offered behind these words; the last one is being written. */
async function offered(...words: readonly string[]): Promise<readonly string[]> {
  const { exit, out, err } = await tinwright('--get-yargs-completions', 'tinwright', ...words);
  expect({ exit, err }).toEqual({ exit: 0, err: '' });
  return out.split('\n').filter((w) => w !== '');
}

const VERBS = COMMANDS.map((c) => c.verb);
const NAMES = FAMILIES.map((f) => f.name);

describe('verbs', () => {
  test.each([
    ['ma', ['make', 'materials']],
    ['che', ['check']],
    ['fold', []],
    ['', VERBS],
  ])('"%s": %j', async (word, verbs) => {
    expect(await offered(word)).toEqual(verbs);
  });

  test('behind an option that takes a value, and that value', async () => {
    expect(await offered('--with', 'row-marker.mjs', 'fam')).toEqual(['families']);
  });

  test('a dash instead: the options every verb takes', async () => {
    expect(await offered('--')).toEqual(['--with', '--version', '--help']);
  });
});

describe('arguments', () => {
  test.each([
    ['families', NAMES],
    ['starter', [...NAMES, 'shop']],
  ])('%s takes a family', async (verb, known) => {
    expect(await offered(verb, '')).toEqual(known);
    expect(await offered(verb, 'op')).toEqual(['open-box']);
  });

  test('strip takes its second step', async () => {
    expect(await offered('strip', '')).toEqual(['fit']);
  });

  test('gauges takes a system', async () => {
    expect(await offered('gauges', 'st')).toEqual(['steel', 'stainless']);
  });

  test.each(['make', 'check', 'explain', 'plan', 'refit', 'template', 'packet'])(
    '%s takes a file: nothing is offered, so the shell offers files',
    async (verb) => {
      expect(await offered(verb, '')).toEqual([]);
      expect(await offered(verb, 'carr')).toEqual([]);
    },
  );
});

describe('options', () => {
  test.each(VERBS)('%s: all of its own and those of every verb', async (verb) => {
    const own = Object.keys(COMMANDS.find((c) => c.verb === verb)?.options ?? {}).map((o) => `--${o}`);
    expect(await offered(verb, '--')).toEqual([...own, '--with', '--version', '--help']);
  });

  test('one begun', async () => {
    expect(await offered('make', 'carrier.yaml', '--d')).toEqual(['--dxf', '--dxf-units']);
  });

  test('one given is not offered again, unless it may be', async () => {
    expect(await offered('refit', 'a.yaml', '--json', '--made', 'end', '--m', '')).not.toContain('--json');
    expect(await offered('refit', 'a.yaml', '--json', '--js')).toEqual([]);
    expect(await offered('refit', 'a.yaml', '--made', 'end', '--ma')).toEqual(['--made']);
  });

  test('where the verb takes no argument, or has it', async () => {
    expect(await offered('materials', '')).toEqual(['--json', '--with', '--version', '--help']);
    expect(await offered('make', 'carrier.yaml', '--out', 'a', '')).toContain('--pictures');
  });
});

describe('values of options', () => {
  test.each([
    ['as words of their own', ['make', 'a.yaml', '--dxf', ''], ['r2000', 'r12']],
    ['begun', ['make', 'a.yaml', '--dxf', 'r1'], ['r12']],
    ['behind =, as zsh has it', ['make', '--dxf=r1'], ['--dxf=r12']],
    ['behind =, as bash cuts it', ['make', '--dxf', '=', 'r1'], ['r12']],
    ['right behind =, as bash cuts it', ['make', '--dxf', '='], ['r2000', 'r12']],
    ['a material', ['bend', '--material', 'stainless-3'], ['stainless-304']],
    ['a rule', ['bend', '--rule', 'd'], ['din-6935']],
    ['a folder: the shell offers files', ['make', 'a.yaml', '--out', ''], []],
    ['a module: the shell offers files', ['--with', ''], []],
  ])('%s', async (_, words, values) => {
    expect(await offered(...words)).toEqual(values);
  });
});

test('the script asks with the flag that is answered, in bash and in zsh, for the words up to the cursor', async () => {
  const { exit, out } = await tinwright('completion');
  expect(exit).toBe(0);
  const asked = [...out.matchAll(/tinwright (--\S+) (.*) 2>\/dev\/null/g)].map(([, flag, words]) => [
    flag,
    words,
  ]);
  expect(asked).toEqual([
    ['--get-yargs-completions', `"\${(@)words[1,CURRENT]}"`],
    ['--get-yargs-completions', `"\${COMP_WORDS[@]:0:COMP_CWORD+1}"`],
  ]);
});
