import { createPrivateKey, createPublicKey, generateKeyPairSync, sign, verify } from 'node:crypto';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { isSignatureOf, publicKeyOf, signBytes } from './ed25519.ts';
import type { Envelope } from './envelope.ts';
import { headsOf } from './heads.ts';
import { fromHex, toHex } from './hex.ts';
import { type SignatureBody, type Statement, signatureProblems, signStatement } from './signature.ts';
import { appended, testedBook } from './testing/appended.ts';
import { verifySigned } from './verify-signed.ts';

/** RFC 8032, Edwards-Curve Digital Signature Algorithm, 2017, section 7.1: test 1 (read), tests 2 and 3 (memory; the runtime’s own implementation agrees, see below). */
const published = [
  {
    secret: '9d61b19deffd5a60ba844af492ec2cc44449c5697b326919703bac031cae7f60',
    key: 'd75a980182b10ab7d54bfed3c964073a0ee172f3daa62325af021a68f707511a',
    message: '',
    signature:
      'e5564300c360ac729086e2cc806e828a84877f1eb8e5d974d873e065224901555fb8821590a33bacc61e39701cf9b46bd25bf5f0595bbe24655141438e7a100b',
  },
  {
    secret: '4ccd089b28ff96da9db6c346ec114e0f5b8a319f35aba624da8cf6ed4fb8a6fb',
    key: '3d4017c3e843895a92b70aa74d1b7ebc9c982ccf2ec4968cc0cd55f12af4660c',
    message: '72',
    signature:
      '92a009a9f0d4cab8720e820b5f642540a2b27b5416503f8fb3762223ebdb69da085ac1e43e15996e458f3613d0f11d8c387b2eaeb4302aeeb00d291612bb0c00',
  },
  {
    secret: 'c5aa8df43f9f837bedb7442f31dcb7b166d38535076f094b85ce3a2e0b4458f7',
    key: 'fc51cd8e6218a1a38da47ed00230f0580816ed13ba3303ac5deb911548908025',
    message: 'af82',
    signature:
      '6291d657deec24024827e69c3abe01a30ce548a284743a445e3680d7db5ac3ac18ff9b538d16f290ae67f760984dc6594a7c15e9716ed28dc027beceea1ec40a',
  },
] as const;

const [{ secret, key }] = published;

const signed = (statement: Statement, secretKey: string = secret): SignatureBody => {
  const body = signStatement(statement, secretKey);
  if (!body.ok) throw new Error(JSON.stringify(body.problems));
  return body.value;
};

/** Notes of two writers, then a signature that names their heads. */
const signedSet = (lengths: readonly [number, number]): readonly Envelope[] => {
  let records: readonly Envelope[] = [];
  for (const [w, length] of lengths.entries()) {
    for (let i = 0; i < length; i++) records = appended(records, `w${w}`, {});
  }
  const statement = { by: 'the witness', role: 'customer', statement: 'accepted', heads: headsOf(records) };
  return appended(records, 'phone', { kind: 'signature', version: 2, body: signed(statement) });
};
const codes = (records: readonly unknown[], expected = {}): readonly string[] => [
  ...new Set(verifySigned(records, { book: testedBook, ...expected }).map(({ code }) => code)),
];

describe('Ed25519', () => {
  it.each(published)('gives the published signature of "$message"', (one) => {
    const message = fromHex(one.message);
    expect(publicKeyOf(one.secret)).toBe(one.key);
    expect(signBytes(one.secret, message)).toBe(one.signature);
    expect(isSignatureOf(one.key, message, one.signature)).toBe(true);
  });

  it('is understood by the runtime’s own implementation, and understands it', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 200 }), (message) => {
        const { privateKey, publicKey } = generateKeyPairSync('ed25519');
        const jwk = privateKey.export({ format: 'jwk' });
        const raw = (text = '') => toHex(Buffer.from(text, 'base64url'));
        const ours = signBytes(raw(jwk.d), message);
        expect(ours).toBe(toHex(sign(null, message, privateKey)));
        expect(verify(null, message, publicKey, fromHex(ours))).toBe(true);
        expect(publicKeyOf(raw(jwk.d))).toBe(raw(createPublicKey(privateKey).export({ format: 'jwk' }).x));
      }),
      { numRuns: 25 },
    );
    expect(() => createPrivateKey('nonsense')).toThrow();
  });

  it('takes no key and no signature that is none', () => {
    const message = fromHex('72');
    expect(isSignatureOf('f'.repeat(64), message, published[1].signature)).toBe(false);
    expect(isSignatureOf(published[1].key, message, '0'.repeat(128))).toBe(false);
    expect(isSignatureOf(published[1].key, message, 'f'.repeat(128))).toBe(false);
  });
});

