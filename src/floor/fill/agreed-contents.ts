import type { ContentsRule } from '../../sheets/contents/reference-temperature.ts';
import { contentsRules, referenceTemperature } from '../../sheets/contents/reference-temperature.ts';
import { type DeficiencyRule, tolerableDeficiency } from '../../sheets/contents/tolerable-deficiency.ts';
import type { BookReader } from '../book-reader.ts';

/** How the contents are to be judged, as far as the agreement and the call say. */
export interface AgreedContents {
  /** `level only` and `other` are no rule that this program holds. */
  readonly rule?: ContentsRule;
  readonly edition?: string;
  /** K; of the agreement. */
  readonly referenceTemperature?: number;
  /** Share of bottles that must reach the level. */
  readonly levelGoal?: number;
  /** Bottles of a shift at the agreed rate. */
  readonly shift?: number;
}

const isRule = (given: string | undefined): given is ContentsRule =>
  contentsRules.some((rule) => rule === given);

/** What was agreed of the contents; `asked` goes before it. */
export const agreedContents = (
  reader: BookReader,
  ratePath: string,
  asked?: ContentsRule,
): AgreedContents => {
  const { contents } = reader.book.agreement ?? {};
  const rule = asked ?? (isRule(contents?.rule) ? contents.rule : undefined);
  const reference = reader.number('/agreement/contents/referenceTemperature', 'temperature');
  const goal = reader.number('/agreement/contents/levelGoal', 'ratio');
  const [shift, rate] = [reader.number('/agreement/shift', 'time'), reader.number(ratePath, 'rate')];
  return {
    ...(rule === undefined ? {} : { rule }),
    ...(contents?.edition === undefined ? {} : { edition: contents.edition }),
    ...(reference === undefined ? {} : { referenceTemperature: reference }),
    ...(goal === undefined ? {} : { levelGoal: goal }),
    ...(shift === undefined || rate === undefined ? {} : { shift: shift * rate }),
  };
};

/** Temperature at which a rule judges a liquid: its own, else the one that was agreed, K. */
export const referenceOf = ({ rule, referenceTemperature: agreed }: AgreedContents): number | undefined =>
  (rule === undefined ? undefined : referenceTemperature(rule, 'liquid')) ?? agreed;

/** By how much a bottle may fall short of its label under the rule, m3; the handbook's is typed in by whoever reads it. */
export const deficiencyOf = (
  { rule }: AgreedContents,
  label: number,
  variation: number | undefined,
): number | undefined =>
  rule === undefined || rule === 'NIST Handbook 133'
    ? variation
    : tolerableDeficiency(rule satisfies DeficiencyRule, label);
