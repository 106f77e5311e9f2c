import { useEffect, useState } from 'react';
import type { Envelope } from '../../record/envelope.ts';
import { readRecords } from '../commands/add-record.ts';
import type { Page } from './page.ts';

export type RecordsLoad = 'loading' | 'ready' | 'unreachable';

export interface Records {
  readonly records: readonly Envelope[];
  readonly setRecords: (records: readonly Envelope[]) => void;
  readonly load: RecordsLoad;
}

const patience = 1500;
const none: readonly Envelope[] = [];

/** The records of a book as far as they are here; a server that is gone is asked again. */
export const useRecords = (page: Page, id: string): Records => {
  const [records, setRecords] = useState<readonly Envelope[]>();
  const [lost, setLost] = useState(false);
  useEffect(() => {
    let over = false;
    const read = async (): Promise<void> => {
      const all = await readRecords(page, id);
      if (over) return;
      setLost(all === undefined);
      if (all === undefined) page.later(() => void (over || read()), patience);
      else setRecords((before) => (before !== undefined && before.length > all.length ? before : all));
    };
    void read();
    const look = (): void => {
      if (document.visibilityState === 'visible') void read();
    };
    document.addEventListener('visibilitychange', look);
    return () => {
      over = true;
      document.removeEventListener('visibilitychange', look);
    };
  }, [page, id]);
  const load: RecordsLoad = records !== undefined ? 'ready' : lost ? 'unreachable' : 'loading';
  return { records: records ?? none, setRecords, load };
};
