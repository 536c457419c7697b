import { writeSync } from 'node:fs';

// looked at before anything else is loaded: of a folder that is gone even the argument parser fails as it loads
try {
  process.cwd();
} catch {
  writeSync(2, 'tinwright: the folder it was started in is gone. Change to one that is there.\n');
  process.exit(2);
}
