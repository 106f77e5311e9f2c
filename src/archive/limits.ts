import { largestMedia } from '../media/index.ts';

/** How large an archive's parts may be: what is read of it at any one time fits the memory of a tablet's laptop. */
export const limits = {
  /** Parts: revisions and files. */
  entries: 50_000,
  /** Bytes of the directory at the end. */
  directory: 16_000_000,
  /** Unpacked to packed, of a part larger than `small`: records pack to a twentieth. */
  ratio: 250,
  small: 100_000,
} as const;

/** The names that an archive has, and the most bytes of a part under each. */
const parts: readonly (readonly [RegExp, number])[] = [
  [/^manifest\.json$/, 32_000_000],
  [/^book\.records$/, 512_000_000],
  [/^revisions\/[0-9a-f]{64}\.json$/, 16_000_000],
  [/^media\/[0-9a-f]{64}\.[a-z0-9]{1,5}$/, largestMedia],
];

/** The most bytes that a part of this name may have; nothing where no archive has such a name. */
export const mostOf = (name: string): number | undefined => parts.find(([form]) => form.test(name))?.[1];
