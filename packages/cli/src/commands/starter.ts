import { type AnyFamily, FAMILIES, RULE_KINDS } from '@tinwright/core';
import { isGroup, quoted, suggestion } from '@tinwright/core/internal';
import type { Host } from '../host/console.js';
import { EXIT, type ExitCode, refuse } from '../host/failure.js';
import { type AnyCommand, command } from '../line/command.js';
import { type CommentedLine, commented } from '../print/commented.js';

interface Options {
  readonly kind: string | undefined;
  readonly schema: boolean;
}

const SCHEMA_FILE = 'tinwright.schema.json';
const SHOP = 'shop';

export const starter: AnyCommand = command<Options>({
  verb: 'starter',
  argument: {
    name: 'kind',
    describe: 'a family, or shop',
    needed: false,
    values: [...FAMILIES.map((f) => f.name), SHOP],
  },
  summary: 'print a commented job or shop to start from, or the schema',
  options: {
    schema: {
      type: 'boolean',
      default: false,
      describe: `print the JSON Schema of job files (save it as ${SCHEMA_FILE}), with shop that of shop files`,
    },
  },
  examples: [
    ['$0 starter hemmed-channel > channel.yaml', 'a job that runs unchanged'],
    ['$0 starter shop > shop.yaml', 'a shop, to put your own machines in'],
    [`$0 starter --schema > ${SCHEMA_FILE}`, 'names and words for your editor'],
  ],
  run,
});

async function run({ kind, schema }: Options, host: Host, families: readonly AnyFamily[]): Promise<ExitCode> {
  if (schema) {
    const { jobJsonSchema, shopJsonSchema } = await import('@tinwright/files');
    const chosen = kind === SHOP ? shopJsonSchema() : jobJsonSchema(families);
    host.out(`${JSON.stringify(chosen, null, 2)}\n`);
    return EXIT.done;
  }
  if (kind === SHOP) {
    const { shopStarter } = await import('../print/shop-starter.js');
    host.out(shopStarter());
    return EXIT.done;
  }
  const chosen = families.find((f) => f.name === kind);
  if (chosen !== undefined) {
    host.out(starterText(chosen));
    return EXIT.done;
  }
  const names = [...families.map((f) => f.name), SHOP];
  const given = kind === undefined ? 'no family' : quoted(kind);
  return refuse(host, false, 'family-unknown', 'starter', `${given} given. ${suggestion(kind ?? '', names)}`);
}

/** A job with one part, every value with its meaning beside it. */
function starterText({ name, describe }: AnyFamily): string {
  const lines = [
    `# yaml-language-server: $schema=${SCHEMA_FILE}`,
    `# For your editor, once: tinwright starter --schema > ${SCHEMA_FILE}`,
    `# ${/^[aeiou]/i.test(describe.title) ? 'An' : 'A'} ${describe.title}. tinwright make THIS-FILE --out FOLDER`,
    ...commented([
      ['units: mm', 'mm or in; a single length may carry its own: "15 1/2 in"'],
      ['stock:', ''],
      ['  material: galvanised-steel', 'see: tinwright materials'],
      ['  thickness: 1.0', 'or gauge: 20; see: tinwright gauges'],
      ['bending:', ''],
      ['  rule: k-factor', `one of ${RULE_KINDS.map((r) => r.name).join(', ')}`],
      ['  k: 0.42', 'leave out for the value of the material'],
      ['  insideRadius: 1.0', 'of every bend; the thickness when left out'],
      ['parts:', ''],
      ['  - name: sample', 'letters, digits, - and _'],
      [`    family: ${name}`, ''],
      ['    quantity: 1', ''],
      ...entries(describe.example, '', '    ', describe.sizes),
    ]),
  ];
  return `${lines.join('\n')}\n`;
}

function entries(
  values: Readonly<Record<string, unknown>>,
  path: string,
  indent: string,
  words: Readonly<Record<string, string>>,
): readonly CommentedLine[] {
  return Object.entries(values).flatMap(([key, value]): readonly CommentedLine[] => {
    const at = path === '' ? key : `${path}.${key}`;
    const group = isGroup(value);
    const own: CommentedLine = [
      `${indent}${key}:${group ? '' : ` ${Array.isArray(value) ? `[${value.join(', ')}]` : String(value)}`}`,
      words[at] ?? '',
    ];
    return group
      ? [own, ...entries(value as Readonly<Record<string, unknown>>, at, `${indent}  `, words)]
      : [own];
  });
}
