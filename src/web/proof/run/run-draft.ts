import type { AttachedMedia } from '../../state/kept-media.ts';
import { keptFields, keptTexts } from '../../state/kept-texts.ts';
import type { Page } from '../../state/page.ts';
import { lastPerson } from '../person.ts';

/** What is typed beside the readings. */
export const runTexts = [
  'by',
  'witness',
  'instrument',
  'remark',
  'why',
  'until',
  'accepter',
  'what',
  'who',
  'due',
] as const;
export type RunText = (typeof runTexts)[number];

/** A check while it is tried. */
export interface RunDraft {
  /** What stands in the field of the next reading. */
  readonly reading: string;
  /** Readings that are taken, as they will stand in the record. */
  readonly readings: readonly string[];
  readonly seen?: boolean;
  /** By condition, as typed. */
  readonly conditions: Readonly<Record<string, string>>;
  readonly texts: Readonly<Record<RunText, string>>;
  readonly attached: readonly AttachedMedia[];
  /** Digests of what the corrected record names already. */
  readonly evidence: readonly string[];
  /** Id of the record that this one replaces. */
  readonly corrects?: string;
}

const noTexts = Object.fromEntries(runTexts.map((name) => [name, ''])) as RunDraft['texts'];

export const emptyRun: RunDraft = {
  reading: '',
  readings: [],
  conditions: {},
  texts: noTexts,
  attached: [],
  evidence: [],
};

/** Which draft: each check of each floor has its own. */
export interface RunOf {
  readonly book: string;
  readonly floor: string;
  readonly check: string;
}

const draftNote = ({ book, floor, check }: RunOf): string => `proof-run/${book}/${floor}/${check}`;
const witnessNote = ({ book, floor }: RunOf): string => `proof-witness/${book}/${floor}`;

const texts = (kept: unknown): readonly string[] =>
  Array.isArray(kept) ? kept.filter((one): one is string => typeof one === 'string') : [];

const isAttached = (kept: unknown): kept is AttachedMedia => {
  const { sha256, mediaType, bytes } = keptFields(kept);
  return typeof sha256 === 'string' && typeof mediaType === 'string' && typeof bytes === 'number';
};

type Notes = Pick<Page, 'notes'>;

/** What stood in the fields when the page was left: a reload loses no digit. */
export const keptRun = (page: Notes, of: RunOf): RunDraft => {
  const kept = keptFields(page.notes.read(draftNote(of)));
  const witness = page.notes.read(witnessNote(of));
  const known = Object.entries(keptTexts(kept.texts)).filter(([name]) => Object.hasOwn(noTexts, name));
  return {
    reading: typeof kept.reading === 'string' ? kept.reading : '',
    readings: texts(kept.readings),
    ...(typeof kept.seen === 'boolean' ? { seen: kept.seen } : {}),
    conditions: keptTexts(kept.conditions),
    texts: {
      ...noTexts,
      by: lastPerson(page),
      witness: typeof witness === 'string' ? witness : '',
      ...Object.fromEntries(known),
    },
    attached: Array.isArray(kept.attached) ? kept.attached.filter(isAttached) : [],
    evidence: texts(kept.evidence),
    ...(typeof kept.corrects === 'string' ? { corrects: kept.corrects } : {}),
  };
};

export const keepRun = (page: Notes, of: RunOf, draft: RunDraft): void =>
  page.notes.write(draftNote(of), draft);

/** The check is written down: the next try begins anew, with the same people. */
export const forgetRun = (page: Notes, of: RunOf, { texts: { witness } }: RunDraft): void => {
  page.notes.write(draftNote(of), undefined);
  page.notes.write(witnessNote(of), witness);
};
