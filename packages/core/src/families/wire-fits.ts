import { type WiredEdge, wireAllowance, wireAllowanceRange } from '../bending/wired-edge.js';
import type { Path } from '../errors/problem.js';
import { reaches } from '../fold/draft/least.js';
import { type Complaint, need } from './limits.js';

/** Complaints of an edge whose metal does not go round its wire, or runs on into the panel. @param edge mm @param thickness mm */
export function wireFits(
  edge: WiredEdge,
  thickness: number,
  path: Path,
  panel: string,
): readonly Complaint[] {
  const [least, most] = wireAllowanceRange(edge.diameter, thickness);
  const takes = wireAllowance(edge);
  return [
    ...need(reaches(takes, least), path, 'the metal would not reach round the wire'),
    ...need(reaches(most, takes), path, `the metal would run on into the ${panel}`),
  ];
}
