import type { Cover, CoverSolver } from '@tinwright/cutting';
import type { Highs } from 'highs';

/**
 * A solver of linear programmes for `planShear`: HiGHS, built for WebAssembly. It is loaded when this is called and not
 * before; the same programme has the same answer every time.
 */
export async function loadCoverSolver(): Promise<CoverSolver> {
  // its types take a module of Node's old kind for its default, what runs is a module of the new kind
  const loaded = (await import('highs')) as unknown as { readonly default: () => Promise<Highs> };
  const highs = await loaded.default();
  return (cover) => {
    const model = highs.createModel(modelOf(cover, highs));
    try {
      model.options.set({ output_flag: false });
      model.run();
      if (model.getModelStatus() !== highs.constants.modelStatus.optimal) return null;
      const { colValue, rowDual } = model.getSolution();
      return { amounts: colValue, prices: rowDual };
    } finally {
      model.dispose();
    }
  };
}

function modelOf({ least, columns }: Cover, { infinity, constants }: Pick<Highs, 'infinity' | 'constants'>) {
  const starts = [0];
  for (const { rows } of columns) starts.push((starts.at(-1) as number) + rows.length);
  const [numRows, numCols] = [least.length, columns.length];
  return {
    numRows,
    numCols,
    sense: constants.objectiveSense.minimize,
    colCost: columns.map((c) => c.cost),
    colLower: columns.map(() => 0),
    colUpper: columns.map(() => infinity),
    rowLower: least,
    rowUpper: least.map(() => infinity),
    matrix: {
      format: 'csc' as const,
      numRows,
      numCols,
      starts,
      indices: columns.flatMap((c) => c.rows),
      values: columns.flatMap((c) => c.amounts),
    },
  };
}
