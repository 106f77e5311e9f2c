import { ed25519 } from '@noble/curves/ed25519.js';
import { fromHex, toHex } from './hex.ts';

/*
 * Signatures by Ed25519. The library stands in this file alone; keys and signatures are lower-case hexadecimal outside
 * it, as hashes are.
 */

/** The public key of a secret one; both are 32 bytes in hexadecimal. */
export const publicKeyOf = (secretKey: string): string => toHex(ed25519.getPublicKey(fromHex(secretKey)));

/**
 * Signature over bytes.
 *
 * Method   PureEdDSA over edwards25519, deterministic: the same key and bytes give the same signature
 * Symbols  secretKey  32 bytes in hexadecimal;  bytes  what is signed
 * Returns  64 bytes in hexadecimal
 * Problems none
 * Assumes  the secret key is one of 64 hexadecimal digits
 * Cost     O(n) in the bytes
 * Source   RFC 8032, section 5.1
 */
export const signBytes = (secretKey: string, bytes: Uint8Array): string =>
  toHex(ed25519.sign(bytes, fromHex(secretKey)));

/** Whether a signature of these bytes was made with the secret key that belongs to this public one. */
export const isSignatureOf = (publicKey: string, bytes: Uint8Array, signature: string): boolean => {
  try {
    return ed25519.verify(fromHex(signature), bytes, fromHex(publicKey));
  } catch {
    // a key that is no point of the curve signed nothing
    return false;
  }
};
