import type { RecordedState } from '../../../joins/recorded-joins.ts';
import type { RecordDraft } from '../../commands/add-record.ts';
import { lastPerson } from '../../proof/person.ts';
import { isAttached } from '../../state/is-attached.ts';
import type { AttachedMedia } from '../../state/kept-media.ts';
import { keptFields, keptTexts } from '../../state/kept-texts.ts';
import type { Page } from '../../state/page.ts';

/** In the order in which one meets them. */
export const marks: readonly RecordedState[] = ['made', 'tested', 'trouble', 'parted'];

const markTexts = ['method', 'reading', 'instrument', 'remark', 'by'] as const;
export type MarkText = (typeof markTexts)[number];

/** What somebody is about to say of a join. */
export interface MarkDraft {
  readonly state: RecordedState | '';
  readonly texts: Readonly<Record<MarkText, string>>;
  readonly attached: readonly AttachedMedia[];
}

export interface MarkOf {
  readonly book: string;
  readonly join: string;
}

const noteOf = ({ book, join }: MarkOf): string => `join-mark/${book}/${join}`;
const instrumentNote = 'join-instrument';

type Notes = Pick<Page, 'notes'>;

/** What stood in the fields when the page was left: a reload loses no digit. */
export const keptMark = (page: Notes, of: MarkOf): MarkDraft => {
  const kept = keptFields(page.notes.read(noteOf(of)));
  const texts = keptTexts(kept.texts);
  const instrument = page.notes.read(instrumentNote);
  const usual: MarkDraft['texts'] = {
    method: '',
    reading: '',
    instrument: typeof instrument === 'string' ? instrument : '',
    remark: '',
    by: lastPerson(page),
  };
  return {
    state: marks.find((state) => state === kept.state) ?? '',
    texts: {
      ...usual,
      ...Object.fromEntries(Object.entries(texts).filter(([name]) => Object.hasOwn(usual, name))),
    },
    attached: Array.isArray(kept.attached) ? kept.attached.filter(isAttached) : [],
  };
};

export const keepMark = (page: Notes, of: MarkOf, draft: MarkDraft): void =>
  page.notes.write(noteOf(of), draft);

/** It is written down: the next mark begins anew, with the same person and instrument. */
export const forgetMark = (page: Notes, of: MarkOf, { texts: { instrument } }: MarkDraft): void => {
  page.notes.write(noteOf(of), undefined);
  page.notes.write(instrumentNote, instrument);
};

/** What is missing before a mark can be written down. */
export type MarkLack = 'state' | 'by' | 'remark' | 'method' | 'reading';

export const markLacks = ({ state, texts }: MarkDraft, reading: string | undefined): readonly MarkLack[] => {
  const typed = texts.reading.trim() !== '';
  return [
    ...(state === '' ? (['state'] as const) : []),
    // a number of which nobody says what was measured tells nothing
    ...(typed && texts.method === '' ? (['method'] as const) : []),
    ...((typed && reading === undefined) || (texts.method === 'insulation' && !typed)
      ? (['reading'] as const)
      : []),
    ...(state === 'trouble' && texts.remark.trim() === '' ? (['remark'] as const) : []),
    ...(texts.by.trim() === '' ? (['by'] as const) : []),
  ];
};

const said = (name: string, text: string | undefined): Readonly<Record<string, string>> =>
  text === undefined || text.trim() === '' ? {} : { [name]: text.trim() };

/** The record of a join as it stands from now on. */
export const markRecord = (
  page: Pick<Page, 'newId' | 'now'>,
  { state, texts, attached }: MarkDraft,
  about: {
    readonly join: string;
    readonly floor: string | undefined;
    readonly reading: string | undefined;
    /** Records of the join that the person had before them. */
    readonly follows: readonly string[];
  },
): RecordDraft => ({
  id: page.newId(),
  kind: 'join',
  version: 2,
  at: page.now(),
  body: {
    join: about.join,
    state,
    by: texts.by.trim(),
    ...said('floor', about.floor),
    ...said('reading', about.reading),
    ...said('method', texts.method),
    // an instrument belongs to what was read with it
    ...said('instrument', texts.method === '' ? undefined : texts.instrument),
    ...said('remark', texts.remark),
    ...(attached.length === 0 ? {} : { evidence: attached.map(({ sha256 }) => sha256) }),
    follows: about.follows,
  },
});
