import { GAUGE_SYSTEMS, type GaugeSystem, MM_PER_INCH } from '@tinwright/core';
import { plainNumber, quoted, suggestion } from '@tinwright/core/internal';
import { type Host, table } from '../host/console.js';
import { EXIT, type ExitCode, refuse } from '../host/failure.js';
import { type AnyCommand, command, JSON_OPTION } from '../line/command.js';

interface Options {
  readonly system: string | undefined;
  readonly json: boolean;
}

export const gauges: AnyCommand = command<Options>({
  verb: 'gauges',
  argument: {
    name: 'system',
    describe: 'steel, galvanised, stainless or aluminium',
    needed: false,
    values: GAUGE_SYSTEMS.map((s) => s.name),
  },
  summary: 'list gauge numbers and what they mean in four systems',
  options: {
    json: JSON_OPTION,
  },
  examples: [['$0 gauges galvanised', 'one system, with its source']],
  run,
});

async function run({ system, json }: Options, host: Host): Promise<ExitCode> {
  const chosen = system === undefined ? GAUGE_SYSTEMS : GAUGE_SYSTEMS.filter((s) => s.name === system);
  if (chosen.length === 0) {
    const names = GAUGE_SYSTEMS.map((s) => s.name);
    return refuse(
      host,
      json,
      'gauge-system',
      'gauges',
      `${quoted(system ?? '')} given. ${suggestion(system ?? '', names)}`,
    );
  }
  if (json) host.out(`${JSON.stringify(chosen, null, 2)}\n`);
  else
    host.out(
      `${table(gaugeRows(chosen))}${chosen.map((s) => `${s.name}: ${s.title}. ${s.source}\n`).join('')}`,
    );
  return EXIT.done;
}

function gaugeRows(systems: readonly GaugeSystem[]): readonly (readonly string[])[] {
  const numbers = Object.keys(systems[0]?.inches ?? {});
  const cell = (inches: number | undefined) =>
    inches === undefined ? '' : `${plainNumber(inches, 6)} in = ${plainNumber(inches * MM_PER_INCH, 3)} mm`;
  return [
    ['gauge', ...systems.map((s) => s.name)],
    ...numbers.map((n) => [n, ...systems.map((s) => cell(s.inches[Number(n)]))]),
  ];
}
