// How answers of the server are kept: asked again whenever a page opens or comes back into view, never trusted from before.

import { QueryClient } from '@tanstack/react-query';
import { NoConnectionError } from './http-client.ts';

export function createQueryClient(): QueryClient {
  return new QueryClient({
    defaultOptions: {
      queries: {
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
