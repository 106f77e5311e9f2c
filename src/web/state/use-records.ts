import { useCallback, useEffect, useRef, useState } from 'react';
import type { Envelope } from '../../record/envelope.ts';
import { readRecords, readStanding, type StandingAnswer, standingName } from '../commands/read-records.ts';
import { type KnownRecords, knownWith, noRecords } from './known-records.ts';
import type { Page } from './page.ts';

export type RecordsLoad = 'loading' | 'ready' | 'unreachable' | 'refused';

export interface Records {
  /** What counts of them, as far as it is here. */
  readonly known: KnownRecords;
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

const isTrouble = (answer: object | Trouble): answer is Trouble =>
  answer === 'unreachable' || 'refused' in (answer as object);

/** What counts of the records of a book; a server that is gone is asked again, for what is new alone. */
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
    const failed = (answer: Trouble): void => {
      setTrouble(answer);
      // one who is refused changes nothing by asking again and again: it is asked when somebody looks
      if (answer === 'unreachable') again();
    };
    /** What counts; what was added meanwhile comes with what is behind it. */
    const anew = async (): Promise<boolean> => {
      const answer = await (page.ahead.take<StandingAnswer>(standingName(id)) ?? readStanding(page, id));
      if (over) return false;
      if (isTrouble(answer)) failed(answer);
      else change(answer);
      return !isTrouble(answer);
    };
    const onward = async ({ position }: KnownRecords): Promise<boolean> => {
      const answer = await readRecords(page, id, position);
      if (over) return false;
      if (isTrouble(answer)) failed(answer);
      else change(knownWith(latest.current ?? noRecords, answer.records, answer.position));
      return !isTrouble(answer);
    };
    const read = async (): Promise<void> => {
      const before = latest.current;
      const isWhole = before !== undefined && !before.standing.isWanting;
      if (!isWhole && !(await anew())) return;
      if (before !== undefined && !(await onward(latest.current ?? noRecords))) return;
      setTrouble(undefined);
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
    (all: readonly Envelope[]): void => change(knownWith(latest.current ?? noRecords, all)),
    [change],
  );
  const readAgain = useCallback((): void => reading.current(), []);
  const wanting = known?.standing.isWanting === true;
  // a try was taken back: what counts in its place is asked for
  useEffect(() => {
    if (wanting) readAgain();
  }, [wanting, readAgain]);
  const refused = typeof trouble === 'object' ? trouble.refused : undefined;
  const load: RecordsLoad =
    known !== undefined
      ? 'ready'
      : trouble === undefined
        ? 'loading'
        : refused === undefined
          ? 'unreachable'
          : 'refused';
  return { known: known ?? noRecords, addKnown, readAgain, load, refused };
};
