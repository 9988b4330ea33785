// What every ledger store promises, run over each of them. What only a SQLite file can do is in sqlite-ledger.test.ts.

import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { AnyLedgerEntry, NewEntry } from '../../src/ledger/entry.ts';
import { genesisHash } from '../../src/ledger/hash-chain.ts';
import { verifyLedger } from '../../src/ledger/verify.ts';
import type { CredentialChange } from '../../src/storage/credential-store.ts';
import type { LedgerStore } from '../../src/storage/ledger-store.ts';
import { sha256 } from '../../src/storage/sha256.ts';
import type { Storage } from '../../src/storage/storage.ts';
import { outcomeValue } from '../outcome-value.ts';
import { collect } from './collect.ts';
import {
  approval,
  holdPlaced,
  instant,
  plantBeforeCalibration,
  plantWithEveryKind,
  runRecorded,
} from './plant-entries.ts';

export function ledgerStoreContract(name: string, open: () => Storage | Promise<Storage>): void {
  describe(`the ledger store ${name}`, () => {
    let storage: Storage;
    let ledger: LedgerStore;

    beforeEach(async () => {
      storage = await open();
      ledger = storage.ledger;
    });
    afterEach(() => storage.close());

    const verified = () => verifyLedger(storage.rows.readStoredRows(0), sha256);

    it('begins with no entry and the hash of 64 zeros', async () => {
      expect(await ledger.head()).toEqual({ seq: 0, hash: genesisHash });
      expect(await collect(ledger.readEntries(0))).toEqual([]);
      expect(await verified()).toMatchObject({ ok: true, value: { entries: 0, notes: [] } });
    });

    it('gives back what was appended, numbered and chained, and it verifies', async () => {
      const entries = plantWithEveryKind();
      const appended = outcomeValue(await ledger.append({ entries, expectedSeq: 0 }));
      expect(appended.map(({ seq }) => seq)).toEqual(entries.map((_, index) => index + 1));
      expect(appended.map(({ at, actor, kind, subject, body }) => ({ at, actor, kind, subject, body }))).toEqual(
        entries,
      );
      expect(appended.map(({ previousHash }) => previousHash)).toEqual([
        genesisHash,
        ...appended.slice(0, -1).map(({ hash }) => hash),
      ]);
      expect(await collect(ledger.readEntries(0))).toEqual(appended);
      const last = appended.at(-1);
      expect(await ledger.head()).toEqual({ seq: last?.seq, hash: last?.hash });
      expect(await verified()).toMatchObject({ ok: true, value: { entries: entries.length } });
    });

    it('reads only what comes after a sequence number', async () => {
      await ledger.append({ entries: plantWithEveryKind(), expectedSeq: 0 });
      const all = await collect(ledger.readEntries(0));
      expect(await collect(ledger.readEntries(5))).toEqual(all.slice(5));
      expect(await collect(ledger.readEntries(all.length))).toEqual([]);
    });

    it('reads a ledger of several pages without a gap', async () => {
      const entries = Array.from({ length: 1234 }, (_, index) => holdPlaced(index, `reason ${index}`));
      await ledger.append({ entries, expectedSeq: 0 });
      expect((await collect(ledger.readEntries(0))).map(({ seq }) => seq)).toEqual(
        entries.map((_, index) => index + 1),
      );
    });

    it('keeps any text a person can type', async () => {
      const reason = 'línea 1\nline 2\t"quoted" \\ \u0000 \u2028 \u{1f600} \ufffd';
      await ledger.append({ entries: [{ ...holdPlaced(0, reason, reason), actor: reason }], expectedSeq: 0 });
      expect(await collect(ledger.readEntries(0))).toMatchObject([
        { actor: reason, subject: reason, body: { reason } },
      ]);
      expect(await verified()).toMatchObject({ ok: true });
    });

    it('answers an append with exactly what a later reader sees, also for undefined members and minus zero', async () => {
      const entry: NewEntry = runRecorded(0, 'CAL-1');
      if (entry.kind !== 'run-recorded/1') throw new Error('Another kind.');
      const sheet = { ...entry.body.sheet, temperatureCelsius: -0, note: undefined };
      const loose = { ...entry, body: { ...entry.body, sheet } } as unknown as NewEntry;
      const appended = outcomeValue(await ledger.append({ entries: [loose], expectedSeq: 0 }));
      expect(appended).toStrictEqual(await collect(ledger.readEntries(0)));
    });

    it('refuses to append on a head that moved on, and stores nothing', async () => {
      await ledger.append({ entries: [holdPlaced(0, 'first')], expectedSeq: 0 });
      const late = await ledger.append({ entries: [holdPlaced(1, 'second')], expectedSeq: 0 });
      expect(late).toMatchObject({ ok: false, problem: { code: 'ledger-conflict' } });
      const early = await ledger.append({ entries: [holdPlaced(1, 'second')], expectedSeq: 2 });
      expect(early).toMatchObject({ ok: false, problem: { code: 'ledger-conflict' } });
      expect(await ledger.head()).toMatchObject({ seq: 1 });
    });

    it('lets one of two actions that were decided on the same head through', async () => {
      const both = await Promise.all([
        ledger.append({ entries: [holdPlaced(0, 'one')], expectedSeq: 0 }),
        ledger.append({ entries: [holdPlaced(0, 'other')], expectedSeq: 0 }),
      ]);
      expect(both.filter(({ ok }) => ok)).toHaveLength(1);
      expect(await ledger.head()).toMatchObject({ seq: 1 });
    });

    it('stores none of an action when its last entry cannot be kept', async () => {
      const half = { ...holdPlaced(1, 'half a surrogate pair: \ud83d') };
      const refused = await ledger.append({ entries: [holdPlaced(0, 'sound'), half], expectedSeq: 0 });
      expect(refused).toMatchObject({ ok: false, problem: { code: 'field-invalid' } });
      expect(await ledger.head()).toMatchObject({ seq: 0 });
    });

    it('stores neither entries nor answer when the answer cannot be made', async () => {
      const answer = () => {
        throw new Error('no answer');
      };
      const key = { key: 'k-1', requestHash: 'r' };
      const append = ledger.append({
        entries: [holdPlaced(0, 'x')],
        expectedSeq: 0,
        idempotency: { ...key, answer },
      });
      await expect(append).rejects.toThrow('no answer');
      expect(await ledger.head()).toMatchObject({ seq: 0 });
      expect(await ledger.rememberedAnswer(key)).toEqual({ ok: true, value: null });
    });

    it('refuses an approval by the person who entered the run, with all that came with it', async () => {
      await ledger.append({
        entries: [...plantBeforeCalibration(), runRecorded(11, 'CAL-1', 'quinn')],
        expectedSeq: 0,
      });
      const before = await ledger.head();
      const refused = await ledger.append({
        entries: [holdPlaced(12, 'with it'), approval(13, 'CAL-1', 'quinn')],
        expectedSeq: before.seq,
      });
      expect(refused).toMatchObject({ ok: false, problem: { code: 'approver-is-enterer' } });
      expect(await ledger.head()).toEqual(before);
      const other = await ledger.append({ entries: [approval(13, 'CAL-1', 'ada')], expectedSeq: before.seq });
      expect(other).toMatchObject({ ok: true });
    });

    it('refuses run and approval by one person in one action', async () => {
      const entries = [runRecorded(0, 'CAL-1', 'quinn'), approval(1, 'CAL-1', 'quinn')];
      const refused = await ledger.append({ entries, expectedSeq: 0 });
      expect(refused).toMatchObject({ ok: false, problem: { code: 'approver-is-enterer' } });
      expect(await ledger.head()).toMatchObject({ seq: 0 });
    });

    it('answers a retry as the first time and appends nothing', async () => {
      const key = { key: 'k-1', requestHash: 'r-1' };
      const entries = [holdPlaced(0, 'one'), holdPlaced(1, 'two')];
      const answer = (appended: readonly AnyLedgerEntry[]) => JSON.stringify(appended.map(({ seq }) => seq));
      expect(await ledger.rememberedAnswer(key)).toEqual({ ok: true, value: null });
      const first = await ledger.append({ entries, expectedSeq: 0, idempotency: { ...key, answer } });
      await ledger.append({ entries: [holdPlaced(2, 'three')], expectedSeq: 2 });
      const retry = await ledger.append({ entries, expectedSeq: 0, idempotency: { ...key, answer } });
      expect(first).toMatchObject({ ok: true });
      expect(retry).toEqual(first);
      expect(await ledger.head()).toMatchObject({ seq: 3 });
      expect(await ledger.rememberedAnswer(key)).toEqual({ ok: true, value: '[1,2]' });
    });

    it('refuses a key that comes back with another request', async () => {
      const answer = () => '{}';
      await ledger.append({
        entries: [holdPlaced(0, 'one')],
        expectedSeq: 0,
        idempotency: { key: 'k-1', requestHash: 'r-1', answer },
      });
      const reused = await ledger.append({
        entries: [holdPlaced(1, 'two')],
        expectedSeq: 1,
        idempotency: { key: 'k-1', requestHash: 'r-2', answer },
      });
      expect(reused).toMatchObject({ ok: false, problem: { code: 'key-reused' } });
      expect(await ledger.rememberedAnswer({ key: 'k-1', requestHash: 'r-2' })).toMatchObject({
        ok: false,
        problem: { code: 'key-reused' },
      });
      expect(await ledger.head()).toMatchObject({ seq: 1 });
    });

    it('remembers nothing of an action that was refused', async () => {
      const idempotency = { key: 'k-1', requestHash: 'r-1', answer: () => '{}' };
      await ledger.append({ entries: [holdPlaced(0, 'one')], expectedSeq: 7, idempotency });
      expect(await ledger.rememberedAnswer(idempotency)).toEqual({ ok: true, value: null });
    });

    describe('credentials', () => {
      const session = {
        tokenHash: 't',
        person: 'tess',
        createdAt: instant(0),
        expiresAt: instant(3600),
        lastUsedAt: instant(0),
      };
      const other = { ...session, tokenHash: 'u', lastUsedAt: instant(100), expiresAt: instant(4000) };
      const invitation = { person: 'nora', codeHash: 'c', expiresAt: instant(100) };
      const secondFactor = { person: 'tess', secret: 'ABC', confirmedAt: null, lastStep: -1 };
      const pass = { device: 'bed-1', codeHash: 'd', codeExpiresAt: instant(100), tokenHash: null };
      const change = (...changes: CredentialChange[]) => storage.credentials.change(changes);
      const used = { ok: false, problem: { code: 'sign-in-refused' } };

      it('keeps passwords and sessions apart from the entries', async () => {
        const { credentials } = storage;
        expect(await credentials.passwordHash('tess')).toBeNull();
        await change({ change: 'set-password', person: 'tess', hash: 'hash 1' });
        await change({ change: 'set-password', person: 'tess', hash: 'hash 2' });
        expect(await credentials.passwordHash('tess')).toBe('hash 2');
        expect(await credentials.session('t')).toBeNull();
        await change({ change: 'add-session', session });
        await expect(change({ change: 'add-session', session })).rejects.toThrow();
        expect(await credentials.session('t')).toEqual(session);
        await change({ change: 'remove-session', tokenHash: 't' });
        await change({ change: 'remove-session', tokenHash: 't' });
        expect(await credentials.session('t')).toBeNull();
        expect(await ledger.head()).toMatchObject({ seq: 0 });
      });

      it('ends the sessions that are past, and those of one person but the one named', async () => {
        const { credentials } = storage;
        const hers = { ...session, tokenHash: 'v', person: 'ada' };
        await change(...[session, other, hers].map((added) => ({ change: 'add-session', session: added }) as const));
        await change({ change: 'use-session', tokenHash: 'v', at: instant(200) });
        expect(await credentials.session('v')).toEqual({ ...hers, lastUsedAt: instant(200) });
        await change({ change: 'remove-sessions-of', person: 'tess', exceptTokenHash: 'u' });
        expect(await credentials.session('t')).toBeNull();
        expect(await credentials.session('u')).toEqual(other);
        await change({ change: 'remove-sessions-past', expiredAt: instant(3600), unusedSince: instant(50) });
        expect(await credentials.session('v')).toBeNull();
        expect(await credentials.session('u')).toEqual(other);
        await change({ change: 'remove-sessions-past', expiredAt: instant(3600), unusedSince: instant(100) });
        expect(await credentials.session('u')).toBeNull();
        await change({ change: 'add-session', session }, { change: 'add-session', session: other });
        await change({ change: 'remove-sessions-of', person: 'tess', exceptTokenHash: null });
        expect([await credentials.session('t'), await credentials.session('u')]).toEqual([null, null]);
      });

      it('takes an invitation, a one-time password and the code of a device once', async () => {
        const { credentials } = storage;
        await change(
          { change: 'set-invitation', invitation },
          { change: 'set-second-factor', secondFactor },
          { change: 'set-device-pass', pass },
        );
        expect(await credentials.invitation('nora')).toEqual(invitation);
        expect(await credentials.secondFactor('tess')).toEqual(secondFactor);
        expect(await credentials.devicePass('bed-1')).toEqual(pass);
        const uses: readonly CredentialChange[] = [
          { change: 'use-invitation', person: 'nora', codeHash: 'c' },
          { change: 'use-one-time-password', person: 'tess', step: 7, at: instant(5) },
          { change: 'use-device-code', device: 'bed-1', codeHash: 'd', tokenHash: 'token' },
        ];
        for (const use of uses) {
          expect(await change(use), use.change).toEqual({ ok: true, value: null });
          expect(await change(use), use.change).toMatchObject(used);
        }
        expect(await credentials.invitation('nora')).toBeNull();
        expect(await credentials.secondFactor('tess')).toEqual({
          ...secondFactor,
          confirmedAt: instant(5),
          lastStep: 7,
        });
        const given = { ...pass, codeHash: null, tokenHash: 'token' };
        expect(await credentials.devicePassOfToken('token')).toEqual(given);
        await change(
          { change: 'remove-second-factor', person: 'tess' },
          { change: 'remove-device-pass', device: 'bed-1' },
        );
        expect(await credentials.secondFactor('tess')).toBeNull();
        expect(await credentials.devicePassOfToken('token')).toBeNull();
        expect(
          await change({ change: 'use-one-time-password', person: 'tess', step: 9, at: instant(5) }),
        ).toMatchObject(used);
      });

      it('makes all changes or none', async () => {
        const setPassword = { change: 'set-password', person: 'tess', hash: 'hash' } as const;
        const refused = await change(setPassword, { change: 'use-invitation', person: 'nora', codeHash: 'c' });
        expect(refused).toMatchObject(used);
        expect(await storage.credentials.passwordHash('tess')).toBeNull();
      });

      it('changes with the entries of one action, or not at all', async () => {
        const setPassword = { change: 'set-password', person: 'tess', hash: 'hash' } as const;
        const use = { change: 'use-invitation', person: 'nora', codeHash: 'c' } as const;
        const entries = [holdPlaced(0, 'one')];
        const late = await ledger.append({ entries, expectedSeq: 3, besides: [setPassword] });
        expect(late).toMatchObject({ problem: { code: 'ledger-conflict' } });
        expect(await ledger.append({ entries, expectedSeq: 0, besides: [setPassword, use] })).toMatchObject(used);
        expect(await storage.credentials.passwordHash('tess')).toBeNull();
        expect(await ledger.head()).toMatchObject({ seq: 0 });
        const idempotency = { key: 'k-1', requestHash: 'r-1', answer: () => '{}' };
        await ledger.append({ entries, expectedSeq: 0, besides: [setPassword], idempotency });
        expect(await storage.credentials.passwordHash('tess')).toBe('hash');
        await ledger.append({ entries, expectedSeq: 0, besides: [{ ...setPassword, hash: 'again' }], idempotency });
        expect(await storage.credentials.passwordHash('tess')).toBe('hash');
        expect(await ledger.head()).toMatchObject({ seq: 1 });
      });
    });
  });
}
