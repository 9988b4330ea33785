// The plant as a whole: its name and day, what falls due, strands, the ledger and its verification.

import { z } from 'zod';
import { dueAnswer, dueQuery } from '../../contract/due.ts';
import { heldEntryAnswer, ledgerAnswer, verificationAnswer } from '../../contract/ledger.ts';
import { asOfQuery, plantAnswer } from '../../contract/plant.ts';
import { problemAnswer } from '../../contract/problem.ts';
import { fail, type Outcome, succeed } from '../../domain/problem.ts';
import { writeShortHead } from '../../ledger/short-head.ts';
import { lastBackupOf } from '../../service/back-up.ts';
import { type DueFilter, listDue, readStanding, writeDueCsv } from '../../service/list-due.ts';
import { entryLineOf, readEntries } from '../../service/list-entries.ts';
import { hasAdministrator } from '../../service/open-new-plant.ts';
import type { Plant } from '../../service/plant.ts';
import { plantAsOf } from '../../service/plant-as-of.ts';
import { findHead, verifyPlant } from '../../service/verify-ledger.ts';
import type { App } from '../app.ts';
import { sendOutcome, sendProblem } from '../errors.ts';

const failures = { '4xx': problemAnswer };

export function plantRoutes(app: App, plant: Plant): void {
  app.get(
    '/api/plant',
    { schema: { summary: 'The plant', response: { 200: plantAnswer } } },
    async (_request, reply) => {
      const refreshed = await plant.refresh();
      if (!refreshed.ok) return sendProblem(reply, refreshed.problem);
      const { state } = plant;
      return reply.send({
        opened: hasAdministrator(plant),
        name: state.plant?.name ?? '',
        sample: state.plant?.sample ?? false,
        today: plant.today(),
        timeZone: state.plant?.timeZone ?? 'UTC',
        rules: state.rules,
        head: state.head,
        lastBackup: lastBackupOf(plant),
        shortHead: writeShortHead(state.head),
      });
    },
  );

  app.get(
    '/api/due',
    { schema: { summary: 'What falls due', querystring: dueQuery, response: { 200: dueAnswer, ...failures } } },
    async (request, reply) => {
      const reader = await plantAsOf(plant, request.query.asOf);
      if (!reader.ok) return sendProblem(reply, reader.problem);
      const filter = filterOf(reader.value, request.query);
      return filter.ok ? reply.send(listDue(reader.value, filter.value)) : sendProblem(reply, filter.problem);
    },
  );

  app.get(
    '/api/due.csv',
    {
      schema: {
        summary: 'What falls due, as CSV; the last line is a comment with the head of the ledger',
        querystring: dueQuery,
      },
    },
    async (request, reply) => {
      const reader = await plantAsOf(plant, request.query.asOf);
      if (!reader.ok) return sendProblem(reply, reader.problem);
      const filter = filterOf(reader.value, request.query);
      if (!filter.ok) return sendProblem(reply, filter.problem);
      return reply
        .header('content-disposition', `attachment; filename="due-${filter.value.on}.csv"`)
        .type('text/csv; charset=utf-8')
        .serializer(String)
        .send(writeDueCsv(listDue(reader.value, filter.value)));
    },
  );

  app.get(
    '/api/ledger',
    {
      schema: {
        summary: 'A page of entries, newest first: those after a number, or the last ones',
        querystring: asOfQuery.extend({
          after: z.coerce.number().int().min(0).optional(),
          limit: z.coerce.number().int().min(1).max(1000).default(200),
        }),
        response: { 200: ledgerAnswer, ...failures },
      },
    },
    async (request, reply) => {
      const { after, limit, asOf } = request.query;
      const reader = await plantAsOf(plant, asOf);
      if (!reader.ok) return sendProblem(reply, reader.problem);
      const { state, ledger, today } = reader.value;
      const total = (await ledger.head()).seq;
      const entries = await readEntries(reader.value, after ?? Math.max(0, total - limit), limit);
      const lines = entries.map((entry) => entryLineOf(entry, state)).reverse();
      return reply.send({ asOf: today(), entries: lines, total });
    },
  );

  app.get(
    '/api/ledger/verification',
    { schema: { summary: 'Verify the whole ledger', response: { 200: verificationAnswer, '5xx': problemAnswer } } },
    async (_request, reply) => {
      const verified = await verifyPlant(plant);
      if (!verified.ok) return sendProblem(reply, verified.problem);
      const { entries, approvals, files, head, notes } = verified.value;
      return reply.send({
        verified: true,
        entries,
        approvals,
        files,
        head,
        shortHead: writeShortHead(head),
        notes: [...notes],
      });
    },
  );

  app.get(
    '/api/ledger/heads/:head',
    {
      schema: {
        summary: 'Whether the ledger holds the entry that the head on a paper names',
        params: z.object({ head: z.string().max(120) }),
        response: { 200: heldEntryAnswer, ...failures, '5xx': problemAnswer },
      },
    },
    async (request, reply) => sendOutcome(reply, await findHead(plant, request.params.head)),
  );
}

function filterOf(plant: Plant, query: z.output<typeof dueQuery>): Outcome<DueFilter> {
  if (query.asOf !== undefined && query.on !== undefined) {
    const message = 'Ask for a day by what is known now (on) or by what was known then (asOf), not for both.';
    return fail('usage', message, { where: 'asOf', given: query.asOf });
  }
  const standing = query.standing === undefined ? null : readStanding(query.standing);
  if (standing !== null && !standing.ok) return standing;
  return succeed({
    within: query.within === undefined ? null : Number.parseInt(query.within, 10),
    standing: standing?.value ?? null,
    on: query.on ?? plant.today(),
  });
}
