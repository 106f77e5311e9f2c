import { typedPlan } from '../../floor/fill/index.ts';
import type { RecordedLot } from '../../record/lots.ts';
import type { Words } from '../words/words.ts';
import { readVolume } from './read-volume.ts';

/** What a rule wants typed in, as it stands in the fields. */
export type LotTyped = Readonly<
  Partial<Record<'variation' | 'tareSample' | 'table' | 'plan' | 'edition', string>>
>;

export const isTable = (text: string | undefined): text is NonNullable<RecordedLot['table']> =>
  text === 'Australia' || text === 'New Zealand';

/** The body of a lot with what was typed in beside it and can be read, and whether that says anything new. */
export const lotWithTyped = (
  { id: _, at: __, ...lot }: RecordedLot,
  { variation, tareSample, table, plan, edition }: LotTyped,
  { readNumber, numbers }: Pick<Words, 'readNumber' | 'numbers'>,
): { readonly body: Omit<RecordedLot, 'id' | 'at'>; readonly changed: boolean } => {
  const volume = readVolume(variation, numbers);
  const tares = tareSample === undefined ? undefined : readNumber(tareSample);
  const body = {
    ...lot,
    ...(volume === undefined ? {} : { variation: `${Number((1e6 * volume).toPrecision(9))} mL` }),
    ...(tares === undefined || !(tares >= 1) ? {} : { tareSample: Math.round(tares) }),
    ...(isTable(table) ? { table } : {}),
    ...(plan === undefined || typedPlan(plan) === undefined ? {} : { plan }),
    ...(edition === undefined || edition.trim() === '' ? {} : { edition: edition.trim() }),
  };
  const told = ['variation', 'tareSample', 'table', 'plan', 'edition'] as const;
  return { body, changed: told.some((name) => body[name] !== lot[name]) };
};
