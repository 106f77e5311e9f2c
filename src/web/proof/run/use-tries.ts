import { useEffect, useState } from 'react';
import { type ProvedCheck, triesOf } from '../../../proof/index.ts';
import { type KnownTries, readTries } from '../../commands/read-records.ts';
import { useKeptRecords } from '../../state/kept-records.tsx';
import { usePage, usePagePart } from '../../state/page-context.ts';
import { useProof } from '../with-proof.tsx';

/** The tries before the one that counts, as far as they are here, and how many there are besides. */
export interface EarlierTries {
  readonly earlier: ProvedCheck['earlier'];
  readonly more: number;
}

/**
 * The tries of a check before the one that counts: the page holds what counts alone, so they are asked for when somebody
 * looks at the check, and anew once another one counts.
 */
export const useTries = (floor: string, { check, inForce, earlier: here }: ProvedCheck): EarlierTries => {
  const page = usePage();
  const id = usePagePart((state) => state.id);
  const { book } = useProof();
  const { standing, waiting } = useKeptRecords();
  const [told, setTold] = useState<KnownTries>();
  const last = inForce?.result.id;
  // what waits is not on the server: it is asked once more when it is
  const isSent = last !== undefined && !waiting.has(last);
  useEffect(() => {
    if (!isSent) return undefined;
    let over = false;
    void readTries(page, id, floor, check.id).then((answer) => {
      if (!over && answer !== undefined) setTold({ ...answer, of: last });
    });
    return () => {
      over = true;
    };
  }, [page, id, floor, check.id, last, isSent]);
  if (told === undefined || told.of !== last) return { earlier: here, more: 0 };
  const known = new Set(standing.records.map((record) => record.id));
  const behind = told.records.filter(({ record }) => !known.has(record.id));
  const { results } = triesOf(book, {
    records: [...behind.map(({ record }) => record), ...standing.records],
    moments: new Map([
      ...standing.moments,
      ...behind.map(({ record, moment }) => [record.id, moment] as const),
    ]),
    doubts: [],
  });
  const own = results.filter((one) => one.floor === floor && one.check === check.id && one.id !== last);
  return { earlier: own, more: told.total - told.records.length };
};
