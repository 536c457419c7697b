import type { Shop } from '@tinwright/shop';
import type { Host } from './console.js';
import type { ExitCode } from './failure.js';
import { withText } from './open-text.js';

/**
 * The shop in a file or from standard input, the default shop without a file; problems are printed with their places.
 * Loads the shop package only when it is called.
 */
export async function openShop(
  host: Host,
  file: string | undefined,
  json: boolean,
): Promise<{ readonly shop: Shop } | { readonly exit: ExitCode }> {
  const { DEFAULT_SHOP, readShop } = await import('@tinwright/shop');
  if (file === undefined) return { shop: DEFAULT_SHOP };
  const opened = await withText(host, file, 'shop', json, readShop);
  return 'exit' in opened ? opened : { shop: opened.answer };
}

/** The shop in a file that was asked for; null without a file. The rest as `openShop`. */
export async function shopAsked(
  host: Host,
  file: string | undefined,
  json: boolean,
): Promise<{ readonly shop: Shop | null } | { readonly exit: ExitCode }> {
  return file === undefined ? { shop: null } : openShop(host, file, json);
}
