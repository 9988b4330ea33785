// The command line: finds the command, gives it what it may use, writes problems, answers the exit code.

import { userInfo } from 'node:os';
import { fileURLToPath } from 'node:url';
import { fail, type Outcome, type Problem } from '../domain/problem.ts';
import type { Command, CommandContext } from './command.ts';
import { backupCommand } from './commands/backup.ts';
import { driftCommand } from './commands/drift.ts';
import { dueCommand } from './commands/due.ts';
import { exportCommand } from './commands/export.ts';
import { fitCommand } from './commands/fit.ts';
import { importCommand } from './commands/import.ts';
import { inviteCommand } from './commands/invite.ts';
import { lookupCommand } from './commands/lookup.ts';
import { restoreCommand } from './commands/restore.ts';
import { rulesCommand } from './commands/rules.ts';
import { serveCommand } from './commands/serve.ts';
import { setClockRightCommand } from './commands/set-clock-right.ts';
import { verifyCommand } from './commands/verify.ts';
import { exitCodeOfProblem, exitCodes } from './exit-code.ts';
import { isFile, listFiles, readTextFile, writeFiles } from './files.ts';
import { openLedger, rebuildLedger, restoreLedger, verifyLedgerFile } from './open-ledger.ts';

const commands: readonly Command[] = [
  fitCommand,
  lookupCommand,
  dueCommand,
  driftCommand,
  rulesCommand,
  importCommand,
  exportCommand,
  verifyCommand,
  backupCommand,
  restoreCommand,
  inviteCommand,
  setClockRightCommand,
  serveCommand,
];

export async function main(words: readonly string[]): Promise<number> {
  const [name, ...args] = words;
  if (name === undefined || name === '--help' || name === 'help') {
    process.stdout.write(writeHelp());
    return name === undefined ? exitCodes.badInput : exitCodes.done;
  }
  const command = commands.find((candidate) => candidate.name === name);
  if (command === undefined) {
    const needed = commands.map((candidate) => candidate.name).join(', ');
    writeProblem({ code: 'usage', message: `There is no command "${name}".`, needed, given: name }, args);
    return exitCodes.badInput;
  }
  if (args.includes('--help')) {
    process.stdout.write(`${command.summary}\n${command.usage}\n`);
    return exitCodes.done;
  }
  const outcome = await runSafely(command, args);
  if (outcome.ok) return outcome.value;
  writeProblem(outcome.problem, args);
  return exitCodeOfProblem(outcome.problem.code);
}

/** A fault of the program is a problem too, so that a script always gets one. */
async function runSafely(command: Command, args: readonly string[]): Promise<Outcome<number>> {
  try {
    return await command.run(contextOfThisProcess(), args);
  } catch (error) {
    const reason = error instanceof Error ? error.message : String(error);
    return fail('internal-error', `The program failed: ${reason}`);
  }
}

function contextOfThisProcess(): CommandContext {
  const warn = (text: string): void => {
    process.stderr.write(text);
  };
  const places = {
    folder: fileURLToPath(new URL('../../calibrations', import.meta.url)),
    sampleLedger: process.env.JACKLEDGER_SAMPLE_LEDGER,
    warn,
  };
  return {
    write: (text) => {
      process.stdout.write(text);
    },
    warn,
    isFile,
    readFile: readTextFile,
    listFiles,
    writeFiles,
    openPlant: (ledger, purpose) => openLedger(places, ledger, purpose),
    verify: (ledger, find) => verifyLedgerFile(places, ledger, find),
    restore: (backup, ledger, why) => restoreLedger(places, backup, ledger, { ...why, userName: userInfo().username }),
    rebuild: rebuildLedger,
    untilStopped: () =>
      new Promise((resolve) => {
        process.once('SIGINT', () => resolve());
        process.once('SIGTERM', () => resolve());
      }),
    userName: userInfo().username,
    webFolder: fileURLToPath(new URL('../../dist/web', import.meta.url)),
  };
}

/** A problem on the standard error, for people; with --json the same as JSON on the standard output, for scripts. */
function writeProblem(problem: Problem, args: readonly string[]): void {
  if (args.includes('--json')) process.stdout.write(`${JSON.stringify({ problem }, null, 2)}\n`);
  const facts = [
    ['where', problem.where],
    ['needed', problem.needed],
    ['given', problem.given],
  ].flatMap(([name, value]) => (value === undefined ? [] : [`  ${name}: ${value}\n`]));
  process.stderr.write(`${problem.message} [${problem.code}]\n${facts.join('')}`);
}

function writeHelp(): string {
  const lines = commands.map(({ name, summary, usage }) => `  ${name.padEnd(8)} ${summary}\n           ${usage}`);
  return [
    'jackledger: calibrations of stressing jacks with their gauges, and the gauge reading for a force.',
    '',
    ...lines,
    '',
    'Exit codes: 0 done, 1 bad input, 2 refused, 3 stop (a release is needed), 4 caution (with --strict).',
    '',
  ].join('\n');
}
