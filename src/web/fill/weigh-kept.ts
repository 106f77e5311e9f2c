import { writerOf } from '../commands/add-record.ts';
import { keptFields, keptTexts } from '../state/kept-texts.ts';
import type { Page } from '../state/page.ts';
import { firstDraft, type Measure, massUnits, measures, type WeighDraft } from './weigh-draft.ts';

/** Which draft: each floor and format has its own. */
export interface DraftOf {
  readonly book: string;
  readonly floor: string;
  readonly format: string | undefined;
}

const noteOf = ({ book, floor, format }: DraftOf): string => `weigh/${book}/${floor}/${format ?? ''}`;

/** The same person reads the next one, on whatever page. */
const reader = 'reading-by';

const isRowNumber = (kept: unknown): kept is number => Number.isInteger(kept) && (kept as number) >= 1;

/** What stood at the scales when the page was left: a reload loses no digit. */
export const keptWeighing = (page: Page, of: DraftOf, lane: string, massUnit: string): WeighDraft => {
  const first = firstDraft(lane, massUnit);
  const by = page.notes.read(reader);
  const kept: Partial<Record<keyof WeighDraft, unknown>> = keptFields(page.notes.read(noteOf(of)));
  const texts = Object.fromEntries(
    Object.entries(keptTexts(kept.texts)).filter(([name]) => Object.hasOwn(first.texts, name)),
  );
  const row: Partial<Record<keyof WeighDraft['row'], unknown>> = keptFields(kept.row);
  const measure: Measure = measures.find((one) => one === kept.measure) ?? first.measure;
  return {
    lane: typeof kept.lane === 'string' ? kept.lane : first.lane,
    texts: { ...first.texts, by: typeof by === 'string' ? by : '', ...texts },
    measure,
    massUnit: massUnits.find((unit) => unit === kept.massUnit) ?? first.massUnit,
    throttled: kept.throttled === true,
    afterStop: kept.afterStop === true,
    row:
      isRowNumber(row.number) && Array.isArray(row.lanes)
        ? { number: row.number, lanes: row.lanes.filter((one) => typeof one === 'string') }
        : first.row,
  };
};

export const keepWeighing = (page: Page, of: DraftOf, draft: WeighDraft): void => {
  page.notes.write(noteOf(of), draft);
  if (draft.texts.by.trim() !== '') page.notes.write(reader, draft.texts.by.trim());
};

/** The name of this browser among those that write records, as short as it still tells two of them apart. */
export const deviceName = (page: Page): string => writerOf(page).slice(0, 6);
