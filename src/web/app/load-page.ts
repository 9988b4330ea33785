// Loads the script of a page, and when that fails finds out why: the server is away, or it has other scripts by now.

import { plantAnswer } from '../../contract/plant.ts';
import { get } from './http-client.ts';

/** Answers what `load` answers; throws NoConnectionError when it fails and the server does not answer either. */
export async function loadPage<Page>(load: () => Promise<Page>): Promise<Page> {
  try {
    return await load();
  } catch (error) {
    await get('/api/plant', plantAnswer);
    throw error;
  }
}
