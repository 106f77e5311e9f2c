import { createPublicKey, verify } from 'node:crypto';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Envelope } from './envelope.ts';
import { headsOf } from './heads.ts';
import { fromHex } from './hex.ts';
import { type ReplyBody, type ReplyStatement, signReply } from './reply.ts';
import { exportReply, importReply } from './reply-file.ts';
import { appended, testedBook } from './testing/appended.ts';
import { verifySigned } from './verify-signed.ts';

/** RFC 8032, Edwards-Curve Digital Signature Algorithm, 2017, section 7.1, test 1 (read). */
const secret = '9d61b19deffd5a60ba844af492ec2cc44449c5697b326919703bac031cae7f60';
const key = 'd75a980182b10ab7d54bfed3c964073a0ee172f3daa62325af021a68f707511a';

const seen = [0, 1, 2].reduce((records) => appended(records, 'tablet', {}), [] as readonly Envelope[]);

const statement: ReplyStatement = {
  by: 'the witness',
  role: 'Larkmoor Juice Cooperative',
  book: testedBook,
  revision: 1,
  file: 'ab'.repeat(32),
  heads: headsOf(seen),
  at: '2027-04-20T08:00:00Z',
  accepted: 'with open points',
  comments: [{ check: 'placed +S1', floor: 'OXBOW', text: 'the third foot?' }],
  open: ['P-1'],
};

const signed = (of: Partial<ReplyStatement> = {}): ReplyBody => {
  const body = signReply({ ...statement, ...of }, secret);
  if (!body.ok) throw new Error(JSON.stringify(body.problems));
  return body.value;
};

const written = (body: ReplyBody): string => {
  const text = exportReply(body);
  if (!text.ok) throw new Error(JSON.stringify(text.problems));
  return text.value;
};

const codesOf = (text: string, book?: string): readonly string[] => {
  const read = importReply(text, book);
  return read.ok ? [] : read.problems.map(({ code }) => code);
};

describe('the file of a reply', () => {
  it('is read as it was written, also after a mail program ended its lines otherwise', () => {
    const body = signed();
    const text = written(body);
    expect(importReply(text, testedBook)).toEqual({ ok: true, value: body });
    expect(importReply(`\uFEFF${text.trim()}\r\n`)).toEqual({ ok: true, value: body });
  });

  it('is signed with the key of the witness over bytes that anyone can make', () => {
    const { value, ...rest } = signed();
    // RFC 8785 by hand: members sorted, no white space
    const sorted = (one: unknown): unknown =>
      Array.isArray(one)
        ? one.map(sorted)
        : typeof one === 'object' && one !== null
          ? Object.fromEntries(
              Object.entries(one)
                .sort(([a], [b]) => (a < b ? -1 : 1))
                .map(([name, inner]) => [name, sorted(inner)]),
            )
          : one;
    const bytes = Buffer.from(`twinfloor-reply-1\n${JSON.stringify(sorted(rest))}`);
    expect(rest.key).toBe(key);
    const jwk = { kty: 'OKP', crv: 'Ed25519', x: Buffer.from(key, 'hex').toString('base64url') };
    expect(verify(null, bytes, createPublicKey({ key: jwk, format: 'jwk' }), fromHex(value))).toBe(true);
  });

  it('of another book, cut, of the future or no reply at all is refused with the reason', () => {
    const text = written(signed());
    expect(codesOf(text, 'other-book')).toContain('RECORD_WRONG_BOOK');
    expect(codesOf(text.slice(0, -30))).toEqual(['RECORD_REPLY_UNREADABLE']);
    expect(codesOf('{"book":"x"}')).toEqual(['RECORD_REPLY_UNREADABLE']);
    expect(codesOf('null')).toEqual(['RECORD_REPLY_UNREADABLE']);
    expect(codesOf(text.replace('"version":1}', '"version":2}'))).toEqual(['RECORD_REPLY_FROM_FUTURE']);
    expect(codesOf(text.replace('"accepted":"with open points"', '"accepted":"maybe"'))).toEqual([
      'RECORD_BODY',
    ]);
  });

  it('is refused after any change of what it says', () => {
    const text = written(signed());
    const from = text.indexOf('"reply":') + 8;
    fc.assert(
      fc.property(fc.integer({ min: from, max: text.length - 15 }), fc.constantFrom(...'0a7 '), (at, put) => {
        fc.pre(text[at] !== put);
        expect(codesOf(`${text.slice(0, at)}${put}${text.slice(at + 1)}`)).not.toEqual([]);
      }),
      { numRuns: 150 },
    );
  });
});

describe('a reply among the records', () => {
  const codes = (records: readonly unknown[], expected = {}): readonly string[] => [
    ...new Set(verifySigned(records, { book: testedBook, ...expected }).map(({ code }) => code)),
  ];
  const set = appended(seen, 'laptop', { kind: 'reply', version: 1, body: signed() });

  it('is right by its key, and strange where another key was expected', () => {
    expect(codes(set)).toEqual([]);
    expect(codes(set, { keys: [key] })).toEqual([]);
    expect(codes(set, { keys: ['00'.repeat(32)] })).toEqual(['RECORD_SIGNATURE_STRANGE']);
  });

  it('shows that what the witness saw was cut or written anew since', () => {
    expect(codes(set.filter(({ id }) => id !== 'tablet-2'))).toEqual(['RECORD_TRUNCATED']);
    const anew = [0, 1, 2].reduce(
      (records) => appended(records, 'tablet', { body: { text: 'forged', by: 'nobody' } }),
      [] as readonly Envelope[],
    );
    expect(codes([...anew, set.at(-1)])).toEqual(['RECORD_HEAD_DIFFERS']);
  });

  it('that was changed and chained anew is found by its signature', () => {
    const accepted = { ...signed(), accepted: 'as it is' as const };
    const forged = appended(seen, 'laptop', { kind: 'reply', version: 1, body: accepted });
    expect(codes(forged)).toEqual(['RECORD_SIGNATURE_WRONG']);
  });
});
