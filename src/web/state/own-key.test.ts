import { createDecipheriv, pbkdf2Sync, randomBytes } from 'node:crypto';
import { beforeAll, describe, expect, it } from 'vitest';
import { publicKeyOf } from '../../record/ed25519.ts';
import { keepKnownKeys, keyListFile, keysAgainst, readKeyList, readKnownKeys } from './known-keys.ts';
import { forgetKey, keepKey, readKey, readKeys } from './own-key.ts';
import type { Page } from './page.ts';
import { keyFile, makeKey, openKey, readKeyFile, type SealedKey } from './sealed-key.ts';

const ports = {
  random: (bytes: number) => new Uint8Array(randomBytes(bytes)),
  subtle: globalThis.crypto.subtle,
};

const browserNotes = (): Pick<Page, 'notes'> => {
  const kept = new Map<string, unknown>();
  return {
    notes: {
      read: (name) => kept.get(name),
      write: (name, value) => void kept.set(name, value),
      watch: () => () => undefined,
    },
  };
};

const passphrase = 'rinse twice, fill once';
let key: SealedKey;

beforeAll(async () => {
  key = (await makeKey(ports, { by: 'the engineer', role: 'builder', passphrase }))!;
});

describe('the key of a person', () => {
  it('is opened by its passphrase, and with the runtime’s own ciphers from what its file says alone', async () => {
    const secret = await openKey(ports, key, passphrase);
    const file = JSON.parse(keyFile(key)) as SealedKey;
    const derived = pbkdf2Sync(passphrase, Buffer.from(file.salt, 'hex'), file.rounds, 32, 'sha256');
    const sealed = Buffer.from(file.sealed, 'hex');
    const cipher = createDecipheriv('aes-256-gcm', derived, Buffer.from(file.nonce, 'hex'));
    // RFC 8785: members in the order of their names, nothing between them
    cipher.setAAD(Buffer.from(`{"by":"the engineer","key":"${file.key}","role":"builder"}`));
    cipher.setAuthTag(sealed.subarray(32));
    const opened = Buffer.concat([cipher.update(sealed.subarray(0, 32)), cipher.final()]).toString('hex');
    expect(opened).toBe(secret);
    expect(publicKeyOf(opened)).toBe(key.key);
  });

  it('stays shut to another passphrase, under another name and where anything of it was changed', async () => {
    const flip = (hex: string): string => `${hex[0] === '0' ? '1' : '0'}${hex.slice(1)}`;
    expect(await openKey(ports, key, `${passphrase} `)).toBeUndefined();
    const changes: readonly Partial<SealedKey>[] = [
      { by: 'the witness' },
      { role: 'customer' },
      { key: flip(key.key) },
      { salt: flip(key.salt) },
      { nonce: flip(key.nonce) },
      { sealed: flip(key.sealed) },
      { rounds: key.rounds + 1 },
    ];
    const opened = await Promise.all(changes.map((one) => openKey(ports, { ...key, ...one }, passphrase)));
    expect(opened).toEqual(changes.map(() => undefined));
  });

  it('is made nowhere where the browser has no ciphers', async () => {
    const bare = { ...ports, subtle: undefined };
    expect(await makeKey(bare, { by: 'a', role: 'b', passphrase })).toBeUndefined();
    expect(await openKey(bare, key, passphrase)).toBeUndefined();
  });

  it('comes back from its file, and from nothing that only looks like one', () => {
    expect(readKeyFile(keyFile(key))).toEqual(key);
    const file = JSON.parse(keyFile(key)) as Readonly<Record<string, unknown>>;
    const others = [
      '',
      'null',
      '[]',
      '{"twinfloorKey":1}',
      JSON.stringify({ ...file, twinfloorKey: 2 }),
      // a file may not hold the page up for hours, nor make guessing cheap
      JSON.stringify({ ...file, rounds: 1e12 }),
      JSON.stringify({ ...file, rounds: 1 }),
      JSON.stringify({ ...file, by: ' ' }),
      JSON.stringify({ ...file, sealed: 'zz' }),
    ];
    expect(others.map(readKeyFile)).toEqual(others.map(() => undefined));
  });

  it('is kept once, beside those of the others, until it is let go', () => {
    const page = browserNotes();
    const other = { ...key, by: 'the witness', key: 'a'.repeat(64) };
    expect([keepKey(page, key), keepKey(page, other), keepKey(page, key)]).toEqual([true, true, true]);
    expect(readKeys(page).map(({ by }) => by)).toEqual(['the witness', 'the engineer']);
    forgetKey(page, other.key);
    expect([readKey(page, other.key), readKey(page, key.key)]).toEqual([undefined, key]);
  });
});

describe('the keys of the others', () => {
  const witness = { by: 'the witness', role: 'customer', key: 'b'.repeat(64) };

  it('come by a file that proves nothing of who they are', () => {
    const file = keyListFile([{ ...witness, compared: true }]);
    expect(readKeyList(file)).toEqual([witness]);
    const others = [
      '',
      '{}',
      '{"twinfloorKeys":1,"keys":{}}',
      '{"twinfloorKeys":1,"keys":[{"by":"x","role":"y","key":"short"}]}',
      JSON.stringify({ twinfloorKeys: 1, keys: Array(1001).fill(witness) }),
    ];
    expect(others.map(readKeyList)).toEqual(others.map(() => undefined));
  });

  it('are told apart from those that are known, and from a known one under another name', () => {
    const page = browserNotes();
    keepKnownKeys(page, [{ ...witness, compared: true }]);
    const told = [
      { ...witness, by: 'somebody else' },
      { ...witness, key: 'c'.repeat(64) },
    ];
    const { fresh, renamed } = keysAgainst(readKnownKeys(page), told);
    expect([fresh, renamed]).toEqual([[told[1]], [told[0]]]);
  });
});
