import { leastRadiusOf, MATERIALS } from '@tinwright/core';
import { plainNumber } from '@tinwright/core/internal';
import { table } from '../host/console.js';
import { EXIT } from '../host/failure.js';
import { type AnyCommand, command, JSON_OPTION } from '../line/command.js';

interface Options {
  readonly json: boolean;
}

export const materials: AnyCommand = command<Options>({
  verb: 'materials',
  summary: 'list sheet materials with their values and sources',
  options: {
    json: JSON_OPTION,
  },
  examples: [['$0 materials', 'density, strength, K and least radius']],
  run: async ({ json }, host) => {
    const rows = MATERIALS.map((m) => ({
      ...m,
      leastRadiusAt1mm: leastRadiusOf(m.leastRadius, 1),
      leastRadiusSource: m.leastRadius.source,
    }));
    if (json)
      host.out(
        `${JSON.stringify(
          rows.map(({ leastRadius: _, ...m }) => m),
          null,
          2,
        )}\n`,
      );
    else {
      const head = ['name', 'kg/m³', 'Rm N/mm²', 'yield', 'E GPa', 'K', 'least R at 1 mm', 'source'];
      const body = rows.map((m) => [
        m.name,
        String(m.density),
        m.tensile.join('-'),
        String(m.yield),
        String(m.modulus),
        plainNumber(m.k, 3),
        `${plainNumber(m.leastRadiusAt1mm, 2)} mm`,
        m.source,
      ]);
      host.out(table([head, ...body]));
    }
    return EXIT.done;
  },
});
