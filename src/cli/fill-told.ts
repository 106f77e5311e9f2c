import type { Slip, SlipField } from '../fill/slips.ts';
import type { FillStory, FormatSamples, TrialNoteCode } from '../floor/fill/index.ts';
import type { Kind } from '../quantity/kinds.ts';
import { shown } from '../quantity/shown.ts';
import type { UnitWishes } from '../quantity/unit-choice.ts';
import type { FillFile } from './read-fill-file.ts';
import { words } from './words.ts';

/** What a story of the fill was made of. */
export interface FillTold {
  readonly story: FillStory;
  readonly file: FillFile<unknown>;
  /** Only where bottles were measured. */
  readonly samples?: FormatSamples;
  readonly wishes: UnitWishes;
  readonly locale: string;
}

/** What a person calls a trial: the row of the sheet, else its place in the list, from 1. */
export const trialName = ({ file }: Pick<FillTold, 'file'>, trial: number): string =>
  String(file.report?.taken[trial]?.row ?? trial + 1);

const kindOf: Readonly<Partial<Record<SlipField, Kind>>> = { gross: 'mass', tare: 'mass', time: 'time' };

/** The question that a slip puts, and with what its value was compared. */
export const slipSentences = (
  { code, field, entered, likely, compared }: Slip,
  { wishes, locale }: Pick<FillTold, 'wishes' | 'locale'>,
): { readonly question: string; readonly compared: string } => {
  const text = (value: number | string | undefined, kind: Kind | undefined, digits = 4): string =>
    value === undefined
      ? '–'
      : typeof value === 'string'
        ? value
        : kind === undefined
          ? String(value)
          : shown(value, kind, wishes, locale, digits);
  const of: Kind = compared.of === 'time' ? 'time' : 'mass';
  return {
    question: words.say(`slip.${code}`, {
      field: words.say(`slip.field.${field}`),
      entered: text(entered, kindOf[field]),
      likely: text(likely, kindOf[field]),
    }),
    compared: words.say('slip.compared', {
      bottles: compared.bottles,
      of: words.say(`slip.of.${compared.of}`),
      expected: text(compared.expected, of),
      within: text(compared.within, of, 2),
      given: text(compared.given, of),
    }),
  };
};

/** Trials by what had to be assumed of them, in the order in which that first came. */
export const notesByCode = ({ read }: FillStory): ReadonlyMap<TrialNoteCode, readonly number[]> => {
  const found = new Map<TrialNoteCode, number[]>();
  for (const { code, trial } of read.notes) {
    const trials = found.get(code);
    if (trials === undefined) found.set(code, [trial]);
    else trials.push(trial);
  }
  return found;
};
