import { asFile, isDeviceName } from '@tinwright/core/internal';

const LONGEST = 80; // characters; some systems take a name of 255 bytes at most

/**
 * Where files of sheets stand, without their endings: by the names of the sheets, what can be no name of a file as a dash,
 * and a number where another is called so, capitals or not.
 */
export function sheetPaths(names: readonly string[]): readonly string[] {
  const taken = new Set<string>();
  return names.map((name) => {
    const plain = [...name.replaceAll(/[^\p{L}\p{M}\p{N}._-]+/gu, '-')].slice(0, LONGEST).join('');
    const [before = ''] = plain.split('.');
    const safe = isDeviceName(before) ? `-${plain}` : plain;
    let file = safe;
    for (let i = 2; taken.has(asFile(file)); i++) file = `${safe}-${i}`;
    taken.add(asFile(file));
    return `nests/${file}`;
  });
}
