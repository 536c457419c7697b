import type { AnyCommand } from './command.js';

/** Help of a verb with its examples below: a command on a line of its own, so that it can be copied whole. */
export function withExamples(help: string, { examples }: AnyCommand): string {
  const lines = examples.flatMap(([line, does]) => [`  ${line.replace('$0', 'tinwright')}`, `      ${does}`]);
  return [help, '', 'Examples:', ...lines].join('\n');
}
