// Takes a job as JSON and streams a ZIP of its cut files back, within limits of size and time.
import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import { JobError, jobReader, planJobAsync } from '@tinwright/core';
import { streamJobFiles } from '@tinwright/files';
import { zipTo } from './zip-to.js';

const LIMITS = { bytes: 65_536, parts: 20, milliseconds: 10_000 };
const read = jobReader(); // keeps the schemas it builds

export const service = (limits = LIMITS): Server =>
  createServer((request, response) => {
    answer(request, response, limits).catch((error: unknown) => refuse(error, response));
  });

async function answer(request: IncomingMessage, response: ServerResponse, limits: typeof LIMITS) {
  const job = read(JSON.parse(await textOf(request, limits.bytes)));
  if (job.parts.length > limits.parts) throw new RangeError(`${limits.parts} parts allowed`);
  const signal = AbortSignal.timeout(limits.milliseconds);
  const plan = await planJobAsync(job, { signal });
  response.writeHead(200, { 'content-type': 'application/zip' });
  await zipTo(response, streamJobFiles(plan, { dxf: 'r2000' }), signal);
}

async function textOf(request: IncomingMessage, most: number): Promise<string> {
  let text = '';
  for await (const chunk of request.setEncoding('utf8')) {
    text += chunk;
    if (text.length > most) throw new RangeError(`a job of ${most} bytes allowed`);
  }
  return text;
}

function refuse(error: unknown, response: ServerResponse) {
  if (response.headersSent) return response.destroy();
  const status = STATUS.find(([kind]) => error instanceof kind)?.[1] ?? 503;
  response.writeHead(status, { 'content-type': 'application/json', connection: 'close' });
  response.end(JSON.stringify(error instanceof JobError ? error : { message: String(error) }));
}

const STATUS = [[JobError, 422] as const, [SyntaxError, 400] as const, [RangeError, 413] as const];
