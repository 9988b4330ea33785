// How answers of the server are kept: asked again whenever a page opens or comes back into view, never trusted from before.

import { hashKey, QueryClient } from '@tanstack/react-query';
import { dayAsked } from './as-of-day.ts';
import { NoConnectionError } from './http-client.ts';

export function createQueryClient(): QueryClient {
  return new QueryClient({
    defaultOptions: {
      queries: {
        // An answer of a day gone by is never shown for today's, nor the other way round.
        queryKeyHashFn: (key) => hashKey([dayAsked(window.location), ...key]),
        networkMode: 'always',
        staleTime: 0,
        refetchOnWindowFocus: true,
        refetchOnReconnect: true,
        retry: (failures, error) => error instanceof NoConnectionError && failures < 1,
        retryDelay: 500,
      },
      mutations: { networkMode: 'always', retry: false },
    },
  });
}
