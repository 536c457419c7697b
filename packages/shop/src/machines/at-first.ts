/**
 * What is on a machine when a job begins, unless it is told: the fingers of a leaf brake hang in its beam, all of them side by
 * side; a press has neither punch nor die in it, its tools stand in the rack. Common practice, no source.
 */
export const wholeAtFirst = (machine: 'brake' | 'press'): boolean => machine === 'brake';
