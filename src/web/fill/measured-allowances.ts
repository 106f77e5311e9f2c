import { useMemo } from 'react';
import type { Allowance, MeasurableCode } from '../../fill/index.ts';
import type { Result } from '../../quantity/problem.ts';
import { accept } from '../../quantity/problem.ts';
import { readEntry } from '../../quantity/read-entry.ts';
import { allowancesOf, type RecordedAllowance } from '../../record/allowances.ts';
import { useKeptRecords } from '../state/kept-records.tsx';
import { useFillPlace } from './fill-place.tsx';
import { useAnswer } from './with-answer.tsx';

/** What a measurement can say of the lanes. */
export const measurable: readonly Allowance['code'][] = [
  'meter-flow',
  'meter-viscosity',
  'valve-air',
  'kv-product',
];

/** The share by which a value moves, with its spread, as its record keeps it: `3,5 % ± 1 %` is `3.5 % ± 1 %`. */
export const writtenShare = (text: string, locale: string): Result<string> => {
  const typed = text.trim();
  const read = readEntry(typed, 'ratio', { path: 'measured', locale });
  if (!read.ok) return read;
  const comma = new Intl.NumberFormat(locale).format(1.5).includes(',');
  return accept(comma ? typed.replaceAll('.', '').replaceAll(',', '.') : typed);
};

/** What was measured between the two floors in the place of an allowance, by the line that it takes. */
export const useMeasured = (): Readonly<Partial<Record<MeasurableCode, RecordedAllowance>>> => {
  const { records } = useKeptRecords();
  const { floor } = useFillPlace();
  const { other } = useAnswer();
  return useMemo(
    () =>
      Object.fromEntries(
        allowancesOf(records)
          .filter((one) => one.from === floor.tag && one.floor === other)
          .map((one) => [one.of, one]),
      ),
    [records, floor.tag, other],
  );
};
