import { describe, expect, it } from 'vitest';
import * as z from 'zod';
import { randomId } from './random-id.ts';

describe('a random name', () => {
  it('is a UUID of version 4 by the schema library, and another each time', () => {
    const names = Array.from({ length: 200 }, () => randomId(crypto));
    for (const name of names) expect(z.uuidv4().safeParse(name).success, name).toBe(true);
    expect(new Set(names).size).toBe(200);
  });

  it('has every random bit where the standard leaves it (RFC 9562, A.3)', () => {
    // the example of the standard, with the six bits of version and variant set otherwise
    const given = '919108f752d1f320dbacf847db4148a8';
    const chance = {
      getRandomValues: <T extends ArrayBufferView | null>(bytes: T): T => {
        (bytes as unknown as Uint8Array).set(
          Uint8Array.from(given.match(/../g) ?? [], (pair) => Number.parseInt(pair, 16)),
        );
        return bytes;
      },
    };
    expect(randomId(chance as Pick<Crypto, 'getRandomValues'>)).toBe('919108f7-52d1-4320-9bac-f847db4148a8');
  });
});
