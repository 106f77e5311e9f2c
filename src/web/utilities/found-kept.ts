import type { RecordedReading } from '../../record/readings.ts';
import type { Page } from '../state/page.ts';
import { emptyDraft, type FoundDraft, fieldsOfDraft } from './found-draft.ts';

/** Which form a draft belongs to. */
export interface DraftOf {
  readonly book: string;
  readonly floor: string;
  readonly corrects?: RecordedReading | undefined;
}

const noteOf = ({ book, floor, corrects }: DraftOf): string =>
  `reading/${book}/${floor}${corrects === undefined ? '' : `/${corrects.id}`}`;

const reader = 'reading-by';

/** Who read last on this device; nothing where nobody has yet. */
export const lastReader = (page: Page): string => {
  const by = page.notes.read(reader);
  return typeof by === 'string' ? by.trim() : '';
};

const fromReading = (reading: RecordedReading): FoundDraft => ({
  of: reading.of,
  value: reading.spread === undefined ? reading.value : `${reading.value} ± ${reading.spread}`,
  instrument: reading.instrument ?? '',
  users: reading.users === undefined ? '' : String(reading.users),
  conditions: reading.conditions ?? '',
  by: reading.by,
});

/** What stood in the form when it was left, or a form to begin with: neither Escape nor a reload loses a word. */
export const keptDraft = (page: Page, of: DraftOf): FoundDraft => {
  const first =
    of.corrects === undefined ? { ...emptyDraft, by: lastReader(page) } : fromReading(of.corrects);
  const kept = (page.notes.read(noteOf(of)) ?? {}) as Readonly<Record<string, unknown>>;
  const texts = fieldsOfDraft.flatMap((name) => {
    const text = kept[name];
    return typeof text === 'string' ? [[name, text] as const] : [];
  });
  return { ...first, ...Object.fromEntries(texts) };
};

/** Keeps a draft, or forgets it once it is a record. */
export const keepDraft = (page: Page, of: DraftOf, draft: FoundDraft | undefined): void =>
  page.notes.write(noteOf(of), draft);

/** The same person reads the next one. */
export const rememberReader = (page: Page, by: string): void => page.notes.write(reader, by);
