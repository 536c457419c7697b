/**
 * A frozen record whose functions stand on its prototype: they work as ever, and stay behind where the record is copied,
 * written as JSON or sent to a worker.
 */
export function withMethods<D extends object, M extends object>(data: D, methods: M): D & M {
  return Object.freeze(Object.assign(Object.create(Object.freeze(methods)), data));
}
