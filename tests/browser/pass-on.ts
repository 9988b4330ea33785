// A server in front of the real one, so that a test can exchange a file of the pages, or stop answering, without touching it.

import { createServer, type IncomingMessage, request, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';

export interface PassedOn {
  /** Without a slash at the end. */
  readonly url: string;
  /** From now on this is added at the end of the service worker, as a new build would change it. */
  readonly changeServiceWorker: (text: string) => void;
  readonly stop: () => Promise<void>;
}

export async function passOn(to: string): Promise<PassedOn> {
  let added = '';
  const pass = (asked: IncomingMessage, answer: ServerResponse) => {
    const isWorker = asked.url === '/service-worker.js';
    const { 'if-none-match': known, 'if-modified-since': since, ...others } = asked.headers;
    const { 'accept-encoding': _pressed, ...plain } = others;
    const { method } = asked;
    // Of a file that is changed here the real server does not know whether it is new, and nothing is added to a pressed one.
    const headers = isWorker
      ? plain
      : known === undefined
        ? others
        : { ...others, 'if-none-match': known, 'if-modified-since': since };
    const onward = request(`${to}${asked.url ?? '/'}`, { method, headers }, (reply) => {
      const { 'content-length': length, ...rest } = reply.headers;
      answer.writeHead(reply.statusCode ?? 500, {
        ...rest,
        ...(isWorker || length === undefined ? {} : { 'content-length': length }),
      });
      reply.on('data', (chunk) => answer.write(chunk));
      reply.on('end', () => answer.end(isWorker ? added : ''));
    });
    onward.on('error', () => answer.destroy());
    asked.pipe(onward);
  };
  const server = createServer(pass);
  await new Promise<void>((resolve) => server.listen(0, 'localhost', resolve));
  return {
    url: `http://localhost:${(server.address() as AddressInfo).port}`,
    changeServiceWorker: (text) => {
      added = text;
    },
    stop: () =>
      new Promise((resolve) => {
        server.close(() => resolve());
        server.closeAllConnections();
      }),
  };
}
