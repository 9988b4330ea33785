// Listens: one address, one plant, until it is closed. The application itself is built by app.ts.

import { createSecureContext } from 'node:tls';
import { fail, type Outcome, succeed } from '../domain/problem.ts';
import type { Plant } from '../service/plant.ts';
import { type App, type AppOptions, buildApp } from './app.ts';

export interface Listening {
  readonly address: string;
  close(): Promise<void>;
}

async function build(plant: Plant, options: AppOptions): Promise<Outcome<App>> {
  if (options.tls === null) return succeed(await buildApp(plant, options));
  try {
    createSecureContext(options.tls);
  } catch (error) {
    const reason = error instanceof Error ? error.message : String(error);
    return fail('usage', `The certificate and key cannot be used: ${reason}`, {
      where: '--tls-cert',
      needed: 'a certificate and its own key, each as PEM',
    });
  }
  return succeed(await buildApp(plant, options));
}

/** Starts the server. Problem: `usage` when the address cannot be had, or the certificate is none. */
export async function listen(
  plant: Plant,
  options: AppOptions & { readonly port: number; readonly host: string },
): Promise<Outcome<Listening>> {
  const built = await build(plant, options);
  if (!built.ok) return built;
  const app = built.value;
  try {
    const address = await app.listen({ port: options.port, host: options.host });
    // A server of our own making is not known to Fastify as one over TLS.
    const spoken = options.tls === null ? address : address.replace(/^http:/, 'https:');
    return succeed({ address: spoken, close: () => app.close() });
  } catch (error) {
    await app.close();
    const reason = error instanceof Error ? error.message : String(error);
    return fail('usage', `The server cannot listen at ${options.host}:${options.port}: ${reason}`, {
      where: '--port',
      needed: 'a free port',
      given: String(options.port),
    });
  }
}
