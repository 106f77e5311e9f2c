import { useMemo, useState } from 'react';
import {
  type HeldCondition,
  type JudgedResult,
  judgeResult,
  type ProvedCheck,
  placesOfBook,
  restsOn,
  withInstruments,
} from '../../../proof/index.ts';
import type { Kind } from '../../../quantity/index.ts';
import { pressed } from '../../pad/key-pad.tsx';
import type { AttachedMedia } from '../../state/kept-media.ts';
import { useKeptRecords } from '../../state/kept-records.tsx';
import { usePage, usePagePart } from '../../state/page-context.ts';
import { useCheckSays } from '../check-says.ts';
import { mediaDrafts } from '../media/media-drafts.ts';
import { keepPerson } from '../person.ts';
import { useProof } from '../with-proof.tsx';
import { lastReads } from './last-reads.ts';
import { restoredRun } from './restored-run.ts';
import { kindOfCheck, type MadeBody, type RunProblems, runBody } from './run-body.ts';
import { forgetRun, keepRun, keptRun, type RunDraft, type RunText } from './run-draft.ts';
import { useUnits } from './use-units.ts';

/** What is written in by the big keys: the reading, or the condition of an id. */
export type RunField = 'reading' | `condition ${string}`;

export interface Run {
  readonly one: ProvedCheck;
  readonly draft: RunDraft;
  /** Of the readings; undefined where the check is seen. */
  readonly kind: Kind | undefined;
  readonly made: MadeBody;
  /** What it comes to as it stands; nothing before anything was told. */
  readonly verdict: JudgedResult | undefined;
  /** Its conditions as they are read so far. */
  readonly held: readonly HeldCondition[];
  readonly problems: RunProblems;
  readonly active: RunField;
  readonly told: string;
  /** Id of the record that was just written, until the next try begins. */
  readonly written: string | undefined;
  /** Conditions that were read at another check and not here. */
  readonly others: ReadonlyMap<string, { readonly read: string; readonly at: string }>;
  readonly unitOf: (kind: Kind) => string;
  readonly chooseUnit: (kind: Kind, unit: string) => void;
  readonly focus: (field: RunField) => void;
  readonly press: (key: string) => void;
  readonly typeReading: (text: string) => void;
  readonly takeReading: () => void;
  readonly addReading: (text: string) => void;
  readonly dropReading: (at: number) => void;
  readonly see: (seen: boolean) => void;
  readonly readCondition: (id: string, text: string) => void;
  readonly readAsBefore: () => void;
  readonly type: (name: RunText, text: string) => void;
  readonly attach: (attached: readonly AttachedMedia[]) => void;
  readonly write: () => void;
  readonly correct: (tried: JudgedResult) => void;
  readonly leaveCorrection: () => void;
  readonly takeBack: (tried: JudgedResult) => void;
}

