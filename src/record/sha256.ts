// First 32 bits of the fractional parts of the cube roots of the first 64 primes (FIPS 180-4, 4.2.2).
const ROUND = new Uint32Array([
  0x428a2f98, 0x71374491, 0xb5c0fbcf, 0xe9b5dba5, 0x3956c25b, 0x59f111f1, 0x923f82a4, 0xab1c5ed5, 0xd807aa98,
  0x12835b01, 0x243185be, 0x550c7dc3, 0x72be5d74, 0x80deb1fe, 0x9bdc06a7, 0xc19bf174, 0xe49b69c1, 0xefbe4786,
  0x0fc19dc6, 0x240ca1cc, 0x2de92c6f, 0x4a7484aa, 0x5cb0a9dc, 0x76f988da, 0x983e5152, 0xa831c66d, 0xb00327c8,
  0xbf597fc7, 0xc6e00bf3, 0xd5a79147, 0x06ca6351, 0x14292967, 0x27b70a85, 0x2e1b2138, 0x4d2c6dfc, 0x53380d13,
  0x650a7354, 0x766a0abb, 0x81c2c92e, 0x92722c85, 0xa2bfe8a1, 0xa81a664b, 0xc24b8b70, 0xc76c51a3, 0xd192e819,
  0xd6990624, 0xf40e3585, 0x106aa070, 0x19a4c116, 0x1e376c08, 0x2748774c, 0x34b0bcb5, 0x391c0cb3, 0x4ed8aa4a,
  0x5b9cca4f, 0x682e6ff3, 0x748f82ee, 0x78a5636f, 0x84c87814, 0x8cc70208, 0x90befffa, 0xa4506ceb, 0xbef9a3f7,
  0xc67178f2,
]);

const rotate = (x: number, by: number): number => (x >>> by) | (x << (32 - by));

/** Message, a one bit, zeros, and the length in bits as 64-bit big-endian (FIPS 180-4, 5.1.1). */
const padded = (parts: readonly Uint8Array[]): Uint8Array => {
  const length = parts.reduce((sum, part) => sum + part.length, 0);
  const bytes = new Uint8Array(Math.ceil((length + 9) / 64) * 64);
  let at = 0;
  for (const part of parts) {
    bytes.set(part, at);
    at += part.length;
  }
  bytes[length] = 0x80;
  const view = new DataView(bytes.buffer);
  view.setUint32(bytes.length - 8, Math.floor(length / 2 ** 29));
  view.setUint32(bytes.length - 4, (length << 3) >>> 0);
  return bytes;
};

/**
 * SHA-256 digest of the parts, one after the other.
 * Ours, because the browser's own digest is asynchronous and absent outside a secure context, and a
 * tablet on a plain address of the shop's network has none.
 *
 * Method   FIPS 180-4, 6.2
 * Symbols  parts  message in pieces  bytes
 * Returns  digest  32 bytes
 * Problems none
 * Assumes  fewer than 2^53 bits
 * Cost     O(n)
 * Source   FIPS 180-4 (August 2015), 4.1.2, 4.2.2, 5.1.1, 5.3.3, 6.2 (memory; held against its example messages and node:crypto)
 */
export const sha256 = (...parts: readonly Uint8Array[]): Uint8Array => {
  const bytes = padded(parts);
  const view = new DataView(bytes.buffer);
  // First 32 bits of the fractional parts of the square roots of the first eight primes (5.3.3).
  const state = new Uint32Array([
    0x6a09e667, 0xbb67ae85, 0x3c6ef372, 0xa54ff53a, 0x510e527f, 0x9b05688c, 0x1f83d9ab, 0x5be0cd19,
  ]);
  const w = new Uint32Array(64);
  for (let block = 0; block < bytes.length; block += 64) {
    for (let t = 0; t < 16; t++) w[t] = view.getUint32(block + 4 * t);
    for (let t = 16; t < 64; t++) {
      const early = w[t - 15]!;
      const late = w[t - 2]!;
      const s0 = rotate(early, 7) ^ rotate(early, 18) ^ (early >>> 3);
      const s1 = rotate(late, 17) ^ rotate(late, 19) ^ (late >>> 10);
      w[t] = w[t - 16]! + s0 + w[t - 7]! + s1;
    }
    let a = state[0]!;
    let b = state[1]!;
    let c = state[2]!;
    let d = state[3]!;
    let e = state[4]!;
    let f = state[5]!;
    let g = state[6]!;
    let h = state[7]!;
    for (let t = 0; t < 64; t++) {
      const S1 = rotate(e, 6) ^ rotate(e, 11) ^ rotate(e, 25);
      const t1 = (h + S1 + ((e & f) ^ (~e & g)) + ROUND[t]! + w[t]!) | 0;
      const S0 = rotate(a, 2) ^ rotate(a, 13) ^ rotate(a, 22);
      const t2 = (S0 + ((a & b) ^ (a & c) ^ (b & c))) | 0;
      h = g;
      g = f;
      f = e;
      e = (d + t1) | 0;
      d = c;
      c = b;
      b = a;
      a = (t1 + t2) | 0;
    }
    state[0]! += a;
    state[1]! += b;
    state[2]! += c;
    state[3]! += d;
    state[4]! += e;
    state[5]! += f;
    state[6]! += g;
    state[7]! += h;
  }
  const digest = new Uint8Array(32);
  const out = new DataView(digest.buffer);
  for (let i = 0; i < 8; i++) out.setUint32(4 * i, state[i]!);
  return digest;
};
