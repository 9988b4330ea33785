// Listens: one address, one plant, until it is closed. The application itself is built by app.ts.

import { fail, type Outcome, succeed } from '../domain/problem.ts';
import type { Plant } from '../service/plant.ts';
import { type AppOptions, buildApp } from './app.ts';

export interface Listening {
  readonly address: string;
  close(): Promise<void>;
}

/** Starts the server. Problem: `usage` when the address cannot be had. */
export async function listen(
  plant: Plant,
  options: AppOptions & { readonly port: number; readonly host: string },
): Promise<Outcome<Listening>> {
  const app = await buildApp(plant, options);
  try {
    const address = await app.listen({ port: options.port, host: options.host });
    return succeed({ address, close: () => app.close() });
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
