import { useCallback, useEffect, useState } from 'react';
import { type KnownKey, keepKnownKeys, readKnownKeys } from '../../state/known-keys.ts';
import { keepKey, readKeys } from '../../state/own-key.ts';
import { usePage } from '../../state/page-context.ts';
import type { SealedKey } from '../../state/sealed-key.ts';

export interface Keys {
  /** Keys of the people who sign in this browser. */
  readonly own: readonly SealedKey[];
  /** Keys that this browser was told of. */
  readonly known: readonly KnownKey[];
  /** Keeps a key; says whether the browser could. */
  readonly keep: (key: SealedKey) => boolean;
  readonly tell: (keys: readonly KnownKey[]) => void;
  /** Looks again at what is kept. */
  readonly look: () => void;
}

/** The keys of this browser, also as another tab keeps them. */
export const useKeys = (): Keys => {
  const page = usePage();
  const read = useCallback(() => ({ own: readKeys(page), known: readKnownKeys(page) }), [page]);
  const [keys, setKeys] = useState(read);
  const look = useCallback(() => setKeys(read()), [read]);
  useEffect(() => {
    const stops = ['own-keys', 'known-keys'].map((name) => page.notes.watch(name, look));
    return () => {
      for (const stop of stops) stop();
    };
  }, [page, look]);
  return {
    ...keys,
    keep: (key) => {
      const kept = keepKey(page, key);
      look();
      return kept;
    },
    tell: (told) => {
      keepKnownKeys(page, told);
      look();
    },
    look,
  };
};
