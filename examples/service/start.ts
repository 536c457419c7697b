import { service } from './service.js';

const port = Number(process.argv[2] ?? 8080);
service().listen(port, () => process.stdout.write(`http://localhost:${port}: POST a job as JSON\n`));
