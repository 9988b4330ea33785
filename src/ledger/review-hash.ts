// What an approver signs: one hash over exactly the sheet, curve, rules, parts and certificate on the screen.
// The approval that carries it is `calibration-approved` in entry.ts.

import type { Certificate } from '../domain/equipment/equipment.ts';
import type { RuleProfile } from '../domain/rules/rule-profile.ts';
import { canonicalText } from './canonical-bytes.ts';
import type { Sha256 } from './hash-chain.ts';

/** Numbers of the entries that hold the parts a calibration is judged against. */
export interface ReviewedParts {
  readonly jack: number;
  readonly gauge: number;
  readonly loadCell: number;
}

export interface ReviewedCalibration {
  /** Hash of the run-recorded entry; through it the sheet and all that went before. */
  readonly runHash: string;
  readonly response: 'reading' | 'force';
  readonly degree: number;
  /** In the units of the sheet, ascending powers. */
  readonly coefficients: readonly number[];
  /** Hash of the rules-set entry in force; null while the shipped profile stands. */
  readonly rulesHash: string | null;
  readonly rules: RuleProfile;
  /** The certificate of the load cell valid on the calibration day; null where there was none. */
  readonly certificate: Certificate | null;
  readonly parts: ReviewedParts;
}

/**
 * Answers the hash of what was reviewed: SHA-256 of the UTF-8 bytes of the RFC 8785 text of
 * {"certificate","coefficients","degree","parts","reviewed":"calibration/2","rules","rulesHash","runHash","response"}, members sorted.
 * The constant member keeps it from ever being taken for the hash of an entry. A later curve, rule, part or certificate gives another hash,
 * which is the problem `review-stale` when an approval still names the old one.
 */
export function reviewHash(reviewed: ReviewedCalibration, sha256: Sha256): string {
  const { runHash, response, degree, coefficients, rulesHash, rules, certificate, parts } = reviewed;
  const text = canonicalText({
    reviewed: 'calibration/2',
    runHash,
    response,
    degree,
    coefficients,
    rulesHash,
    rules,
    certificate,
    parts,
  });
  return sha256(new TextEncoder().encode(text));
}
