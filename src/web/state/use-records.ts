import { useCallback, useEffect, useRef, useState } from 'react';
import type { Envelope } from '../../record/envelope.ts';
import { readRecords } from '../commands/read-records.ts';
import { type KnownRecords, noRecords, readOn, withAdded } from './known-records.ts';
import type { Page } from './page.ts';

export type RecordsLoad = 'loading' | 'ready' | 'unreachable' | 'refused';

export interface Records {
  readonly records: readonly Envelope[];
  /** Takes what the server acknowledged behind what is known. */
  readonly addKnown: (records: readonly Envelope[]) => void;
  /** Asks the server for what is new. */
  readonly readAgain: () => void;
  readonly load: RecordsLoad;
  /** Why the server does not tell what is new, in its own sentence. */
  readonly refused: string | undefined;
}

const patience = 1500;

/** Why the last reading gave nothing. */
type Trouble = 'unreachable' | { readonly refused: string };

/** The records of a book as far as they are here; a server that is gone is asked again, for what is new alone. */
export const useRecords = (page: Page, id: string): Records => {
  const [known, setKnown] = useState<KnownRecords>();
  const [trouble, setTrouble] = useState<Trouble>();
  const latest = useRef<KnownRecords>(undefined);
  const reading = useRef(() => {});
  const change = useCallback((next: KnownRecords): void => {
    latest.current = next;
    setKnown(next);
  }, []);
  useEffect(() => {
    let over = false;
    let asked = false;
    // another book begins without those of the one before
    latest.current = undefined;
    setKnown(undefined);
    const again = (): void => {
      if (asked) return;
      asked = true;
      page.later(() => {
        asked = false;
        if (!over) void read();
      }, patience);
    };
    const read = async (): Promise<void> => {
      const answer = await readRecords(page, id, latest.current?.position);
      if (over) return;
      if (answer === 'unreachable') {
        setTrouble(answer);
        again();
      } else if ('refused' in answer) {
        // nothing changes by asking again and again: it is asked when somebody looks
        setTrouble(answer);
      } else {
        setTrouble(undefined);
        change(readOn(latest.current ?? noRecords, answer));
      }
    };
    reading.current = () => void read();
    void read();
    const look = (): void => {
      if (document.visibilityState === 'visible') void read();
    };
    document.addEventListener('visibilitychange', look);
    return () => {
      over = true;
      document.removeEventListener('visibilitychange', look);
    };
  }, [page, id, change]);
  const addKnown = useCallback(
    (all: readonly Envelope[]): void => change(withAdded(latest.current ?? noRecords, all)),
    [change],
  );
  const readAgain = useCallback((): void => reading.current(), []);
  const refused = typeof trouble === 'object' ? trouble.refused : undefined;
  const load: RecordsLoad =
    known !== undefined
      ? 'ready'
      : trouble === undefined
        ? 'loading'
        : refused === undefined
          ? 'unreachable'
          : 'refused';
  return { records: (known ?? noRecords).records, addKnown, readAgain, load, refused };
};
