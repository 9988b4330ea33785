// Starts the real server as a person would, on a free port, with a fresh ledger in a folder of its own: that of the
// sample plant, or an empty one that waits to be opened.

import { type ChildProcess, execFile, spawn } from 'node:child_process';
import { existsSync, mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';

const program = fileURLToPath(new URL('../../src/cli/jackledger.mjs', import.meta.url));
const webPage = fileURLToPath(new URL('../../dist/web/index.html', import.meta.url));

/** Laying out the sample plant computes some forty calibrations; a slow machine takes its time. */
const longestStartMs = 60_000;

export interface SampleServer {
  /** A folder of its own, removed when it stops. */
  readonly folder: string;
  /** Without a slash at the end. */
  readonly url: string;
  /** What a command of `jackledger` prints when it works on the same ledger. */
  readonly run: (...words: readonly string[]) => Promise<CommandResult>;
  /** Ends the server at once, as a power cut would; its ledger stays. */
  readonly kill: () => Promise<void>;
  /** Starts it again after `kill`, on the same ledger and the same address. */
  readonly restart: () => Promise<void>;
  /** Ends the server and removes its folder. */
  readonly stop: () => Promise<void>;
}

export interface CommandResult {
  readonly exitCode: number;
  readonly stdout: string;
  readonly stderr: string;
}

/** A server on the sample plant, laid out for today. */
export function serveSample(): Promise<SampleServer> {
  return serve((ledger) => ({ words: [], env: { ...process.env, JACKLEDGER_SAMPLE_LEDGER: ledger } }));
}

/** A server on a ledger that does not exist yet, with the one-time code it printed. */
export async function serveNewLedger(): Promise<SampleServer & { readonly openingCode: string }> {
  const start = (ledger: string) => ({ words: ['--ledger', ledger], env: process.env });
  const server = await serve(start, /with the code \S+\n/);
  const code = /with the code (\S+)/.exec(server.said())?.[1];
  if (code === undefined) throw new Error(`The server printed no code. It said:\n${server.said()}`);
  return { ...server, openingCode: code };
}

interface Start {
  readonly words: readonly string[];
  readonly env: NodeJS.ProcessEnv;
}

/** The line each server prints once it can be reached. */
const listening = /listens at (http:\/\/\S+)\n/;

async function serve(
  startOn: (ledger: string) => Start,
  firstReady = listening,
): Promise<SampleServer & { readonly said: () => string }> {
  if (!existsSync(webPage)) throw new Error('The pages are not built: run "npm run build" first.');
  const folder = mkdtempSync(join(tmpdir(), 'jackledger-browser-'));
  const { words, env } = startOn(join(folder, 'plant.ledger'));
  let server = await start(env, [...words, '--port', '0'], firstReady);
  const { url } = server;
  const end = async (signal: NodeJS.Signals) => {
    if (server.process.exitCode !== null || server.process.signalCode !== null) return;
    const ended = new Promise((resolve) => server.process.once('exit', resolve));
    server.process.kill(signal);
    await ended;
  };
  return {
    folder,
    url,
    said: () => server.said(),
    run: (...command) => runCommand(env, command),
    kill: () => end('SIGKILL'),
    restart: async () => {
      server = await start(env, [...words, '--port', new URL(url).port], listening);
    },
    stop: async () => {
      await end('SIGKILL');
      rmSync(folder, { recursive: true, force: true });
    },
  };
}

interface RunningServer {
  readonly process: ChildProcess;
  readonly url: string;
  readonly said: () => string;
}

function start(env: NodeJS.ProcessEnv, words: readonly string[], ready: RegExp): Promise<RunningServer> {
  const child = spawn(process.execPath, [program, 'serve', ...words], { env, stdio: ['ignore', 'pipe', 'pipe'] });
  let said = '';
  return new Promise((resolve, reject) => {
    const giveUp = (why: string) => {
      clearTimeout(timer);
      child.kill('SIGKILL');
      reject(new Error(`The server ${why}. It said:\n${said}`));
    };
    const timer = setTimeout(() => giveUp('did not start in time'), longestStartMs);
    const listen = (chunk: Buffer) => {
      said += chunk.toString();
      const address = listening.exec(said)?.[1];
      if (address === undefined || !ready.test(said)) return;
      clearTimeout(timer);
      resolve({ process: child, url: address.replace(/\/$/, ''), said: () => said });
    };
    child.stdout.on('data', listen);
    child.stderr.on('data', listen);
    child.once('exit', (code) => giveUp(`ended with ${code}`));
  });
}

async function runCommand(env: NodeJS.ProcessEnv, words: readonly string[]): Promise<CommandResult> {
  try {
    const { stdout, stderr } = await promisify(execFile)(process.execPath, [program, ...words], { env });
    return { exitCode: 0, stdout, stderr };
  } catch (error) {
    if (!(error instanceof Error) || !('code' in error) || typeof error.code !== 'number') throw error;
    const { stdout = '', stderr = '' } = error as Error & { stdout?: string; stderr?: string };
    return { exitCode: error.code, stdout, stderr };
  }
}
