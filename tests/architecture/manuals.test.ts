import { existsSync, readFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { runCommand, temporaryFolder } from '../cli/run-command.ts';
import { root } from './read-imports.ts';

const readme = readFileSync(join(root, 'README.md'), 'utf8');
const developers = readFileSync(join(root, 'DEVELOPERS.md'), 'utf8');
const scripts = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8')).scripts as Record<string, string>;

/** Lines of the shell blocks of a manual, without their comments. */
function commandsOf(manual: string): readonly string[] {
  return [...manual.matchAll(/```sh\n([\s\S]*?)```/g)]
    .flatMap(([, block = '']) => block.split('\n'))
    .map((line) => line.replace(/\s+#.*$/, '').trim())
    .filter((line) => line !== '');
}

/** The words of a command as a shell would split them; double quotes only. */
function wordsOf(command: string): readonly string[] {
  return [...command.matchAll(/"([^"]*)"|(\S+)/g)].map(([, quoted, plain]) => quoted ?? plain ?? '');
}

describe('the README', () => {
  const commands = commandsOf(readme);
  const jackledger = commands.filter((command) => command.startsWith('npx jackledger ') && !command.includes(' serve'));

  it('begins with the two commands, which are scripts of the package', () => {
    expect(commands.slice(0, 2)).toEqual(['npm ci && npm start', 'npm ci && npm test']);
    expect(Object.keys(scripts)).toEqual(expect.arrayContaining(['start', 'test']));
    const continuousIntegration = readFileSync(join(root, '.ci/run'), 'utf8');
    expect(continuousIntegration.split('\n')).toContain('npm ci && npm test');
  });

  it('shows commands of the command line', () => {
    expect(jackledger.length).toBeGreaterThan(4);
  });

  // In the order of the manual, on one ledger: what is exported is rebuilt, what is backed up is restored.
  const folder = temporaryFolder();
  const ownFiles = ['exported-plant', 'plant-backup.ledger', 'calibrations/plant.ledger', 'rebuilt.ledger'];
  it.each(jackledger)('%s does what it says', async (command) => {
    const words = wordsOf(command)
      .slice(2)
      .map((word) => (ownFiles.includes(word) ? join(folder, basename(word)) : word));
    const run = await runCommand(words, { JACKLEDGER_SAMPLE_LEDGER: join(folder, 'sample.ledger') });
    expect(run.exitCode).toBe(0);
    expect(run.output.length).toBeGreaterThan(20);
  });

  it('shows pictures that are there', () => {
    const pictures = [...readme.matchAll(/!\[[^\]]*\]\(([^)]+)\)/g)].map(([, path = '']) => path);
    expect(pictures.length).toBeGreaterThan(0);
    expect(pictures.filter((path) => !existsSync(join(root, path)))).toEqual([]);
  });
});

describe('DEVELOPERS.md', () => {
  it('names only files that are there', () => {
    const named = [...developers.matchAll(/`((?:src|tests|calibrations)\/[^`\s<>]*)`/g)].map(([, path = '']) => path);
    expect(named.length).toBeGreaterThan(40);
    expect(named.filter((path) => !existsSync(join(root, path)))).toEqual([]);
  });

  it('gives a reason for every dependency', () => {
    const { dependencies, devDependencies } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'));
    const missing = Object.keys({ ...dependencies, ...devDependencies }).filter(
      (name) => !developers.includes(name) && !/^@(stdlib|types)\//.test(name),
    );
    expect(missing).toEqual([]);
  });
});
