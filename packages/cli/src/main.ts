#!/usr/bin/env node
import { main } from './index.js';

const exit = await main(process.argv.slice(2));
process.exitCode ??= exit; // set already when the answer could not be printed
