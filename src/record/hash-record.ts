import { accept, type Result } from '../quantity/problem.ts';
import { canonicalJson } from './canonical-json.ts';
import type { Envelope } from './envelope.ts';
import { fromHex, toHex } from './hex.ts';
import { sha256 } from './sha256.ts';

/**
 * Hash of a record: it fixes the content and, through `previous`, everything its writer wrote before.
 *
 * Method   h = SHA-256(previous's 32 bytes || UTF-8 of the canonical JSON of the envelope without `hash`)
 * Symbols  record  envelope, with or without its hash
 * Returns  hash  64 hexadecimal digits
 * Problems those of canonicalJson
 * Assumes  `previous` is 64 hexadecimal digits
 * Cost     O(n)
 * Source   hash chain, derived in the definition above; RFC 8785; FIPS 180-4
 */
export const hashRecord = (record: Omit<Envelope, 'hash'>): Result<string> => {
  const { hash: _, ...rest } = record as Envelope;
  const text = canonicalJson(rest);
  if (!text.ok) return text;
  return accept(toHex(sha256(fromHex(record.previous), new TextEncoder().encode(text.value))));
};
