// Keeping a file that an entry will name: what it is is read from its content, never taken from the sender's word.
// Entries name it in file-certificate.ts, file-laboratory.ts and file-standard.ts.

import { type AttachedFile, type AttachedFileType, largestFileBytes } from '../domain/equipment/traceability.ts';
import { fail, type Outcome, succeed } from '../domain/problem.ts';
import type { StoredAttachment } from '../storage/attachment-store.ts';
import { type Actor, checkRole } from './perform-action.ts';
import type { Plant } from './plant.ts';

export type KeptFile = Omit<AttachedFile, 'name'>;

/** First bytes of each kind of file. Source: ISO 32000-1 7.5.2, ISO/IEC 15948 5.2, ISO/IEC 10918-1 B.1 (from memory). */
const beginnings: readonly (readonly [AttachedFileType, readonly number[]])[] = [
  ['application/pdf', [0x25, 0x50, 0x44, 0x46, 0x2d]],
  ['image/png', [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]],
  ['image/jpeg', [0xff, 0xd8, 0xff]],
];

/** Answers what kind of file a content is by its first bytes; null for none that is kept. */
export function typeOfContent(content: Uint8Array): AttachedFileType | null {
  return beginnings.find(([, bytes]) => bytes.every((byte, at) => content[at] === byte))?.[0] ?? null;
}

/** Keeps a file for good. Problems: `role-not-allowed`, `file-type-not-allowed`, `body-too-large`. */
export async function keepFile(plant: Plant, content: Uint8Array, actor: Actor): Promise<Outcome<KeptFile>> {
  const allowed = checkRole(actor, 'register-equipment');
  if (!allowed.ok) return allowed;
  if (content.length > largestFileBytes) {
    return fail('body-too-large', `The file has ${content.length} bytes.`, {
      where: 'file',
      needed: `at most ${largestFileBytes} bytes`,
      given: `${content.length} bytes`,
    });
  }
  const type = typeOfContent(content);
  if (type === null) {
    return fail('file-type-not-allowed', 'This is neither a PDF nor a PNG or JPEG image.', {
      where: 'file',
      needed: 'a file whose content is PDF, PNG or JPEG, whatever its name says',
    });
  }
  const sha256 = plant.sha256(content);
  const kept = await plant.attachments.keep({ sha256, type, content });
  return kept.ok ? succeed({ sha256, type, bytes: content.length }) : kept;
}

/** Answers the files an entry is to name, as they are kept. Problems: `unknown-file` for one that was not kept before, `ledger-broken`. */
export async function findFiles(
  plant: Plant,
  named: readonly { readonly sha256: string; readonly name: string }[],
): Promise<Outcome<readonly AttachedFile[]>> {
  const found: AttachedFile[] = [];
  for (const [index, { sha256, name }] of named.entries()) {
    const attachment = await plant.attachments.read(sha256);
    const type = attachment === null ? null : typeOfContent(attachment.content);
    if (attachment === null || type === null) {
      return fail('unknown-file', `The file "${name}" is not here; choose it anew.`, {
        where: `files[${index}]`,
        given: sha256,
      });
    }
    const sound = checkSound(plant, attachment);
    if (!sound.ok) return sound;
    found.push({ sha256, name, type, bytes: attachment.content.length });
  }
  return succeed(found);
}

/** Answers a file that an entry of the plant names, with its name there. Problems: `unknown-file`, `ledger-broken`. */
export async function readFile(
  plant: Plant,
  sha256: string,
): Promise<Outcome<{ readonly file: AttachedFile; readonly content: Uint8Array }>> {
  const { laboratories, standards, certificates } = plant.state;
  const holders = [...laboratories.values(), ...standards.values(), ...[...certificates.values()].flat()];
  const file = holders.flatMap(({ files = [] }) => files).find((each) => each.sha256 === sha256);
  const attachment = file === undefined ? null : await plant.attachments.read(sha256);
  if (file === undefined || attachment === null) {
    return fail('unknown-file', 'No entry of this ledger names this file.', { given: sha256 });
  }
  const sound = checkSound(plant, attachment);
  return sound.ok ? succeed({ file, content: attachment.content }) : sound;
}

/** Answers whether a stored file is still what its name is the hash of. Problem: `ledger-broken`. */
function checkSound(plant: Plant, { sha256, content }: StoredAttachment): Outcome<void> {
  if (plant.sha256(content) === sha256) return succeed(undefined);
  return fail('ledger-broken', `The file ${sha256} was altered since it was kept.`, { given: sha256 });
}
