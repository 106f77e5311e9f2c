import { useCallback, useEffect, useRef, useState } from 'react';
import type { Envelope } from '../../record/envelope.ts';
import { readRecords, readRecordsBack } from '../commands/read-records.ts';
import { type KnownRecords, noRecords, readBefore, readOn, withAdded } from './known-records.ts';
import type { Page } from './page.ts';

/** Of `part` the newest are here and those before them are on their way. */
export type RecordsLoad = 'loading' | 'part' | 'ready' | 'unreachable' | 'refused';

export interface Records {
  readonly records: readonly Envelope[];
  /** Takes what the server acknowledged behind what is known. */
  readonly addKnown: (records: readonly Envelope[]) => void;
  /** Asks the server for what is new. */
  readonly readAgain: () => void;
  readonly load: RecordsLoad;
  /** Records that the book has, as far as the server told. */
  readonly total: number;
  /** Why the server does not tell what is new, in its own sentence. */
  readonly refused: string | undefined;
}

const patience = 1500;

/** Why the last reading gave nothing. */
type Trouble = 'unreachable' | { readonly refused: string };

const isTrouble = (answer: object | Trouble): answer is Trouble =>
  answer === 'unreachable' || 'refused' in (answer as object);

/** The records of a book as far as they are here, the newest first; a server that is gone is asked again, for what is new alone. */
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
    let goingBack = false;
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
    const failed = (answer: Trouble): void => {
      setTrouble(answer);
      // one who is refused changes nothing by asking again and again: it is asked when somebody looks
      if (answer === 'unreachable') again();
    };
    const newest = async (): Promise<boolean> => {
      const answer = await readRecordsBack(page, id);
      if (over) return false;
      if (isTrouble(answer)) failed(answer);
      else if (latest.current === undefined) change(readBefore(undefined, answer));
      return !isTrouble(answer);
    };
    const onward = async ({ position }: KnownRecords): Promise<boolean> => {
      const answer = await readRecords(page, id, position);
      if (over) return false;
      if (isTrouble(answer)) failed(answer);
      else change(readOn(latest.current ?? noRecords, answer));
      return !isTrouble(answer);
    };
    const back = async (): Promise<void> => {
      if (goingBack) return;
      goingBack = true;
      for (let of = latest.current; of !== undefined && of.begins > 0; of = latest.current) {
        // as many again as are here: what is shown is worked out anew a few times, not at every answer
        const answer = await readRecordsBack(page, id, { before: of.begins, least: of.records.length });
        if (over) return;
        if (isTrouble(answer)) {
          failed(answer);
          break;
        }
        change(readBefore(latest.current, answer));
      }
      goingBack = false;
    };
    const read = async (): Promise<void> => {
      const done = latest.current === undefined ? await newest() : await onward(latest.current);
      if (!done) return;
      setTrouble(undefined);
      void back();
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
      ? known.begins > 0
        ? 'part'
        : 'ready'
      : trouble === undefined
        ? 'loading'
        : refused === undefined
          ? 'unreachable'
          : 'refused';
  const { records, total } = known ?? noRecords;
  return { records, addKnown, readAgain, load, total: Math.max(total, records.length), refused };
};
