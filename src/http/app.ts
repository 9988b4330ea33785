// Builds the HTTP application on an open plant: routes, validation, OpenAPI, headers, the web pages.
// Listening is done by server.ts; which problem becomes which status is in errors.ts.

import { existsSync } from 'node:fs';
import type { IncomingMessage, ServerResponse } from 'node:http';
import { createServer } from 'node:https';
import { join } from 'node:path';
import cookie from '@fastify/cookie';
import fastifyStatic from '@fastify/static';
import swagger from '@fastify/swagger';
import Fastify, {
  type FastifyBaseLogger,
  type FastifyInstance,
  type FastifyServerFactory,
  type RawServerDefault,
} from 'fastify';
import { jsonSchemaTransform, type ZodTypeProvider } from 'fastify-type-provider-zod';
import { z } from 'zod';
import type { Plant } from '../service/plant.ts';
import type { BackupWatch } from '../service/show-backups.ts';
import { hashForUnknownNames } from '../service/sign-in.ts';
import { createSignInThrottle } from '../service/sign-in-throttle.ts';
import { handleErrors, ShapeError, sendProblem } from './errors.ts';
import { refuseOtherSites } from './refuse-other-sites.ts';
import { refuseStrangers } from './refuse-strangers.ts';
import { backupRoutes } from './routes/backup-routes.ts';
import { calibrationRoutes } from './routes/calibration-routes.ts';
import { correctionRoutes } from './routes/correction-routes.ts';
import { deviceRoutes } from './routes/device-routes.ts';
import { doubtRoutes } from './routes/doubt-routes.ts';
import { equipmentRoutes } from './routes/equipment-routes.ts';
import { lookUpRoutes } from './routes/look-up-routes.ts';
import { ownAccountRoutes } from './routes/own-account-routes.ts';
import { peopleRoutes } from './routes/people-routes.ts';
import { plantRoutes } from './routes/plant-routes.ts';
import { rulesRoutes } from './routes/rules-routes.ts';
import { sessionRoutes } from './routes/session-routes.ts';
import { snapshotRoutes } from './routes/snapshot-routes.ts';
import { strandRoutes } from './routes/strand-routes.ts';
import { stressingRoutes } from './routes/stressing-routes.ts';
import { traceabilityRoutes } from './routes/traceability-routes.ts';
import { setHeaders, setSecurityHeaders } from './security-headers.ts';

export type App = FastifyInstance<
  RawServerDefault,
  IncomingMessage,
  ServerResponse,
  FastifyBaseLogger,
  ZodTypeProvider
>;

export interface AppOptions {
  /** Folder of the built web pages; null serves the interface alone. */
  readonly webFolder: string | null;
  /** The one-time code that opens a new ledger; null when none is out. */
  readonly openingCode: string | null;
  /** Whether the server listens on loopback alone and answers to no other name. */
  readonly onlyLoopback: boolean;
  /** Whether anybody may read; otherwise those signed in, and devices with a pass. */
  readonly openReading: boolean;
  /** Certificate and key, as PEM; null listens without TLS. */
  readonly tls: { readonly cert: string; readonly key: string } | null;
  /** The password the sample plant's people share; null on a real plant. */
  readonly samplePassword: string | null;
  /** How the backups by the clock stand; left out where there are none. */
  readonly backups?: BackupWatch | null;
}

/** A larger body is no run sheet and no form of this program. */
const bodyLimit = 1_100_000;

export async function buildApp(plant: Plant, options: AppOptions): Promise<App> {
  const { tls } = options;
  const throttle = createSignInThrottle();
  // Before the first try: making it must not be what tells an unknown name from a known one.
  await hashForUnknownNames(plant);
  const app: App = Fastify<RawServerDefault>({
    bodyLimit,
    logger: { level: process.env.JACKLEDGER_LOG ?? 'error' },
    routerOptions: { maxParamLength: 200 },
    ...(tls === null ? {} : { serverFactory: overTls(tls) }),
    frameworkErrors: (error, request, reply) => {
      // No hook has run where the address could not be read.
      setHeaders(request, reply);
      sendProblem(reply, {
        code: 'not-found',
        message: `This address cannot be read: ${error.message}`,
        given: request.url,
      });
    },
  }).withTypeProvider<ZodTypeProvider>();
  app.setValidatorCompiler(({ schema, httpPart }) => {
    // A field that nobody reads was meant for something: it is refused, not passed over.
    const shape = httpPart === 'body' && schema instanceof z.ZodObject ? schema.strict() : (schema as z.ZodType);
    return (input: unknown) => {
      const parsed = shape.safeParse(input);
      return parsed.success ? { value: parsed.data } : { error: new ShapeError(parsed.error, input) };
    };
  });
  // Answers are built by typed code and checked against their schemas in the tests; here they are only written.
  app.setSerializerCompiler(() => (value) => JSON.stringify(value));
  handleErrors(app);
  // Before whatever refuses, so that a refusal carries them too.
  setSecurityHeaders(app);
  refuseOtherSites(app, options.onlyLoopback);

  await app.register(cookie);
  await app.register(swagger, {
    openapi: {
      openapi: '3.1.0',
      info: {
        title: 'Jackledger',
        version: '1',
        description: 'Calibrations of stressing jacks with their gauges, gauge readings and what falls due.',
      },
    },
    transform: jsonSchemaTransform,
  });
  // Routes belong in a plugin, so that the OpenAPI plugin sees each of them.
  await app.register(async (scope) => {
    if (!options.openReading) refuseStrangers(scope, plant);
    const typed = scope.withTypeProvider<ZodTypeProvider>();
    plantRoutes(typed, plant);
    backupRoutes(typed, plant, options.backups ?? null);
    sessionRoutes(typed, plant, { ...options, throttle });
    peopleRoutes(typed, plant, { ...options, throttle });
    ownAccountRoutes(typed, plant, throttle);
    deviceRoutes(typed, plant, throttle);
    equipmentRoutes(typed, plant);
    calibrationRoutes(typed, plant, throttle);
    correctionRoutes(typed, plant);
    doubtRoutes(typed, plant);
    traceabilityRoutes(typed, plant);
    lookUpRoutes(typed, plant);
    snapshotRoutes(typed, plant);
    rulesRoutes(typed, plant);
    strandRoutes(typed, plant);
    stressingRoutes(typed, plant);
    typed.get('/api/openapi.json', { schema: { hide: true } }, async () => app.swagger());
  });
  if (options.webFolder !== null && existsSync(options.webFolder)) await serveWeb(app, options.webFolder);
  return app;
}

function overTls(tls: NonNullable<AppOptions['tls']>): FastifyServerFactory<RawServerDefault> {
  return (handle) => createServer({ ...tls, minVersion: 'TLSv1.2' }, handle);
}

/** Pages of the web application are one file; its script finds the page from the address. */
async function serveWeb(app: App, webFolder: string): Promise<void> {
  await app.register(fastifyStatic, {
    root: webFolder,
    wildcard: false,
    index: ['index.html'],
    preCompressed: true,
    cacheControl: false,
    setHeaders: (reply, path) => {
      // The name of a file below assets/ holds a hash of what is in it.
      const isNamedByContent = path.startsWith(join(webFolder, 'assets'));
      reply.setHeader('cache-control', `public, max-age=${isNamedByContent ? '31536000, immutable' : '0'}`);
      reply.setHeader('vary', 'accept-encoding');
    },
  });
  app.get('/*', { schema: { hide: true } }, async (request, reply) => {
    if (request.url.startsWith('/api/') || request.url.startsWith('/assets/')) return reply.callNotFound();
    return reply.sendFile('index.html');
  });
}
