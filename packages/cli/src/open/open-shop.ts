import type { JobContext, JobPlan } from '@tinwright/core';
import type { Making } from '@tinwright/paper';
import type { Shop, ShopPlan } from '@tinwright/shop';
import type { Host } from '../host/console.js';
import type { ExitCode } from '../host/failure.js';
import { withProgress } from '../host/with-progress.js';
import { withText } from './open-text.js';

const ORDERS = 'bend orders';

/** Stands for the shop that comes with the program. */
export const DEFAULT_NAME = 'default';

/**
 * The shop in a file or from standard input, the default shop by its name or without a file; problems are printed with their places.
 * Loads the shop package only when it is called.
 */
export async function openShop(
  host: Host,
  file: string | undefined,
  json: boolean,
): Promise<{ readonly shop: Shop } | { readonly exit: ExitCode }> {
  const { DEFAULT_SHOP, readShop } = await import('@tinwright/shop');
  if (file === undefined || file === DEFAULT_NAME) return { shop: DEFAULT_SHOP };
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

/** What a shop brings to the reading of jobs. */
export async function contextOf(shop: Shop | null): Promise<JobContext> {
  return shop === null ? {} : (await import('@tinwright/shop')).jobContext(shop);
}

/** The job as a shop makes it; null without a shop. */
export async function plannedIn(
  plan: JobPlan,
  shop: Shop | null,
  host: Pick<Host, 'progress'> = {},
): Promise<ShopPlan | null> {
  if (shop === null) return null;
  const { planShop, planShopAsync } = await import('@tinwright/shop');
  if (host.progress === undefined) return planShop(plan, shop);
  return withProgress(host, ORDERS, plan.parts.length, (onProgress) =>
    planShopAsync(plan, shop, { onProgress }),
  );
}

/** How the job is made in the shop, in one that is assumed without it; for what is printed. */
export async function makingIn(host: Host, plan: JobPlan, shop: Shop | null, sets = 1): Promise<Making> {
  const { makingOfAsync } = await import('@tinwright/paper');
  return withProgress(host, ORDERS, plan.parts.length, (onProgress) =>
    makingOfAsync(plan, shop, { sets, onProgress }),
  );
}
