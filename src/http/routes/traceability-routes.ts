// Laboratories, certificates of standards, and the files kept with entries.

import { problemAnswer } from '../../contract/problem.ts';
import {
  fileLimits,
  fileParams,
  keptFileAnswer,
  laboratoryAnswer,
  laboratoryBody,
  standardAnswer,
  standardBody,
} from '../../contract/traceability.ts';
import { fileLaboratory } from '../../service/file-laboratory.ts';
import { fileStandard } from '../../service/file-standard.ts';
import { keepFile, readFile } from '../../service/keep-file.ts';
import type { Plant } from '../../service/plant.ts';
import type { App } from '../app.ts';
import { requirePerson, retryOf } from '../current-person.ts';
import { sendOutcome, sendProblem } from '../errors.ts';

const failures = { '4xx': problemAnswer };

export function traceabilityRoutes(app: App, plant: Plant): void {
  // Only here is a body taken as bytes; what it is is read from them.
  app.addContentTypeParser(
    [...fileLimits.types, 'application/octet-stream'],
    { parseAs: 'buffer' },
    (_request, body, done) => done(null, body),
  );

  app.post(
    '/api/files',
    {
      bodyLimit: fileLimits.bytes,
      schema: {
        summary: 'Keep a file (PDF, PNG or JPEG, sent as the body) that an entry will name',
        response: { 201: keptFileAnswer, ...failures },
      },
    },
    async (request, reply) => {
      const person = await requirePerson(plant, request);
      if (!person.ok) return sendProblem(reply, person.problem);
      const { body } = request;
      const content = Buffer.isBuffer(body) ? new Uint8Array(body) : new Uint8Array();
      return sendOutcome(reply, await keepFile(plant, content, person.value), 201);
    },
  );

  app.get(
    '/api/files/:sha256',
    { schema: { summary: 'A file that an entry names', params: fileParams } },
    async (request, reply) => {
      const refreshed = await plant.refresh();
      if (!refreshed.ok) return sendProblem(reply, refreshed.problem);
      const found = await readFile(plant, request.params.sha256);
      if (!found.ok) return sendProblem(reply, found.problem);
      const { file, content } = found.value;
      // Saved, never shown as a page of ours: nothing in it runs here.
      return reply
        .header('content-type', file.type)
        .header('content-disposition', `attachment; filename*=UTF-8''${encodeURIComponent(file.name)}`)
        .header('content-security-policy', "sandbox; default-src 'none'")
        .send(Buffer.from(content));
    },
  );

  app.post(
    '/api/laboratories',
    {
      schema: { summary: 'File a laboratory', body: laboratoryBody, response: { 201: laboratoryAnswer, ...failures } },
    },
    async (request, reply) => {
      const person = await requirePerson(plant, request);
      if (!person.ok) return sendProblem(reply, person.problem);
      const by = { actor: person.value, retry: retryOf(request) };
      return sendOutcome(reply, await fileLaboratory(plant, request.body, by), 201);
    },
  );

  app.post(
    '/api/standards',
    {
      schema: {
        summary: 'File the certificate of a standard',
        body: standardBody,
        response: { 201: standardAnswer, ...failures },
      },
    },
    async (request, reply) => {
      const person = await requirePerson(plant, request);
      if (!person.ok) return sendProblem(reply, person.problem);
      const by = { actor: person.value, retry: retryOf(request) };
      return sendOutcome(reply, await fileStandard(plant, request.body, by), 201);
    },
  );
}
