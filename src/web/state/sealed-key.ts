import { canonicalJson } from '../../record/canonical-json.ts';
import { publicKeyOf } from '../../record/ed25519.ts';
import { fromHex, toHex } from '../../record/hex.ts';

/** A person's key as it is kept: the secret part only under a passphrase that is kept nowhere. */
export interface SealedKey {
  readonly by: string;
  readonly role: string;
  /** Public key, 64 hexadecimal digits. */
  readonly key: string;
  readonly rounds: number;
  readonly salt: string;
  readonly nonce: string;
  /** The secret key, encrypted. */
  readonly sealed: string;
}

/** What sealing is done with: chance and the browser's own ciphers, which it has on a page of this machine or over TLS alone. */
export interface KeyPorts {
  readonly random: (bytes: number) => Uint8Array;
  readonly subtle: SubtleCrypto | undefined;
}

/** OWASP Password Storage Cheat Sheet, PBKDF2-HMAC-SHA256 (memory). */
const usualRounds = 600_000;
/** What a file may ask for: fewer are soon searched through, more hold the page up for minutes. */
const fewestRounds = 100_000;
const mostRounds = 10_000_000;

/** A passphrase that is shorter is soon found by trying. */
export const shortestPassphrase = 10;

const bytes = (hex: string): Uint8Array<ArrayBuffer> => new Uint8Array(fromHex(hex));

/** The cipher of a key, bound to the name that the key stands under: another name on the same file opens nothing. */
const cipher = async (
  subtle: SubtleCrypto,
  passphrase: string,
  { by, role, key, rounds, salt, nonce }: Omit<SealedKey, 'sealed'>,
) => {
  const phrase = new TextEncoder().encode(passphrase.normalize('NFC'));
  const typed = await subtle.importKey('raw', phrase, 'PBKDF2', false, ['deriveKey']);
  const derived = await subtle.deriveKey(
    { name: 'PBKDF2', hash: 'SHA-256', salt: bytes(salt), iterations: rounds },
    typed,
    { name: 'AES-GCM', length: 256 },
    false,
    ['encrypt', 'decrypt'],
  );
  const named = canonicalJson({ by, role, key }, '');
  const additionalData = new TextEncoder().encode(named.ok ? named.value : '');
  return { algorithm: { name: 'AES-GCM', iv: bytes(nonce), additionalData }, derived };
};

/**
 * A new key of a person.
 *
 * Method   32 bytes of chance are the secret key of Ed25519; it is encrypted with AES-256-GCM under a key that PBKDF2 makes
 *          of the passphrase, with name, role and public key as additional data
 * Returns  the key as it is kept, or nothing where the browser has no ciphers on this page
 * Assumes  `random` is fit for keys
 * Source   RFC 8032, 5.1.5; RFC 8018, 5.2 and NIST SP 800-38D (memory)
 */
export const makeKey = async (
  { random, subtle }: KeyPorts,
  { by, role, passphrase }: { readonly by: string; readonly role: string; readonly passphrase: string },
): Promise<SealedKey | undefined> => {
  if (subtle === undefined) return undefined;
  const secret = toHex(random(32));
  const open = {
    by,
    role,
    key: publicKeyOf(secret),
    rounds: usualRounds,
    salt: toHex(random(16)),
    nonce: toHex(random(12)),
  };
  const { algorithm, derived } = await cipher(subtle, passphrase, open);
  const sealed = await subtle.encrypt(algorithm, derived, bytes(secret));
  return { ...open, sealed: toHex(new Uint8Array(sealed)) };
};

/** The secret key, 64 hexadecimal digits, or nothing where the passphrase is another or anything was changed. */
export const openKey = async (
  { subtle }: Pick<KeyPorts, 'subtle'>,
  key: SealedKey,
  passphrase: string,
): Promise<string | undefined> => {
  if (subtle === undefined) return undefined;
  try {
    const { algorithm, derived } = await cipher(subtle, passphrase, key);
    const secret = toHex(new Uint8Array(await subtle.decrypt(algorithm, derived, bytes(key.sealed))));
    return publicKeyOf(secret) === key.key ? secret : undefined;
  } catch {
    // the tag does not fit: the browser says no more than that
    return undefined;
  }
};

const isHex = (value: unknown, digits: number): boolean =>
  typeof value === 'string' && value.length === digits && /^[0-9a-f]+$/.test(value);
const isName = (value: unknown): boolean =>
  typeof value === 'string' && value.trim() !== '' && value.length <= 200;

/** Whether a value is a key as it is kept. */
export const isSealedKey = (value: unknown): value is SealedKey => {
  if (typeof value !== 'object' || value === null) return false;
  const one = value as Partial<SealedKey>;
  return (
    isName(one.by) &&
    isName(one.role) &&
    isHex(one.key, 64) &&
    isHex(one.salt, 32) &&
    isHex(one.nonce, 24) &&
    // 32 bytes and the tag of 16
    isHex(one.sealed, 96) &&
    Number.isSafeInteger(one.rounds) &&
    one.rounds! >= fewestRounds &&
    one.rounds! <= mostRounds
  );
};

/** A key as a file that its person keeps elsewhere. */
export const keyFile = ({ by, role, key, rounds, salt, nonce, sealed }: SealedKey): string =>
  `${JSON.stringify({ twinfloorKey: 1, by, role, key, rounds, salt, nonce, sealed }, undefined, 2)}\n`;

/** The key of such a file; nothing where it is none. */
export const readKeyFile = (text: string): SealedKey | undefined => {
  try {
    const { twinfloorKey, ...key } = JSON.parse(text) as { readonly twinfloorKey?: unknown };
    return twinfloorKey === 1 && isSealedKey(key) ? key : undefined;
  } catch {
    return undefined;
  }
};
