/** The queue cannot be used, or what came through it cannot be trusted; `place` is the address without its password. */
export class QueueError extends Error {
  override readonly name = 'QueueError';
  readonly place: string;
  constructor(place: string, message: string) {
    super(message);
    this.place = place;
  }
}
