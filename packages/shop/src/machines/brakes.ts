import type { Brake, Shop } from './shop.js';

/** The leaf brakes of a shop. */
export type Brakes = Pick<Shop, 'brake' | 'brakes'>;

/** Leaf brakes of a shop, the first one first, each with the id of its station. */
export const brakesOf = ({
  brake,
  brakes,
}: Brakes): readonly { readonly id: string; readonly brake: Brake }[] => [
  ...(brake === null ? [] : [{ id: 'brake', brake }]),
  ...brakes.map((other) => ({ id: `brake ${other.name}`, brake: other })),
];

/** The brake of a station; null where the station is no brake. */
export const brakeAt = (shop: Brakes, station: string): Brake | null =>
  brakesOf(shop).find(({ id }) => id === station)?.brake ?? null;

/** The brake that an operation names, the first one where it names none. */
export const brakeNamed = (shop: Brakes, name: string | null): Brake | null =>
  shop.brakes.find((b) => b.name === name) ?? brakesOf(shop)[0]?.brake ?? null;
