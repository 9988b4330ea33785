// The part of the verifier that checks approvals: who approved, and whether what was signed is what the ledger holds.
// Rows, chain and hashes are checked by verify.ts. It replays nothing and shares only the bytes of a review hash.

import { canonicalText } from './canonical-bytes.ts';
import type { EntryBodies } from './entry.ts';
import type { Sha256 } from './hash-chain.ts';
import { type ReviewedCalibration, reviewHash } from './review-hash.ts';
import type { StoredRow } from './stored-row.ts';

interface Run {
  readonly hash: string;
  readonly enteredBy: string;
  readonly pair: unknown;
  readonly loadCell: unknown;
}

/** A certificate as the entries so far leave it, as canonical text. */
interface HeldCertificate {
  readonly number: unknown;
  readonly text: string;
}

export interface ApprovalReader {
  /** Takes in a row whose content was found sound, with its parsed body; answers what is wrong with it as an approval. */
  faultOf(row: StoredRow, body: unknown): string | undefined;
}

/** Reads entries in order and remembers of them only what an approval is checked against. */
export function readApprovals(sha256: Sha256): ApprovalReader {
  const runs = new Map<string, Run>();
  const certificates = new Map<string, HeldCertificate[]>();
  /** The entry that holds each part by now, and the parts of each pair. */
  const parts = new Map<unknown, number>();
  const pairs = new Map<unknown, Members>();
  const roles = new Map<string, unknown>();
  const barred = new Set<string>();
  let rules: { readonly hash: string; readonly profile: unknown } | null = null;

  function takeIn(row: StoredRow, body: Members): void {
    const held = certificates.get(row.subject) ?? [];
    switch (row.kind) {
      case 'run-recorded/1':
      case 'run-recorded/2':
      case 'run-recorded/3':
        runs.set(row.subject, { hash: row.hash, enteredBy: row.actor, pair: body.pair, loadCell: body.loadCell });
        return;
      case 'equipment-registered/1':
      case 'equipment-registered/2':
      case 'equipment-amended/1':
        parts.set(row.subject, row.seq);
        return;
      case 'pair-formed/1':
        pairs.set(row.subject, membersOf(body.pair));
        return;
      case 'person-added/1':
      case 'person-changed/1':
        roles.set(row.subject, body.role);
        return;
      case 'person-barred/1':
        barred.add(row.subject);
        return;
      case 'person-readmitted/1':
        barred.delete(row.subject);
        return;
      case 'rules-set/1':
      case 'rules-set/2':
      case 'rules-set/3':
      case 'rules-set/4':
        rules = { hash: row.hash, profile: body.profile };
        return;
      case 'certificate-filed/1':
      case 'certificate-filed/2':
        certificates.set(row.subject, [...held, heldCertificate(membersOf(body.certificate))]);
        return;
      case 'certificate-amended/1': {
        const { number } = membersOf(body.certificate);
        certificates.set(
          row.subject,
          changeLast(held, number, ({ withdrawn }) => withNew(body.certificate, withdrawn)),
        );
        return;
      }
      case 'certificate-withdrawn/1': {
        const { number, reason, lastGood } = body;
        certificates.set(
          row.subject,
          changeLast(held, number, (before) => withNew(before, { reason, lastGood })),
        );
        return;
      }
    }
  }

  function faultOfSigned(row: StoredRow, body: SignedBody, run: Run | undefined): string | undefined {
    const named = `calibration "${row.subject}"`;
    if (run === undefined) return `it approves ${named}, which no entry before it recorded`;
    const { curve, certificate, rulesHash } = body;
    const { jack, gauge } = pairs.get(run.pair) ?? {};
    const held = { jack: parts.get(jack), gauge: parts.get(gauge), loadCell: parts.get(run.loadCell) };
    if (canonicalText(body.parts ?? null) !== canonicalText(held)) {
      return `it approves ${named} for other parts than those the ledger holds`;
    }
    if (rulesHash !== (rules?.hash ?? null)) return `it approves ${named} by other rules than those in force`;
    if (certificate !== null) {
      const filed = typeof run.loadCell === 'string' ? certificates.get(run.loadCell) : undefined;
      const text = canonicalText(certificate ?? null);
      if (!filed?.some((each) => each.text === text)) {
        return `it approves ${named} on a certificate that no entry before it holds for its load cell`;
      }
    }
    const signed = reviewHash(
      {
        runHash: run.hash,
        response: curve?.response,
        degree: curve?.degree,
        coefficients: curve?.coefficients,
        rulesHash,
        rules: rules === null ? body.rules : rules.profile,
        certificate,
        parts: body.parts,
      } as ReviewedCalibration,
      sha256,
    );
    if (signed !== body.reviewed)
      return `what it signs is not run sheet, curve, rules, parts and certificate of ${named}`;
    return undefined;
  }

  return {
    faultOf(row, body) {
      if (!row.kind.startsWith('calibration-approved/')) {
        takeIn(row, membersOf(body));
        return undefined;
      }
      const run = runs.get(row.subject);
      if (run !== undefined && personOf(run.enteredBy) === personOf(row.actor)) {
        return `"${row.actor}" approves calibration "${row.subject}" and also entered it`;
      }
      const role = barred.has(row.actor) ? 'barred' : roles.get(row.actor);
      if (role !== 'quality') {
        return `"${row.actor}" (${String(role ?? 'nobody it names')}) approves calibration "${row.subject}"; quality does`;
      }
      return row.kind === 'calibration-approved/1' ? undefined : faultOfSigned(row, membersOf(body), run);
    },
  };
}

type Members = Readonly<Record<string, unknown>>;
/** The body of an approval as it may be: nothing of it is trusted. */
type SignedBody = Partial<EntryBodies['calibration-approved/2']>;

function membersOf(value: unknown): Members {
  return typeof value === 'object' && value !== null ? (value as Members) : {};
}

/** At the command line of a machine a person acts under this name and their own: one person all the same. */
function personOf(actor: string): string {
  return actor.replace(/^command-line:/, '');
}

function heldCertificate(certificate: Members): HeldCertificate {
  return { number: certificate.number, text: canonicalText(certificate) };
}

function withNew(certificate: unknown, withdrawn: unknown): Members {
  return { ...membersOf(certificate), ...(withdrawn === undefined ? {} : { withdrawn }) };
}

/** Of several certificates of one number the one filed last is changed. */
function changeLast(
  held: readonly HeldCertificate[],
  number: unknown,
  change: (before: Members) => Members,
): HeldCertificate[] {
  const place = held.findLastIndex((each) => each.number === number);
  return held.map((each, index) => (index === place ? heldCertificate(change(JSON.parse(each.text))) : each));
}
