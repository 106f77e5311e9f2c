import { useLayoutEffect } from 'react';
import { readStanding, standingName } from '../commands/read-records.ts';
import type { Route } from '../shell/route.ts';
import { usePage } from './page-context.ts';
import { workOutUtilities } from './work-out-utilities.ts';

/** Pages that show what counts of the records. */
const withRecords: ReadonlySet<Route['page']> = new Set(['proof', 'joins', 'fill']);

/** What a page rests on is begun at the press, while its code is on its way. */
export const useBegun = (asked: Route['page'], isReady: boolean): void => {
  const page = usePage();
  // before the code is asked for: a browser asks one server for six things at a time
  useLayoutEffect(() => {
    if (!isReady) return undefined;
    const { id, assessment } = page.state.get();
    if (withRecords.has(asked)) page.ahead.ask(standingName(id), () => readStanding(page, id));
    return asked === 'proof' && assessment !== undefined
      ? workOutUtilities(page, assessment.floors)
      : undefined;
  }, [page, asked, isReady]);
};