describe('a signature', () => {
  it('of a whole set is found to be right, whoever’s key it is, or with a key that is known', () => {
    const set = signedSet([3, 2]);
    expect(codes(set)).toEqual([]);
    expect(codes(set, { keys: [key] })).toEqual([]);
    expect(codes(set, { keys: [published[1].key] })).toEqual(['RECORD_SIGNATURE_STRANGE']);
  });

  it('shows that what it was made over was cut or written anew, without heads from elsewhere', () => {
    const set = signedSet([3, 2]);
    const cut = set.filter(({ id }) => id !== 'w0-2');
    expect(codes(cut)).toEqual(['RECORD_TRUNCATED']);
    let anew: readonly Envelope[] = [];
    for (let i = 0; i < 3; i++) anew = appended(anew, 'w0', { body: { text: 'forged', by: 'nobody' } });
    const forged = [...anew, ...set.filter(({ writer }) => writer !== 'w0')];
    expect(codes(forged)).toEqual(['RECORD_HEAD_DIFFERS']);
  });

  it('is wrong after any change of what it says, also where the chain was computed anew', () => {
    const last = signedSet([2, 1]).at(-1) as Envelope<SignatureBody>;
    const changes: Readonly<Record<string, Partial<SignatureBody>>> = {
      by: { by: 'another' },
      role: { role: 'builder' },
      statement: { statement: 'accepted without a point' },
      heads: { heads: last.body.heads.slice(1) },
      open: { open: ['leaking valve'] },
      passes: { passes: 'accepted' },
      key: { key: published[1].key },
      value: { value: published[0].signature },
    };
    for (const [name, change] of Object.entries(changes)) {
      const record = { ...last, body: { ...last.body, ...change } };
      const found = signatureProblems(record, undefined, '').map(({ code }) => code);
      expect([name, found]).toEqual([name, ['RECORD_SIGNATURE_WRONG']]);
    }
    const [head] = last.body.heads;
    const ofOther = signed({ ...last.body, heads: [{ ...head!, book: 'other' }] });
    expect(signatureProblems({ ...last, body: ofOther }, undefined, '').map(({ path }) => path)).toEqual([
      '/body/heads/0',
    ]);
  });

  it('that was only written down is no signature: no key is asked of it', () => {
    const first = appended([], 'w0', {});
    const written = { by: 'a', role: 'b', statement: 'c', heads: headsOf(first) };
    const set = appended(first, 'w0', { kind: 'signature', version: 1, body: written });
    expect(codes(set, { keys: [] })).toEqual([]);
  });

  it('leaves no tampering with a signed set unseen by who holds its copy', () => {
    const lengths = fc.tuple(fc.integer({ min: 1, max: 4 }), fc.integer({ min: 1, max: 3 }));
    fc.assert(
      fc.property(lengths, fc.nat(), fc.constantFrom('drop', 'body', 'time', 'anew'), (sizes, p, how) => {
        const set = signedSet(sizes);
        const copy = set.at(-1) as Envelope<SignatureBody>;
        const signedOver = set.slice(0, -1);
        const i = p % signedOver.length;
        const { writer, sequence } = signedOver[i]!;
        const kept = signedOver.filter((one) => one.writer !== writer || one.sequence < sequence);
        const forge = (): readonly Envelope[] => {
          let records: readonly Envelope[] = kept;
          for (const one of signedOver.filter((r) => r.writer === writer && r.sequence >= sequence)) {
            records = appended(records, writer, { id: one.id, body: { text: 'forged', by: 'nobody' } });
          }
          return records;
        };
        const tampered = {
          drop: () => signedOver.toSpliced(i, 1),
          body: () => signedOver.with(i, { ...signedOver[i]!, body: { text: 'forged', by: 'nobody' } }),
          time: () => signedOver.with(i, { ...signedOver[i]!, deviceTime: '2026-11-25T09:30:00Z' }),
          anew: forge,
        }[how]();
        // the signature itself is left out by who tampers; the other party still has it
        expect(codes(tampered, { heads: copy.body.heads })).not.toEqual([]);
      }),
      { numRuns: 200 },
    );
  });
});
