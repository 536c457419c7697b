import type { Assembly } from '@tinwright/core';

type Placed = Assembly['placed'][number];

/**
 * The objects of a job, each the pieces that joints and bought parts hold together, in the order of the pieces: what
 * nothing ties to the rest stands beside it, nobody says how far.
 */
export function objectsOf({ placed, seated, bought }: Assembly): readonly (readonly Placed[])[] {
  const objects: Placed[][] = placed.map((p) => [p]);
  const holding = ({ piece }: Placed) => objects.findIndex((o) => o.some((p) => p.piece === piece));
  const tied = [...seated.map(({ from, to }) => [from, to]), ...bought.map(({ holds }) => holds)];
  for (const [first, ...others] of tied)
    for (const other of others) {
      const [a, b] = [holding(first as Placed), holding(other)].toSorted((x, y) => x - y) as [number, number];
      if (a !== b) objects[a]?.push(...objects.splice(b, 1).flat());
    }
  return objects;
}
