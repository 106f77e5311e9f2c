import {
  createContext,
  type ReactElement,
  type ReactNode,
  useCallback,
  useContext,
  useMemo,
  useState,
} from 'react';
import type { Envelope } from '../../record/envelope.ts';
import { type RecordedReading, readingsOf } from '../../record/readings.ts';
import { type Added, addRecord, type RecordDraft } from '../commands/add-record.ts';
import type { Page } from '../state/page.ts';
import { PageContext, usePage, usePagePart } from '../state/page-context.ts';
import { type RecordsLoad, useRecords } from '../state/use-records.ts';
import { type Basis, bases, bookOn, hasTemporary, stateOn } from './found-state.ts';

/** What was read on the floors of the open book, and on what its assessment runs. */
export interface Found {
  readonly basis: Basis;
  readonly choose: (basis: Basis) => void;
  readonly records: readonly Envelope[];
  readonly readings: readonly RecordedReading[];
  readonly load: RecordsLoad;
  readonly add: (draft: RecordDraft) => Promise<Added>;
}

const FoundContext = createContext<Found | undefined>(undefined);

export const useFound = (): Found => {
  const found = useContext(FoundContext);
  if (found === undefined) throw new Error('a part of the page stands outside its FoundContext');
  return found;
};

const noteOf = (id: string): string => `basis/${id}`;

const keptBasis = (page: Page, id: string): Basis => {
  const kept = page.notes.read(noteOf(id));
  return bases.find((basis) => basis === kept) ?? 'promised';
};

/** The page on what was promised, on what was found, or on the supplies of the visit, as the person chose. */
export const OnBasis = ({ children }: { readonly children: ReactNode }): ReactElement => {
  const page = usePage();
  const id = usePagePart((state) => state.id);
  const temporary = usePagePart(({ book }) => hasTemporary(book));
  const { known, addKnown, load } = useRecords(page, id);
  const { records } = known.standing;
  const [chosen, setChosen] = useState(() => keptBasis(page, id));
  const readings = useMemo(() => readingsOf(records), [records]);
  const possible = chosen === 'found' ? readings.length > 0 : chosen === 'temporary' ? temporary : true;
  const basis = possible ? chosen : 'promised';
  const on = useMemo((): Page => {
    if (basis === 'promised') return page;
    return {
      ...page,
      state: stateOn(page.state, basis, readings),
      solveRemedies: (question, answer) =>
        page.solveRemedies({ ...question, book: bookOn(question.book, basis, readings).book }, answer),
    };
  }, [page, basis, readings]);
  const choose = useCallback(
    (next: Basis) => {
      page.notes.write(noteOf(id), next === 'promised' ? undefined : next);
      setChosen(next);
    },
    [page, id],
  );
  const add = useCallback(
    async (draft: RecordDraft): Promise<Added> => {
      const added = await addRecord(page, draft);
      if ('records' in added) addKnown(added.records);
      return added;
    },
    [page, addKnown],
  );
  const found = useMemo(
    (): Found => ({ basis, choose, records, readings, load, add }),
    [basis, choose, records, readings, load, add],
  );
  return (
    <PageContext value={on}>
      <FoundContext value={found}>{children}</FoundContext>
    </PageContext>
  );
};
