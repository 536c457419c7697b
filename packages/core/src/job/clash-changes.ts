import { nearestSize, passing, stepOf } from '../advice/nearest-size.js';
import { assemble, isClash } from '../assembly/assemble.js';
import { boughtNames, type HardwareSpec, type JobHardware } from '../assembly/bought.js';
import { type AssemblyPart, type JointSpec, pieceNames } from '../assembly/types.js';
import type { CoreFinding } from '../errors/core-findings.js';
import type { Change, Finding } from '../errors/finding.js';
import { JobError, type Path } from '../errors/problem.js';
import { LONGEST } from '../schema/kit.js';
import type { Unit } from '../units/length.js';
import { atOnce } from '../units/pieces.js';

const MOST = 3; // clashes that other places are looked for; each takes the object put together some dozen times
const RUNGS = 15; // steps towards the place that works
const FIRST = 1; // mm; where a place is first looked for from one that is 0

/** What of a job an object is put together by. */
export interface JobJoints {
  readonly joints: readonly JointSpec[];
  readonly hardware: JobHardware | null;
  readonly units: Unit;
}

/**
 * Findings of an object, those of pieces in one place with a place in the job that parts them, found by putting the
 * object together with it.
 */
export function withPlaces(
  findings: readonly Finding[],
  parts: readonly AssemblyPart[],
  job: JobJoints,
): readonly Finding[] {
  const clashes = (findings as readonly CoreFinding[]).filter((f) => f.code === 'clash').slice(0, MOST);
  if (clashes.length === 0) return findings;
  const errors = errorsOf(findings);
  const changes = new Map(
    clashes.map((clash) => [clash as Finding, changesFor(clash.values.between, parts, job, errors)]),
  );
  return findings.map((f) => ({ ...f, changes: changes.get(f) ?? f.changes }));
}

/** A place of the job: its value now, and the job with another. */
interface PlaceValue {
  readonly path: Path;
  readonly given: number;
  readonly with: (value: number) => JobJoints;
}

function changesFor(
  between: readonly { readonly piece: string }[],
  parts: readonly AssemblyPart[],
  job: JobJoints,
  errors: number,
): readonly Change[] {
  const pieces = between.map((s) => s.piece);
  const parted = (tried: JobJoints) => {
    try {
      if (isClash(parts, tried, pieces)) return false; // most places end here
      const { findings } = atOnce(assemble(parts, tried));
      return errorsOf(findings) < errors;
    } catch (error) {
      if (error instanceof JobError) return false;
      throw error;
    }
  };
  const budget = { step: stepOf(job.units), rungs: RUNGS, most: LONGEST };
  const found = placesOf(pieces, parts, job).flatMap((place): readonly Change[] => {
    const { path, given } = place;
    const near = nearestSize(
      Math.max(given, FIRST),
      passing((v) => parted(place.with(v))),
      budget,
    );
    return near === null ? [] : [{ path, given, ...near }];
  });
  const far = (c: Change) => ('words' in c ? 0 : Math.abs(c.found - c.given));
  return found.toSorted((a, b) => far(a) - far(b)).slice(0, 1);
}

const errorsOf = (findings: readonly Finding[]) => findings.filter((f) => f.severity === 'error').length;

/** Places by which either piece may be moved without another size: told ones along a site, and those of bought parts. */
function placesOf(
  pieces: readonly string[],
  parts: readonly AssemblyPart[],
  job: JobJoints,
): readonly PlaceValue[] {
  const { joints, hardware } = job;
  const among = (names: readonly string[]) => names.some((name) => pieces.includes(name));
  const ofPart = (name: string) => parts.filter((p) => p.name === name).flatMap(pieceNames);
  const ofJoints = joints.flatMap((joint, i): readonly PlaceValue[] => {
    if (!among([joint.to.piece, ...ofPart(joint.to.piece)])) return [];
    const set = (changed: Partial<JointSpec>): JobJoints => ({
      ...job,
      joints: joints.with(i, { ...joint, ...changed }),
    });
    const { places, shift, path } = joint;
    if (places === null && joint.by !== null) return []; // what is fastened face to face stands where it has to
    if (places === null) {
      const to = (across: number) => set({ shift: { ...shift, across } });
      return [{ path: [...path, 'shift', 'across'], given: shift.across, with: to }];
    }
    return (places.at ?? []).map((given, k) => ({
      path: [...path, 'at', k],
      given,
      with: (v) => set({ places: { ...places, at: (places.at as readonly number[]).with(k, v) } }),
    }));
  });
  const ofRows = (hardware?.rows ?? []).flatMap((row, i) =>
    among(boughtNames(row)) ? ofBought(row, i, job) : [],
  );
  return [...ofJoints, ...ofRows];
}

function ofBought(row: HardwareSpec, i: number, job: JobJoints): readonly PlaceValue[] {
  const { hardware } = job;
  if (hardware === null) return [];
  return row.at.flatMap((place, k) =>
    Object.entries(place).map(([edge, given]): PlaceValue => {
      const moved = (v: number) => ({ ...row, at: row.at.with(k, { ...place, [edge]: v }) });
      return {
        path: [...row.path, 'at', ...(row.at.length === 1 ? [] : [k]), edge],
        given,
        with: (v) => ({ ...job, hardware: { ...hardware, rows: hardware.rows.with(i, moved(v)) } }),
      };
    }),
  );
}
