// A look-up over HTTP beside a bare route of the same server that sends the same reply, 10,000 pairs loaded.

import { Agent, request } from 'node:http';
import type { AddressInfo } from 'node:net';
import Fastify from 'fastify';
import { buildApp } from '../../src/http/app.ts';
import { type Benchmark, median } from './benchmark.ts';
import { loadedPlant, pairCount } from './loaded-plant.ts';

const askedPairs = 200;
const requestsPerRound = 3000;
const connections = 16;
const rounds = 5;

function ask(agent: Agent, port: number, path: string): Promise<string> {
  return new Promise((done, failed) => {
    const asked = request({ agent, port, path, host: '127.0.0.1' }, (answer) => {
      let body = '';
      answer.setEncoding('utf8');
      answer.on('data', (chunk) => {
        body += chunk;
      });
      answer.on('end', () => (answer.statusCode === 200 ? done(body) : failed(new Error(body))));
    });
    asked.on('error', failed);
    asked.end();
  });
}

/** Requests per second with a fixed number of connections. */
async function rate(agent: Agent, port: number, pathOf: (index: number) => string): Promise<number> {
  let next = 0;
  const start = performance.now();
  const work = async () => {
    for (let index = next++; index < requestsPerRound; index = next++) await ask(agent, port, pathOf(index));
  };
  await Promise.all(Array.from({ length: connections }, work));
  return requestsPerRound / ((performance.now() - start) / 1000);
}

export const httpLookUp: Benchmark = {
  name: 'http-look-up',
  measure: async () => {
    const plant = await loadedPlant();
    const options = {
      webFolder: null,
      openingCode: null,
      onlyLoopback: true,
      openReading: true,
      tls: null,
      samplePassword: null,
    };
    const app = await buildApp(plant, options);
    await app.listen({ port: 0, host: '127.0.0.1' });
    const port = (app.server.address() as AddressInfo).port;
    const agent = new Agent({ keepAlive: true, maxSockets: connections });
    const tagOf = (index: number) => `P-${(index % askedPairs) * (pairCount / askedPairs) + 1}`;
    const askedAgain = (index: number) => `/api/pairs/${tagOf(index)}/lookup?force=31%20kip`;
    let target = 0;
    const newTarget = (index: number) => {
      target += 1;
      return `/api/pairs/${tagOf(index)}/lookup?force=${(10 + (target % 399_989) / 10_000).toFixed(4)}%20kip`;
    };
    const reply: unknown = JSON.parse(await ask(agent, port, askedAgain(0)));

    const bare = Fastify();
    bare.get('/bare', async () => reply);
    await bare.listen({ port: 0, host: '127.0.0.1' });
    const barePort = (bare.server.address() as AddressInfo).port;

    const shares: { readonly again: number[]; readonly anew: number[] } = { again: [], anew: [] };
    const rates: { readonly again: number[]; readonly anew: number[] } = { again: [], anew: [] };
    // Turn by turn, so that a machine that slows down slows all; the first turn only warms up.
    for (let round = 0; round <= rounds; round += 1) {
      const bareRate = await rate(agent, barePort, () => '/bare');
      const again = await rate(agent, port, askedAgain);
      const anew = await rate(agent, port, newTarget);
      if (round === 0) continue;
      shares.again.push(again / bareRate);
      shares.anew.push(anew / bareRate);
      rates.again.push(again);
      rates.anew.push(anew);
    }
    agent.destroy();
    await app.close();
    await bare.close();
    const figure = (what: string, kind: 'again' | 'anew') => {
      const share = median(shares[kind]) * 100;
      return {
        what: `HTTP look-up beside a bare route, ${pairCount} pairs: ${what}`,
        measured: `${share.toFixed(0)} % (${median(rates[kind]).toFixed(0)}/s)`,
        budget: 'at least 70 %',
        met: share >= 70,
      };
    };
    return [figure('asked again, as pages do every minute', 'again'), figure('a new target each time', 'anew')];
  },
};
