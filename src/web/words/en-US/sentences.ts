// The domain and the server write American English already, so nothing of theirs is written again here.

import type { SentenceTemplates } from '../sentence.ts';

export const sentences: SentenceTemplates = { templates: [], problems: {} };
