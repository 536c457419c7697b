/** How fast a table works: mm a minute, seconds a pierce. */
export interface TorchRates {
  readonly speed: number;
  readonly pierce: number;
}

/** Estimated minutes of so many mm of cut and so many pierces. */
export const torchMinutes = (length: number, pierces: number, { speed, pierce }: TorchRates): number =>
  length / speed + (pierces * pierce) / 60;
