// The application on the small plant of the tests, asked without a socket, and signing in to it.

import { type App, type AppOptions, buildApp } from '../../src/http/app.ts';
import { type PlantAtWork, password } from '../plant-at-work.ts';

export async function testApp(
  work: PlantAtWork,
  openingCode: string | null = null,
  options: Partial<AppOptions> = {},
): Promise<App> {
  return buildApp(work.plant, {
    webFolder: null,
    openingCode,
    onlyLoopback: true,
    openReading: true,
    tls: null,
    samplePassword: null,
    ...options,
  });
}

/** Answers the cookie header of a person who has signed in. */
export async function signInAs(app: App, person: string): Promise<Record<string, string>> {
  const answer = await app.inject({ method: 'POST', url: '/api/session', payload: { person, password } });
  const cookie = answer.cookies[0];
  if (answer.statusCode !== 200 || cookie === undefined) throw new Error(`${person} could not sign in: ${answer.body}`);
  return { cookie: `${cookie.name}=${cookie.value}` };
}
