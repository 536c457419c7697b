/** Version of the command, as its package has it; written here so that a start need not read a file. */
export const VERSION = '0.1.0';
