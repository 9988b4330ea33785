// The domain writes American English already, so none of its sentences is written again here.

import type { SentencePair } from '../sentence.ts';

export const sentencesAtTheDesk: readonly SentencePair[] = [];
