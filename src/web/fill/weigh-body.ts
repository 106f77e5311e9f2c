import type { RecordedTrial } from '../../record/trials.ts';
import { writtenQuantity } from '../field/written-quantity.ts';
import type { Words } from '../words/words.ts';
import { fieldsFor, kindOf, type WeighDraft, type WeighField } from './weigh-draft.ts';

export type Overflow = NonNullable<RecordedTrial['overflow']>;
export type TrialBody = Omit<RecordedTrial, 'id' | 'at'> & { readonly by: string };

export type WeighProblems = Partial<Record<WeighField | 'lanesOpen' | 'by', string>>;

/** Where and of what a bottle is. */
export interface WeighPlace {
  readonly floor: string;
  readonly format: string | undefined;
  /** Lanes of the filler that are in use, in their order. */
  readonly lanes: readonly string[];
  /** The unit that stands beside each field. */
  readonly unitOf: (field: WeighField) => string;
  /** Tells the rows of this device from those of another. */
  readonly device: string;
}

/** What must be there before a bottle says anything. */
const needed: readonly WeighField[] = ['gross', 'volume', 'level', 'preset'];

/** A bottle out of what was typed, or what is wrong, in a sentence at its field. */
export const weighBody = (
  words: Words,
  draft: WeighDraft,
  { floor, format, lanes, unitOf, device }: WeighPlace,
  overflow: Overflow | undefined,
): { readonly body: TrialBody } | { readonly problems: WeighProblems } => {
  const { say } = words;
  const problems: { -readonly [K in keyof WeighProblems]: WeighProblems[K] } = {};
  const texts: Record<string, string> = {};
  const fields = [...fieldsFor(draft.measure), 'temperature', 'pressure'] as const;
  for (const field of fields) {
    const text = draft.texts[field].trim();
    if (text === '') {
      if (needed.includes(field)) problems[field] = say(`weigh.missing.${field}`);
      continue;
    }
    if (field === 'preset') continue;
    const read = writtenQuantity({
      text,
      kind: kindOf[field],
      unit: unitOf(field),
      locale: words.numbers,
      path: field,
    });
    if (read.ok) texts[field] = read.value.text;
    else problems[field] = read.problems.map(words.problem).join(' ');
  }
  const count = (field: 'preset' | 'lanesOpen', text: string): number | undefined => {
    const number = words.readNumber(text);
    if (number !== undefined && Number.isSafeInteger(number) && number >= 1) return number;
    if (text !== '') problems[field] = say('weigh.count', { given: text });
    return undefined;
  };
  const preset = count('preset', draft.texts.preset.trim());
  const lanesOpen = count('lanesOpen', draft.texts.lanesOpen.trim() || String(lanes.length));
  const by = draft.texts.by.trim();
  if (by === '') problems.by = say('weigh.missing.by');
  if (preset === undefined || Object.keys(problems).length > 0) return { problems };
  const kept = ['instrument', 'resolution', 'calibrated', 'conditions'] as const;
  for (const field of kept) {
    const text = draft.texts[field].trim();
    if (text !== '') texts[field] = text;
  }
  return {
    body: {
      floor,
      lane: draft.lane,
      preset,
      by,
      row: `${draft.row.number}-${device}`,
      ...texts,
      ...(format === undefined ? {} : { format }),
      ...(lanesOpen === undefined ? {} : { lanesOpen }),
      ...(overflow === undefined ? {} : { overflow }),
      ...(draft.throttled ? { throttled: true } : {}),
      ...(draft.afterStop ? { afterStop: true } : {}),
    },
  };
};
