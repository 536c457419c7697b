import { isSealed, type Key, sealOf } from './seal.js';

/** What a worker has to have, so that it makes the same bytes. */
export interface Needs {
  /** The program and its version. */
  readonly program: string;
  /** Names of the families that the job has parts of. */
  readonly families: readonly string[];
  /** Hashes of the modules that families were loaded from, sorted. */
  readonly modules: readonly string[];
}

/** A share of the work: some rows, and what they have in common. Plain data. */
export interface Task {
  readonly needs: Needs;
  readonly common: unknown;
  readonly rows: readonly unknown[];
}

/** A task as it lies in the queue. */
export interface SealedTask {
  readonly text: string;
  readonly seal: string;
}

export function sealTask(key: Key, id: string, task: Task): SealedTask {
  const text = JSON.stringify(task);
  return { text, seal: sealOf(key, `task ${id}`, text) };
}

/** The task that was sealed; null when it is not the one, or none. */
export function openTask(key: Key, id: string, data: unknown): Task | null {
  const { text, seal } = (data ?? {}) as Partial<Record<keyof SealedTask, unknown>>;
  if (typeof text !== 'string' || !isSealed(key, `task ${id}`, text, seal)) return null;
  try {
    const task = JSON.parse(text) as Task;
    return isTask(task) ? task : null;
  } catch {
    return null;
  }
}

const texts = (list: unknown) => Array.isArray(list) && list.every((t) => typeof t === 'string');

function isTask(task: Task | null): boolean {
  const { program, families, modules } = task?.needs ?? {};
  return typeof program === 'string' && texts(families) && texts(modules) && Array.isArray(task?.rows);
}
