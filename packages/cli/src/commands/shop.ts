import { EXIT } from '../host/failure.js';
import { type AnyCommand, command, JSON_OPTION } from '../line/command.js';
import { openShop } from '../open/open-shop.js';

interface Options {
  readonly shop: string | undefined;
  readonly json: boolean;
}

export const shop: AnyCommand = command<Options>({
  verb: 'shop',
  argument: {
    name: 'shop',
    describe: 'shop file, - for standard input; the default shop when left out',
    needed: false,
  },
  summary: 'print and check a shop: machines, limits, test strips',
  options: { json: JSON_OPTION },
  examples: [['$0 shop garden-shop.yaml', 'the machines as the program understands them']],
  run: async ({ shop: file, json }, host) => {
    const opened = await openShop(host, file, json);
    if ('exit' in opened) return opened.exit;
    const { shopText } = await import('../print/shop-text.js');
    host.out(
      json ? `${JSON.stringify({ unit: 'mm', ...opened.shop }, null, 2)}\n` : shopText(host, opened.shop),
    );
    return EXIT.done;
  },
});
