// After something was written: what the server answered before is asked for again. What lies on the device stays.

import type { QueryClient } from '@tanstack/react-query';

/** First word of the key of everything that is kept on the device and not asked of the server. */
export const onDevice = 'on-device';

export function forgetAnswers(client: QueryClient): Promise<void> {
  return client.invalidateQueries({ predicate: ({ queryKey }) => queryKey[0] !== onDevice });
}
