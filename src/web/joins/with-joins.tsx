import { createContext, type ReactElement, type ReactNode, useContext, useMemo } from 'react';
import type { Book } from '../../book/index.ts';
import {
  type BoxEnd,
  type BoxLacks,
  type BoxPicture,
  boxPictures,
  type EndSeen,
  endsOfBoxes,
  faultsOfJoins,
  type JoinFault,
  type JoinState,
  joinStates,
  type LaidJoin,
  lacksOfBoxes,
  laidJoins,
  type Schedule,
  scheduleOf,
  seenEnds,
} from '../../joins/index.ts';
import { useKeptChoice } from '../state/kept-choice.ts';
import { useKeptRecords } from '../state/kept-records.tsx';
import { usePage, usePagePart } from '../state/page-context.ts';

/** What the page speaks of: the joins of the open book and what is recorded of them. */
export interface ShownJoins {
  readonly book: Book;
  readonly joins: readonly LaidJoin[];
  readonly byTag: ReadonlyMap<string, LaidJoin>;
  readonly faults: readonly JoinFault[];
  readonly schedule: Schedule;
  readonly states: ReadonlyMap<string, JoinState>;
  readonly boxes: readonly BoxLacks[];
  /** Ends that lie in each box, along its strips. */
  readonly ends: ReadonlyMap<string, readonly BoxEnd[]>;
  /** Photographs of each box with the codes on them. */
  readonly pictures: ReadonlyMap<string, readonly BoxPicture[]>;
  /** Where each end is seen, by its key. */
  readonly seen: ReadonlyMap<string, readonly EndSeen[]>;
  /** Where one works; records bear it. */
  readonly floor: string | undefined;
  readonly chooseFloor: (tag: string) => void;
  /** The join that the address names, by its tag or by the code on its label. */
  readonly asked: string | undefined;
}

const JoinsContext = createContext<ShownJoins | undefined>(undefined);

export const useJoins = (): ShownJoins => {
  const shown = useContext(JoinsContext);
  if (shown === undefined) throw new Error('a part of the page stands outside its joins');
  return shown;
};

/** The joins of the open book over the records that are here; the floor stays with this browser. */
export const WithJoins = ({
  asked,
  absent,
  children,
}: {
  readonly asked: string | undefined;
  readonly absent: ReactNode;
  readonly children: ReactNode;
}): ReactElement => {
  const page = usePage();
  const id = usePagePart((state) => state.id);
  const book = usePagePart((state) => state.book);
  const { records } = useKeptRecords();
  const [chosen, chooseFloor] = useKeptChoice<string>(page, `joins-floor/${id}`);
  const listed = useMemo(() => {
    if (book === undefined) return undefined;
    const joins = laidJoins(book);
    return {
      book,
      joins,
      byTag: new Map(joins.map((join) => [join.tag, join])),
      faults: faultsOfJoins(joins, book),
      schedule: scheduleOf(joins, book),
      ends: endsOfBoxes(joins),
    };
  }, [book]);
  const shown = useMemo((): ShownJoins | undefined => {
    if (listed === undefined) return undefined;
    const states = joinStates(records);
    const pictures = boxPictures(records);
    const floors = listed.book.floors ?? [];
    // what was parted is made again where the line is bound for
    const floor =
      floors.find(({ tag }) => tag === chosen) ??
      floors.find(({ role }) => role === 'bound for') ??
      floors[0];
    return {
      ...listed,
      states,
      boxes: lacksOfBoxes(listed.joins, states, listed.faults),
      pictures,
      seen: seenEnds(pictures),
      floor: floor?.tag,
      chooseFloor,
      asked,
    };
  }, [listed, records, chosen, chooseFloor, asked]);
  if (shown === undefined) return <>{absent}</>;
  return <JoinsContext value={shown}>{children}</JoinsContext>;
};
