/** A way that is certainly out of a machine, mm. */
export const OUT = 2000;
