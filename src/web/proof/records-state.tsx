import type { ReactElement } from 'react';
import { useKeptRecords } from '../state/kept-records.tsx';
import { useWords } from '../state/page-context.ts';

/** What of the records is not here or not on the server yet, and why; nothing where all are. */
export const RecordsState = (): ReactElement => {
  const { waiting, held, loose, load, refused } = useKeptRecords();
  const { say } = useWords();
  return (
    <p className="proof-kept" role="status" data-load={load}>
      {load === 'loading' && say('proving.reading')} {load === 'unreachable' && say('proving.unreachable')}{' '}
      {refused} {waiting.size > 0 && say('proving.waiting', { n: waiting.size })} {held !== refused && held}{' '}
      {loose && say('proving.loose')}
    </p>
  );
};
