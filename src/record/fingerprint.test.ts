import { createHash } from 'node:crypto';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { keyFingerprint } from './fingerprint.ts';

/** The same from the runtime’s own digest and whole numbers of any length. */
const byTheRuntime = (key: string): string => {
  const digest = createHash('sha256').update(Buffer.from(key, 'hex')).digest('hex');
  return [0, 1, 2, 3, 4, 5]
    .map((i) => (BigInt(`0x${digest.slice(10 * i, 10 * i + 10)}`) % 100_000n).toString().padStart(5, '0'))
    .join(' ');
};

const keys = fc
  .uint8Array({ minLength: 32, maxLength: 32 })
  .map((bytes) => Buffer.from(bytes).toString('hex'));

describe('the digits by which a key is compared', () => {
  it('are those that another implementation finds', () => {
    fc.assert(
      fc.property(keys, (key) => {
        expect(keyFingerprint(key)).toBe(byTheRuntime(key));
      }),
    );
  });

  it('are others for a key that is another in one digit', () => {
    fc.assert(
      fc.property(keys, fc.integer({ min: 0, max: 63 }), (key, at) => {
        const other = `${key.slice(0, at)}${key[at] === '0' ? '1' : '0'}${key.slice(at + 1)}`;
        expect(keyFingerprint(other)).not.toBe(keyFingerprint(key));
      }),
    );
  });
});
