// jackledger serve: the web pages and the HTTP interface, on loopback unless told otherwise.

import { fail, succeed } from '../../domain/problem.ts';
import { listen } from '../../http/server.ts';
import { fileNameOf } from '../../service/back-up.ts';
import { hasAdministrator } from '../../service/open-new-plant.ts';
import { scheduleBackups } from '../../service/schedule-backups.ts';
import type { BackupWatch } from '../../service/show-backups.ts';
import { backupOptions, readBackupOptions } from '../backup-options.ts';
import { type Command, readArguments, writeJson } from '../command.ts';
import { exitCodes } from '../exit-code.ts';
import { reachOptions, readReach } from '../reach-options.ts';

const usage =
  'jackledger serve [--ledger FILE] [--port 4180] [--host 127.0.0.1] ' +
  '[--tls-cert FILE --tls-key FILE | --insecure-lan] ' +
  '[--backup-to FOLDER [--backup-every HOURS] [--backup-keep N]] [--json]';

const defaultPort = 4180;

export const serveCommand: Command = {
  name: 'serve',
  usage,
  summary: 'Serve the pages; without a ledger, the sample plant.',
  async run(context, args) {
    const text = { type: 'string' } as const;
    const options = {
      ledger: text,
      port: text,
      host: text,
      ...reachOptions,
      ...backupOptions,
      json: { type: 'boolean' },
    } as const;
    const read = readArguments(usage, args, options, { least: 0, most: 0 });
    if (!read.ok) return read;
    const { ledger, port, json, host = '127.0.0.1' } = read.value.values;
    if (port !== undefined && !/^\d{1,5}$/.test(port)) {
      return fail('usage', `"${port}" is not a port.`, {
        where: '--port',
        needed: 'a number from 0 to 65535',
        given: port,
      });
    }
    const reach = readReach({ ...read.value.values, host }, context.readFile);
    if (!reach.ok) return reach;
    const schedule = readBackupOptions(read.value.values);
    if (!schedule.ok) return schedule;
    const opened = await context.openPlant(ledger, 'create');
    if (!opened.ok) return opened;
    const { plant, file, samplePassword, backups, holdForServer, close } = opened.value;
    const held = holdForServer();
    // Where nothing can be written, nobody writes past this server: look-ups go on.
    const onlyReads = !held.ok && held.problem.code === 'ledger-write-failed';
    if (!held.ok && !onlyReads) {
      await close();
      return held;
    }
    const openingCode = hasAdministrator(plant) ? null : plant.randomToken().slice(0, 10).toUpperCase();
    const backupSchedule =
      schedule.value === null || file === null || backups === null
        ? null
        : { ...schedule.value, ledger: fileNameOf(file) };
    const watch: BackupWatch | null = backupSchedule === null ? null : { schedule: backupSchedule, failure: null };
    const listening = await listen(plant, {
      webFolder: context.webFolder,
      openingCode,
      onlyLoopback: reach.value.onlyLoopback,
      openReading: samplePassword !== null,
      tls: reach.value.tls,
      samplePassword,
      backups: watch,
      port: port === undefined ? defaultPort : Number(port),
      host,
    });
    if (!listening.ok) {
      await close();
      return listening;
    }
    // Before anything is said: who reads the address may stop the server at once.
    const stopped = context.untilStopped();
    const address = listening.value.address.replace('127.0.0.1', 'localhost');
    const isSample = samplePassword !== null;
    if (reach.value.warning !== null) context.warn(reach.value.warning);
    if (!held.ok) context.warn(`${held.problem.message} Nothing can be entered; look-ups go on.\n`);
    if (json) writeJson(context, { address, ledger: file, sample: isSample, openingCode });
    else {
      context.write(`Jackledger listens at ${address}\n`);
      context.write(`Ledger: ${file ?? 'in memory'}${isSample ? ' (sample plant, invented data)' : ''}\n`);
      if (isSample) context.write('Start your own plant: npx jackledger serve --ledger FILE\n');
      if (openingCode !== null) {
        context.write(`This ledger is new. Open it at ${address}/open with the code ${openingCode}\n`);
      }
    }
    const stopBackups =
      backupSchedule === null || backups === null
        ? null
        : scheduleBackups(plant, backups, backupSchedule, (problem) => {
            if (watch !== null) watch.failure = { at: plant.clock(), message: problem.message };
            context.warn(`Backup: ${problem.message} [${problem.code}]\n`);
          });
    await stopped;
    await stopBackups?.();
    await listening.value.close();
    await close();
    return succeed(exitCodes.done);
  },
};
