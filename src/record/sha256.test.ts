import { createHash } from 'node:crypto';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { fromHex, toHex } from './hex.ts';
import { sha256 } from './sha256.ts';

const utf8 = (text: string): Uint8Array => new TextEncoder().encode(text);

/** NIST, Examples with Intermediate Values, SHA-256; NIST CAVP SHA256ShortMsg. Read in public transcriptions. */
const published: readonly (readonly [string, Uint8Array, string])[] = [
  ['empty message', utf8(''), 'e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855'],
  ['one block', utf8('abc'), 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad'],
  [
    '448 bits, which need a second block for the length',
    utf8('abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq'),
    '248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1',
  ],
  [
    '896 bits',
    utf8(
      'abcdefghbcdefghicdefghijdefghijkefghijklfghijklmghijklmnhijklmnoijklmnopjklmnopqklmnopqrlmnopqrsmnopqrstnopqrstu',
    ),
    'cf5b16a778af8380036ce59e7b0492370b249b11e8f07a51afac45037afee9d1',
  ],
  [
    'a million times a',
    new Uint8Array(1_000_000).fill(0x61),
    'cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0',
  ],
  ['CAVP 8 bits', fromHex('d3'), '28969cdfa74a12c82f3bad960b0b000aca2ac329deea5c2328ebc6f2ba9802c1'],
  ['CAVP 24 bits', fromHex('b4190e'), 'dff2e73091f6c05e528896c4c831b9448653dc2ff043528f6769437bc7b975c2'],
  [
    'CAVP 64 bits',
    fromHex('5738c929c4f4ccb6'),
    '963bb88f27f512777aab6c8b1a02c70ec0ad651d428f870036e1917120fb48bf',
  ],
  [
    'CAVP 512 bits',
    fromHex(
      '5a86b737eaea8ee976a0a24da63e7ed7eefad18a101c1211e2b3650c5187c2a8a650547208251f6d4237e661c7bf4c77f335390394c37fa1a9f9be836ac28509',
    ),
    '42e61e174fbb3897d6dd6cef3dd2802fe67b331953b06114a65c772859dfc1aa',
  ],
];

describe('SHA-256', () => {
  it.each(published)('NIST example: %s', (_, message, digest) => {
    expect(toHex(sha256(message))).toBe(digest);
  });

  it('a chain of three texts, each hashed behind the hash before it: another program, FIPS 180-4 (computed)', () => {
    const texts = ['{"n":1,"t":"start"}', '{"n":2,"t":"fill"}', '{"n":3,"t":"stop"}'];
    let before = '0'.repeat(64);
    const chain = texts.map((text) => {
      before = toHex(sha256(fromHex(before), utf8(text)));
      return before;
    });
    expect(chain).toEqual([
      '0e0b89ddee4c69d144a2aecf8646c8e2a344f6607b425315eb2487cdd57cc07d',
      '4f48cdd85fc7f87f44645110fd5aa11e599d64a0a30112ee2f8e095a07331757',
      '0e605f850dc464f0ddac8da9f1094e20f58664a0aaeefd66076161628aa7f7b3',
    ]);
  });

  it('equals another implementation for every length up to four blocks', () => {
    for (let length = 0; length <= 256; length++) {
      const message = Uint8Array.from({ length }, (_, i) => (i * 151 + length) & 255);
      expect(toHex(sha256(message))).toBe(createHash('sha256').update(message).digest('hex'));
    }
  });

  it('equals another implementation for any bytes, in any pieces', () => {
    fc.assert(
      fc.property(fc.array(fc.uint8Array({ maxLength: 300 }), { maxLength: 5 }), (parts) => {
        const other = createHash('sha256');
        for (const part of parts) other.update(part);
        expect(toHex(sha256(...parts))).toBe(other.digest('hex'));
      }),
    );
  });
});
