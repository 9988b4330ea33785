#!/usr/bin/env node
// Starts the command line: lets Node read TypeScript, then hands over to main.ts.

import { register } from 'tsx/esm/api';

register();
const { main } = await import('./main.ts');
process.exitCode = await main(process.argv.slice(2));
