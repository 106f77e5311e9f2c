import { fromHex } from './hex.ts';
import { sha256 } from './sha256.ts';

const groups = 6;
const bytesEach = 5;

/**
 * What two people compare by voice to know that they mean the same key.
 *
 * Method   SHA-256 over the 32 bytes of the public key; of its first 30 bytes each five, highest first, as a number modulo
 *          100 000: digits are said alike in every language
 * Symbols  key  public key, 64 hexadecimal digits
 * Returns  six groups of five digits, such as `12345 67890 12345 67890 12345 67890`
 * Assumes  nobody searches through some 10^30 keys for one with the same digits
 * Cost     O(1)
 * Source   derived; five bytes for five digits leave the digits even to one part in ten million
 */
export const keyFingerprint = (key: string): string => {
  const digest = sha256(fromHex(key));
  return Array.from({ length: groups }, (_, group) => {
    let number = 0;
    // five bytes are 40 bits: a double holds them exactly
    for (const byte of digest.subarray(group * bytesEach, (group + 1) * bytesEach))
      number = number * 256 + byte;
    return String(number % 100_000).padStart(5, '0');
  }).join(' ');
};
