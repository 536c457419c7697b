import type { AnyFamily } from '@tinwright/core';
import type { Task } from '@tinwright/queue';
import type { Row } from '../table/row.js';
import { type Common, sizePlanner } from './make-size.js';

/** Works out the sizes of a task and packs them; what the last task had in common is kept, the next is mostly alike. */
export function sizePacker(families: readonly AnyFamily[]): (task: Task) => Promise<Uint8Array> {
  let last: { readonly text: string; readonly planSize: ReturnType<typeof sizePlanner> } | null = null;
  return async ({ common, rows }) => {
    const { pack } = await import('@tinwright/queue');
    const text = JSON.stringify(common);
    if (last?.text !== text) last = { text, planSize: sizePlanner(common as Common, families) };
    const { planSize } = last;
    const items = [];
    for (const row of rows) {
      const { made, files } = await planSize(row as Row);
      items.push({
        said: made,
        files: files.map(({ path, content }) => ({
          path,
          content: typeof content === 'string' ? Buffer.from(content) : content,
        })),
      });
    }
    return pack(items);
  };
}
