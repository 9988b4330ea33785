// A code that is good once and is passed on by word of mouth or on paper; only its hash is kept.

import { writeBase32 } from './one-time-password.ts';
import type { Plant } from './plant.ts';
import { hashOfToken } from './session.ts';

/** Characters of a code: 80 bits, far from any guessing. House rule. */
const codeLength = 16;

const utf8 = new TextEncoder();

/** Answers a new code in groups of four, without the digits that look like letters. */
export function newOneTimeCode(plant: Plant): string {
  const bytes = plant.hmacSha1(utf8.encode(plant.randomToken()), utf8.encode('one-time code'));
  const groups = writeBase32(bytes).slice(0, codeLength).match(/.{4}/g);
  return (groups ?? []).join('-');
}

/** Answers the hash of a code however it was typed: small letters, without hyphens, 0 for O. */
export function hashOfCode(plant: Plant, typed: string): string {
  const plain = typed.toUpperCase().replaceAll(/[^A-Z0-9]/g, '');
  return hashOfToken(plant, plain.replaceAll('0', 'O').replaceAll('1', 'I').replaceAll('8', 'B'));
}

/** Answers the instant some days after now. */
export function daysFromNow(plant: Plant, days: number): string {
  return new Date(Date.parse(plant.clock()) + days * 86_400_000).toISOString();
}
