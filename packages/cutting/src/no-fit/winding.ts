import type { Tracks } from './convolve.js';

/** Tracks sorted into level bands, so that a point is held against few of them. */
export interface Bands {
  readonly tracks: Tracks;
  readonly bottom: number;
  readonly height: number;
  /** Indices into `tracks`, band by band. */
  readonly members: readonly (readonly number[])[];
}

export function bandsOf(tracks: Tracks): Bands {
  let [bottom, top] = [Infinity, -Infinity];
  for (let k = 1; k < tracks.length; k += 2) {
    bottom = Math.min(bottom, tracks[k] as number);
    top = Math.max(top, tracks[k] as number);
  }
  const count = Math.max(1, tracks.length >> 5);
  const height = (top - bottom) / count || 1;
  const members = Array.from({ length: count }, (): number[] => []);
  const band = (y: number) => Math.max(0, Math.min(count - 1, Math.floor((y - bottom) / height)));
  for (let k = 0; k < tracks.length; k += 4) {
    const [p, q] = [tracks[k + 1] as number, tracks[k + 3] as number];
    for (let i = band(Math.min(p, q)); i <= band(Math.max(p, q)); i++) members[i]?.push(k);
  }
  return { tracks, bottom, height, members };
}

/** How often the tracks wind round a point, counter-clockwise positive. */
export function windingAt({ tracks: t, bottom, height, members }: Bands, x: number, y: number): number {
  let winding = 0;
  for (const k of members[Math.floor((y - bottom) / height)] ?? []) {
    const [y0, y1] = [t[k + 1] as number, t[k + 3] as number];
    if (y0 <= y === y1 <= y) continue;
    const x0 = t[k] as number;
    const left = ((t[k + 2] as number) - x0) * (y - y0) - (x - x0) * (y1 - y0);
    if (y0 <= y && left > 0) winding++;
    else if (y0 > y && left < 0) winding--;
  }
  return winding;
}
