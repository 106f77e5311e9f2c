import {
  createContext,
  type ReactElement,
  type ReactNode,
  useCallback,
  useContext,
  useEffect,
  useMemo,
  useRef,
  useState,
} from 'react';
import { bodyProblems } from '../../record/append-record.ts';
import { headsOfEnds } from '../../record/clocked.ts';
import { type Envelope, type Head, ORIGIN } from '../../record/envelope.ts';
import { recordKinds } from '../../record/kinds.ts';
import { type Standing, standOn } from '../../record/standing.ts';
import { addRecords, type RecordDraft } from '../commands/add-record.ts';
import { type KnownRecords, knownWith } from './known-records.ts';
import type { Page } from './page.ts';
import { usePage, usePagePart } from './page-context.ts';
import { type RecordsLoad, useRecords } from './use-records.ts';
import { forgetWaiting, keepWaiting, waitingRecords } from './waiting-records.ts';

export interface KeptRecords {
  /** What counts of what the server has and behind it of what waits in this browser: of the tries of a check the last alone. */
  readonly standing: Standing;
  /** The records of it. */
  readonly records: readonly Envelope[];
  /** The last record of each device that the server has. */
  readonly heads: readonly Head[];
  /** Ids of what the server has not acknowledged. */
  readonly waiting: ReadonlySet<string>;
  readonly load: RecordsLoad;
  /** Asks the server for what is new, e.g. once others' records were taken in. */
  readonly readAgain: () => void;
  /** Why the server does not tell what is new, e.g. this device was removed. */
  readonly refused: string | undefined;
  /** Why what waits is not on the server. */
  readonly held: string | undefined;
  /** The browser could not keep what was written: it is in this page alone. */
  readonly loose: boolean;
  /** Writes records down at once; they go to the server behind it. Gives back what is wrong with them, if anything. */
  readonly write: (drafts: readonly RecordDraft[]) => string | undefined;
}

const RecordsContext = createContext<KeptRecords | undefined>(undefined);

export const useKeptRecords = (): KeptRecords => {
  const records = useContext(RecordsContext);
  if (records === undefined) throw new Error('a part of the page stands outside its KeptRecords');
  return records;
};

const patience = 1500;

/** The most that goes in one request; the server takes a thousand. */
const mostAtOnce = 200;

/** A draft as its record will stand; place in the chain and hash are given when it is sent. */
const asRecord = (page: Page, { at, ...draft }: RecordDraft, place: number): Envelope => ({
  revision: page.state.get().revision,
  ...draft,
  book: page.state.get().id,
  writer: '',
  sequence: place,
  deviceTime: at,
  previous: ORIGIN,
  hash: ORIGIN,
});

/** What waits, one after the other to the server; what it does not take stays. */
const useSending = (
  page: Page,
  id: string,
  /** What the server is known to have; nothing before it was asked. */
  known: { readonly current: KnownRecords | undefined },
  came: (records: readonly Envelope[], sent: ReadonlySet<string>) => void,
  /** Whether they are being read: what goes next in the chain is known behind that. */
  isReading: boolean,
): { readonly held: string | undefined; readonly send: () => void } => {
  const [held, setHeld] = useState<string>();
  const busy = useRef(false);
  const over = useRef(false);
  const reading = useRef(isReading);
  reading.current = isReading;
  const send = useCallback(async (): Promise<void> => {
    if (busy.current || over.current || reading.current) return;
    busy.current = true;
    for (;;) {
      const drafts = waitingRecords(page, id).slice(0, mostAtOnce);
      if (drafts.length === 0 || over.current) break;
      const added = await addRecords(page, drafts, known.current);
      if ('refused' in added) {
        setHeld(added.refused);
        if (added.unreachable === true) page.later(() => void send(), patience);
        break;
      }
      setHeld(undefined);
      const sent = new Set(drafts.map((draft) => draft.id));
      forgetWaiting(page, id, sent);
      came(added.records, sent);
    }
    busy.current = false;
  }, [page, id, known, came]);
  useEffect(() => {
    over.current = false;
    const again = (): void => void send();
    window.addEventListener('online', again);
    return () => {
      over.current = true;
      window.removeEventListener('online', again);
    };
  }, [send]);
  useEffect(() => {
    if (!isReading) void send();
  }, [send, isReading]);
  return { held, send: () => void send() };
};

/** What counts of the records of the open book, with what this browser still keeps of them. */
export const WithRecords = ({ children }: { readonly children: ReactNode }): ReactElement => {
  const page = usePage();
  const id = usePagePart((state) => state.id);
  const { known: read, addKnown, readAgain, refused, load } = useRecords(page, id);
  const [drafts, setDrafts] = useState(() => waitingRecords(page, id));
  const [loose, setLoose] = useState(false);
  const known = useRef<KnownRecords>(undefined);
  known.current = load === 'ready' ? read : undefined;
  const came = useCallback(
    (all: readonly Envelope[], sent: ReadonlySet<string>): void => {
      // what goes next begins at once, before the page is painted anew
      known.current = known.current && knownWith(known.current, all);
      addKnown(all);
      setDrafts((before) => before.filter((draft) => !sent.has(draft.id)));
    },
    [addKnown],
  );
  const { held, send } = useSending(page, id, known, came, load === 'loading');
  const write = useCallback(
    (fresh: readonly RecordDraft[]): string | undefined => {
      const problems = fresh.flatMap((draft) => bodyProblems(draft, recordKinds, ''));
      if (problems.length > 0) return [...new Set(problems.map(page.words.problem))].join(' ');
      const { revision } = page.state.get();
      const dated = fresh.map((draft) => ({ revision, ...draft }));
      setLoose(!keepWaiting(page, id, dated));
      setDrafts((before) => [...before, ...dated]);
      send();
      return undefined;
    },
    [page, id, send],
  );
  const value = useMemo((): KeptRecords => {
    const there = new Set(read.standing.records.map((record) => record.id));
    const left = drafts.filter((draft) => !there.has(draft.id));
    const standing = standOn(
      read.standing,
      left.map((draft, place) => asRecord(page, draft, place)),
    );
    return {
      standing,
      records: standing.records,
      heads: headsOfEnds(read.standing.ends),
      waiting: new Set(left.map((draft) => draft.id)),
      load,
      readAgain,
      refused,
      held: left.length === 0 ? undefined : held,
      loose: loose && left.length > 0,
      write,
    };
  }, [page, read, drafts, load, readAgain, refused, held, loose, write]);
  return <RecordsContext value={value}>{children}</RecordsContext>;
};
