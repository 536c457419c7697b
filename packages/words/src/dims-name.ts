/** How sizes are printed: millimetres, decimal inches, or inches to the nearest fraction. */
export type DimsName = 'mm' | 'in' | '1/8' | '1/16' | '1/32' | '1/64';
