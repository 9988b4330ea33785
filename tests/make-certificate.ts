// A certificate of TLS for localhost and 127.0.0.1, signed by its own key, made anew for each test: nothing of it is kept, and
// no program besides Node is needed. Source of the form: RFC 5280 4.1, RFC 5758 3.2 (from memory); Node reads it back.

import { generateKeyPairSync, sign } from 'node:crypto';

function der(tag: number, ...parts: readonly Uint8Array[]): Buffer {
  const content = Buffer.concat(parts);
  const { length } = content;
  const lengths = length < 128 ? [length] : length < 256 ? [0x81, length] : [0x82, length >> 8, length & 255];
  return Buffer.concat([Buffer.from([tag, ...lengths]), content]);
}

const sequence = (...parts: readonly Uint8Array[]) => der(0x30, ...parts);
const bytes = (hex: string) => Buffer.from(hex, 'hex');
const objectId = (hex: string) => der(0x06, bytes(hex));
const time = (date: Date) => der(0x17, Buffer.from(`${date.toISOString().slice(2, 19).replaceAll(/[-T:]/g, '')}Z`));

const ecdsaWithSha256 = sequence(objectId('2a8648ce3d040302'));
const name = sequence(der(0x31, sequence(objectId('550403'), der(0x0c, Buffer.from('localhost')))));
const subjectAltName = sequence(
  objectId('551d11'),
  der(0x04, sequence(der(0x82, Buffer.from('localhost')), der(0x87, bytes('7f000001')))),
);

function pem(what: string, content: Buffer): string {
  const lines = content.toString('base64').match(/.{1,64}/g) ?? [];
  return `-----BEGIN ${what}-----\n${lines.join('\n')}\n-----END ${what}-----\n`;
}

/** Answers a certificate and its key, as PEM, valid from yesterday for a week. */
export function makeCertificate(): { readonly cert: string; readonly key: string } {
  const { publicKey, privateKey } = generateKeyPairSync('ec', { namedCurve: 'prime256v1' });
  const day = 86_400_000;
  const toBeSigned = sequence(
    der(0xa0, der(0x02, bytes('02'))),
    der(0x02, bytes('01')),
    ecdsaWithSha256,
    name,
    sequence(time(new Date(Date.now() - day)), time(new Date(Date.now() + 7 * day))),
    name,
    publicKey.export({ type: 'spki', format: 'der' }),
    der(0xa3, sequence(subjectAltName)),
  );
  const signature = der(0x03, bytes('00'), sign('sha256', toBeSigned, privateKey));
  return {
    cert: pem('CERTIFICATE', sequence(toBeSigned, ecdsaWithSha256, signature)),
    key: String(privateKey.export({ type: 'pkcs8', format: 'pem' })),
  };
}
