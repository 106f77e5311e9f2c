import type { ReactElement } from 'react';
import { useKeptRecords } from '../state/kept-records.tsx';
import { useWords } from '../state/page-context.ts';

/** What of the records is not here or not on the server yet, and why; nothing where all are. */
export const RecordsState = (): ReactElement => {
  const { records, total, waiting, held, loose, load, refused } = useKeptRecords();
  const words = useWords();
  const { say } = words;
  const here = records.length - waiting.size;
  return (
    <p className="proof-kept" role="status" data-load={load}>
      {load === 'loading' && say('proving.reading')}{' '}
      {load === 'part' &&
        say('proving.part', { n: words.number(here, 6), m: words.number(Math.max(total, here), 6) })}{' '}
      {load === 'unreachable' && say('proving.unreachable')} {refused}{' '}
      {waiting.size > 0 && say('proving.waiting', { n: waiting.size })} {held !== refused && held}{' '}
      {loose && say('proving.loose')}
    </p>
  );
};
