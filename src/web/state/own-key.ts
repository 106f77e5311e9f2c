import type { Page } from './page.ts';
import { isSealedKey, type SealedKey } from './sealed-key.ts';

type Notes = Pick<Page, 'notes'>;

const note = 'own-keys';

/** The keys of the people who sign in this browser: a tablet is handed from one to the other. */
export const readKeys = ({ notes }: Notes): readonly SealedKey[] => {
  const kept = notes.read(note);
  return Array.isArray(kept) ? kept.filter(isSealedKey) : [];
};

/** The key of a person, by its public part. */
export const readKey = (page: Notes, key: string): SealedKey | undefined =>
  readKeys(page).find((one) => one.key === key);

/**
 * Keeps a key in this browser, once.
 *
 * Returns  whether it is kept: a full storage keeps nothing
 */
export const keepKey = (page: Notes, key: SealedKey): boolean => {
  page.notes.write(note, [...readKeys(page).filter((one) => one.key !== key.key), key]);
  return readKey(page, key.key) !== undefined;
};

/** Lets go of a key; who has it as a file can bring it back. */
export const forgetKey = (page: Notes, key: string): void => {
  const left = readKeys(page).filter((one) => one.key !== key);
  page.notes.write(note, left.length === 0 ? undefined : left);
};
