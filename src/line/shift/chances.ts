/** Streams of whole numbers by chance, each with a name. */
export interface Chances {
  /** Puts every stream at the start of a shift. */
  readonly begin: (seed: number, shift: number) => void;
  /** 0 to 2^32 - 1 of the stream of that number. */
  readonly next: (stream: number) => number;
  /** The same, one after the other into a part of a list. */
  readonly fill: (stream: number, into: Float64Array, from: number, to: number) => void;
}

/** FNV-1a over the UTF-16 units of a name. */
const hashOf = (name: string): number => {
  let hash = 0x811c9dc5;
  for (let i = 0; i < name.length; i++) hash = Math.imul(hash ^ name.charCodeAt(i), 0x01000193);
  return hash >>> 0;
};

/** Finaliser of MurmurHash3: every bit that goes in moves half of those that come out. */
const mixed = (value: number): number => {
  let h = value;
  h = Math.imul(h ^ (h >>> 16), 0x85ebca6b);
  h = Math.imul(h ^ (h >>> 13), 0xc2b2ae35);
  return (h ^ (h >>> 16)) >>> 0;
};

/** Odd, near 2^32 over the golden ratio: successive seeds lie far apart. */
const step = 0x9e3779b9;

const rotated = (value: number, by: number): number => (value << by) | (value >>> (32 - by));

/** Next number of the state of four words that stands at `at`, which moves on. */
export const nextOf = (state: Int32Array, at: number): number => {
  const s1 = state[at + 1]!;
  const result = Math.imul(rotated(Math.imul(s1, 5), 7), 9);
  const s2 = state[at + 2]! ^ state[at]!;
  const s3 = state[at + 3]! ^ s1;
  state[at + 1] = s1 ^ s2;
  state[at] = state[at]! ^ s3;
  state[at + 2] = s2 ^ (s1 << 9);
  state[at + 3] = rotated(s3, 11);
  return result >>> 0;
};

/** So many of them as `nextOf` gives, with the state at hand meanwhile. */
const fillOf = (state: Int32Array, at: number, into: Float64Array, from: number, to: number): void => {
  let s0 = state[at]!;
  let s1 = state[at + 1]!;
  let s2 = state[at + 2]!;
  let s3 = state[at + 3]!;
  for (let i = from; i < to; i++) {
    into[i] = Math.imul(rotated(Math.imul(s1, 5), 7), 9) >>> 0;
    const moved = s1 << 9;
    s2 ^= s0;
    s3 ^= s1;
    s1 ^= s2;
    s0 ^= s3;
    s2 ^= moved;
    s3 = rotated(s3, 11);
  }
  state[at] = s0;
  state[at + 1] = s1;
  state[at + 2] = s2;
  state[at + 3] = s3;
};

/**
 * Chances of a shift: one stream a name, begun from seed, shift and name alone.
 *
 * Method   xoshiro128** in whole numbers of 32 bits, so that every engine gives the same; a stream does not know which
 *          others there are, so two lines that differ in one cause share the chances of all others
 * Source   D. Blackman, S. Vigna, Scrambled linear pseudorandom number generators, 2021; A. Appleby, MurmurHash3
 */
export const chancesOf = (names: readonly string[]): Chances => {
  const hashes = names.map(hashOf);
  const state = new Int32Array(4 * names.length);
  return {
    begin: (seed, shift) => {
      const low = seed >>> 0;
      const high = Math.floor(seed / 4294967296) >>> 0;
      const start = mixed(mixed(mixed(low) ^ (high + step)) ^ (shift + step));
      for (let stream = 0; stream < hashes.length; stream++) {
        let word = mixed(start ^ hashes[stream]!);
        for (let i = 0; i < 4; i++) {
          word = (word + step) >>> 0;
          state[4 * stream + i] = mixed(word);
        }
      }
    },
    next: (stream) => nextOf(state, 4 * stream),
    fill: (stream, into, from, to) => fillOf(state, 4 * stream, into, from, to),
  };
};
