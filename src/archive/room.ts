import type { Problem } from '../quantity/problem.ts';
import { archiveProblem } from './problems.ts';

/** The most bytes of an archive that a page may send where nobody says otherwise: two thousand photographs and a hundred films. */
export const largestArchive = 16_000_000_000;

/** What text takes on the disk of a store beside itself: what finds it, and the log that it passes. */
const timesText = 3;

const said = (bytes: number): string => {
  if (bytes < 1e6) return `${Math.ceil(bytes / 1e3)} kB`;
  return bytes < 1e9 ? `${Math.ceil(bytes / 1e6)} MB` : `${(bytes / 1e9).toFixed(1)} GB`;
};

/** An archive that is larger than is taken in at once. */
export const sizeProblem = (bytes: number, most: number): Problem | undefined =>
  bytes > most
    ? archiveProblem('ARCHIVE_TOO_LARGE', '', { given: said(bytes), allowed: said(most) })
    : undefined;

/** A disk that has less room than is needed: told before it is full. */
export const roomProblem = (needed: number, free: number): Problem | undefined =>
  needed > free
    ? archiveProblem('ARCHIVE_NO_ROOM', '', { given: said(needed), allowed: said(free) })
    : undefined;

/** Bytes that come to the disk with texts and files. */
export const roomFor = (textBytes: number, files: readonly { readonly bytes: number }[]): number =>
  files.reduce((sum, { bytes }) => sum + bytes, timesText * textBytes);
