/** What tells one revision from another. */
export interface RevisionMark {
  readonly number: number;
  readonly sha256: string;
  readonly author: string;
  readonly reason?: string;
  readonly savedAt: string;
  /** SHA-256 of the text of the revision that it was made from; absent for the first. */
  readonly follows?: string;
}

const byText = (a: string, b: string): number => (a < b ? -1 : a > b ? 1 : 0);

/**
 * The one order of the revisions of several laptops: by number, then moment; what else tells them apart decides
 * between those of one moment. Equal are those that are the same save.
 */
export const byRevision = (a: RevisionMark, b: RevisionMark): number =>
  a.number - b.number ||
  byText(a.savedAt, b.savedAt) ||
  byText(a.sha256, b.sha256) ||
  byText(a.author, b.author) ||
  byText(a.reason ?? '', b.reason ?? '') ||
  byText(a.follows ?? '', b.follows ?? '');
