import type { Problem } from '../quantity/problem.ts';
import { mediaForms, typesOf } from './media-forms.ts';
import { mediaProblem } from './problems.ts';

/** The most bytes that one file may have: a minute of film of a phone, or ten photographs of it. */
export const largestMedia = 50 * 1024 * 1024;

/** What is said of a file before anyone looks into it. */
export interface SaidMedia {
  /** A media type; parameters behind it, such as codecs, are passed over. */
  readonly mediaType: string;
  readonly bytes: number;
}

/** The type without its parameters, in lower case. */
export const plainType = (mediaType: string): string =>
  (mediaType.split(';', 1)[0] ?? '').trim().toLowerCase();

const inMegabytes = (bytes: number): string => `${(bytes / 1024 / 1024).toFixed(1)} MB`;

/**
 * Everything that keeps a file from being kept.
 *
 * Symbols  head  its first bytes, `headSize` of them or all;  said  what it is said to be
 * Problems MEDIA_EMPTY, MEDIA_TOO_LARGE, MEDIA_UNKNOWN, MEDIA_NOT_AS_SAID
 * Assumes  nothing: whether the rest of the file is whole is a matter of its digest
 */
export const checkMedia = (head: Uint8Array, said: SaidMedia, path = ''): readonly Problem[] => {
  if (said.bytes === 0) return [mediaProblem('MEDIA_EMPTY', path)];
  if (said.bytes > largestMedia) {
    const rest = { given: inMegabytes(said.bytes), allowed: inMegabytes(largestMedia) };
    return [mediaProblem('MEDIA_TOO_LARGE', path, rest)];
  }
  const types = typesOf(head);
  if (types.length === 0) {
    return [mediaProblem('MEDIA_UNKNOWN', path, { allowed: mediaForms.map((form) => form.types[0] ?? '') })];
  }
  const given = plainType(said.mediaType);
  return types.includes(given) ? [] : [mediaProblem('MEDIA_NOT_AS_SAID', path, { given, allowed: types })];
};

/** What is wrong where bytes give another digest than the one under which they came. */
export const digestProblem = (given: string, allowed: string, path = ''): readonly Problem[] =>
  given === allowed ? [] : [mediaProblem('MEDIA_DIGEST', path, { given, allowed })];
