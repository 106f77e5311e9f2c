import type { Page } from './page.ts';

/** Whose key it is, as somebody said. */
export interface KnownKey {
  readonly by: string;
  readonly role: string;
  readonly key: string;
  /** Whether its digits were compared with the person by voice. */
  readonly compared?: boolean;
}

type Notes = Pick<Page, 'notes'>;

const note = 'known-keys';
/** No hand-over has more signers; a file with more is another file. */
const mostKeys = 1000;

const isName = (value: unknown): boolean =>
  typeof value === 'string' && value.trim() !== '' && value.length <= 200;

const isKnown = (value: unknown): value is KnownKey => {
  if (typeof value !== 'object' || value === null) return false;
  const { by, role, key, compared } = value as Partial<KnownKey>;
  return (
    isName(by) &&
    isName(role) &&
    typeof key === 'string' &&
    /^[0-9a-f]{64}$/.test(key) &&
    (compared === undefined || typeof compared === 'boolean')
  );
};

/** The keys that this browser was told of. */
export const readKnownKeys = ({ notes }: Notes): readonly KnownKey[] => {
  const kept = notes.read(note);
  return Array.isArray(kept) ? kept.filter(isKnown) : [];
};

/** What is known of keys is written down in the place of what was known of the same ones. */
export const keepKnownKeys = (page: Notes, keys: readonly KnownKey[]): void => {
  const fresh = new Set(keys.map(({ key }) => key));
  page.notes.write(note, [...readKnownKeys(page).filter(({ key }) => !fresh.has(key)), ...keys]);
};

/** Lets go of a key whose person is no longer believed in. */
export const forgetKnownKey = (page: Notes, key: string): void => {
  const left = readKnownKeys(page).filter((one) => one.key !== key);
  page.notes.write(note, left.length === 0 ? undefined : left);
};

/** Keys as a file for the other party: the public parts alone. */
export const keyListFile = (keys: readonly KnownKey[]): string =>
  `${JSON.stringify({ twinfloorKeys: 1, keys: keys.map(({ by, role, key }) => ({ by, role, key })) }, undefined, 2)}\n`;

/** The keys of such a file; nothing where it is none. That a file names a person proves nothing: none of them is compared. */
export const readKeyList = (text: string): readonly KnownKey[] | undefined => {
  try {
    const file = JSON.parse(text) as { readonly twinfloorKeys?: unknown; readonly keys?: unknown };
    if (file.twinfloorKeys !== 1 || !Array.isArray(file.keys) || file.keys.length > mostKeys)
      return undefined;
    if (!file.keys.every(isKnown)) return undefined;
    return file.keys.map(({ by, role, key }) => ({ by, role, key }));
  } catch {
    return undefined;
  }
};

/** What a list would change: keys that are new, and those that are known under another name. */
export const keysAgainst = (
  known: readonly KnownKey[],
  told: readonly KnownKey[],
): { readonly fresh: readonly KnownKey[]; readonly renamed: readonly KnownKey[] } => {
  const before = new Map(known.map((one) => [one.key, one]));
  return {
    fresh: told.filter(({ key }) => !before.has(key)),
    renamed: told.filter(({ key, by }) => (before.get(key)?.by ?? by) !== by),
  };
};