/** Everything that happens while one check is tried: what is typed stays over a reload, the press of a key makes a record. */
export const useRun = (one: ProvedCheck): Run => {
  const page = usePage();
  const { words } = page;
  const { say } = words;
  const id = usePagePart((state) => state.id);
  const { book, floor } = useProof();
  const { write } = useKeptRecords();
  const says = useCheckSays();
  const units = useUnits();
  const { check } = one;
  const kind = kindOfCheck(check);
  const of = { book: id, floor: floor.floor, check: check.id };
  const [draft, setDraft] = useState(() => keptRun(page, of));
  const firstEmpty = check.under.find(
    (condition) => condition.read === 'quantity' && (draft.conditions[condition.id] ?? '') === '',
  );
  const [active, setActive] = useState<RunField>(
    firstEmpty === undefined ? 'reading' : `condition ${firstEmpty.id}`,
  );
  const [tried, setTried] = useState(false);
  const [told, setTold] = useState('');
  const [written, setWritten] = useState<string>();
  const basis = useMemo(() => placesOfBook(book).basis(restsOn(check)), [book, check]);
  const near = check.limits[0]?.figure.value;
  const unitOf = (of: Kind): string => units.unitOf(of, of === kind ? near : undefined);
  const made = runBody(words, draft, { check, floor: floor.floor, basis, unitOf });
  const silent = made.missing.seen ?? made.missing.reading;
  const [shown] = withInstruments([{ ...made.body, id: '', at: page.now() }], book);
  const judged = judgeResult(check, shown!, '');
  const verdict = silent === undefined ? judged : undefined;
  const others = useMemo(() => {
    const own = new Set<string>([...check.under.map((condition) => condition.id), ...check.ownConditions]);
    return new Map([...lastReads(floor.checks)].filter(([condition]) => own.has(condition)));
  }, [floor, check]);
  const set = (next: RunDraft): void => {
    setDraft(next);
    keepRun(page, of, next);
    setWritten(undefined);
  };
  const typeIn = (field: RunField, text: string): void =>
    field === 'reading'
      ? set({ ...draft, reading: text })
      : set({ ...draft, conditions: { ...draft.conditions, [field.slice('condition '.length)]: text } });
  const textOf = (field: RunField): string =>
    field === 'reading' ? draft.reading : (draft.conditions[field.slice('condition '.length)] ?? '');
  const begin = (next: RunDraft): void => {
    set(next);
    setTried(false);
  };
  const writeDown = (): void => {
    setTried(true);
    const problems = [...Object.values(made.wrong), ...Object.values(made.missing)];
    if (problems.length > 0) {
      setTold(problems.join(' '));
      return;
    }
    const fresh = page.newId();
    const { by } = made.body;
    const wrong = write([
      ...mediaDrafts(page, draft.attached, { of: check.on, by, floor: floor.floor }),
      {
        id: fresh,
        kind: 'check',
        version: 2,
        at: page.now(),
        body: made.body,
        ...(draft.corrects === undefined ? {} : { supersedes: draft.corrects }),
      },
    ]);
    if (wrong !== undefined) {
      setTold(wrong);
      return;
    }
    keepPerson(page, by);
    forgetRun(page, of, draft);
    setDraft(keptRun(page, of));
    setTried(false);
    setWritten(fresh);
    setTold(
      say(draft.corrects === undefined ? 'proving.run.told.kept' : 'proving.run.told.corrected', {
        check: says.name(check),
        state: say(`proof.state.${verdict?.verdict ?? 'open'}`),
      }),
    );
  };
  const takeBack = (result: JudgedResult): void => {
    const wrong = write([
      {
        id: page.newId(),
        kind: 'note',
        version: 1,
        at: page.now(),
        supersedes: result.result.id,
        body: {
          text: say('proving.run.takenBack.note', { check: says.name(check) }),
          by: draft.texts.by.trim() || result.result.by,
        },
      },
    ]);
    if (wrong === undefined) {
      const { corrects: _, ...again } = restoredRun(result);
      // what was typed comes back, so that only the slip is mended
      begin(again);
    }
    setTold(wrong ?? say('proving.run.told.takenBack', { check: says.name(check) }));
  };
  return {
    one,
    draft,
    kind,
    made,
    verdict,
    held: judged.conditions,
    problems: tried ? { ...made.missing, ...made.wrong } : {},
    active,
    told,
    written,
    others: new Map([...others].filter(([condition]) => (draft.conditions[condition] ?? '') === '')),
    unitOf,
    chooseUnit: units.choose,
    focus: setActive,
    press: (key) => {
      const text = textOf(active);
      // a text with its unit was taken over from a record: a digit begins a new one
      typeIn(active, pressed(/\p{L}/u.test(text) ? '' : text, key));
    },
    typeReading: (text) => typeIn('reading', text),
    takeReading: () => {
      const own = made.body.readings ?? [];
      if (own.length > draft.readings.length) set({ ...draft, reading: '', readings: own });
    },
    addReading: (text) => set({ ...draft, readings: [...draft.readings, text] }),
    dropReading: (at) => set({ ...draft, readings: draft.readings.filter((_, i) => i !== at) }),
    see: (seen) => set({ ...draft, seen }),
    readCondition: (condition, text) => typeIn(`condition ${condition}`, text),
    readAsBefore: () =>
      set({
        ...draft,
        conditions: {
          ...Object.fromEntries([...others].map(([condition, { read }]) => [condition, read])),
          ...Object.fromEntries(Object.entries(draft.conditions).filter(([, text]) => text !== '')),
        },
      }),
    type: (name, text) => set({ ...draft, texts: { ...draft.texts, [name]: text } }),
    attach: (attached) => set({ ...draft, attached }),
    write: writeDown,
    correct: (result) => {
      begin(restoredRun(result));
      setTold('');
    },
    leaveCorrection: () => {
      forgetRun(page, of, draft);
      begin(keptRun(page, of));
    },
    takeBack,
  };
};
