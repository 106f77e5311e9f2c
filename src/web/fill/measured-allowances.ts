import type { Allowance } from '../../fill/index.ts';
import type { AllowanceAsk } from '../../floor/fill/index.ts';
import { readEntry } from '../../quantity/read-entry.ts';

/** What was measured in the place of an allowance, as typed. */
export type MeasuredTexts = Readonly<Partial<Record<Allowance['code'], string>>>;

export const measurable: readonly Allowance['code'][] = [
  'meter-flow',
  'meter-viscosity',
  'valve-air',
  'kv-product',
];

/** Those of what a browser kept that are texts of an allowance. */
export const measuredTexts = (kept: unknown): MeasuredTexts => {
  if (typeof kept !== 'object' || kept === null) return {};
  const texts = kept as Readonly<Record<string, unknown>>;
  return Object.fromEntries(
    measurable.flatMap((code) => (typeof texts[code] === 'string' ? [[code, texts[code]]] : [])),
  );
};

/** The share by which a value moves, with its spread: `3 % ± 1 %`. */
export const readMeasured = (text: string, locale: string) =>
  readEntry(text.trim(), 'ratio', { path: 'measured', locale });

/** The texts that can be read, as they are asked with; nothing where there are none. */
export const measuredOf = (texts: MeasuredTexts, locale: string): Pick<AllowanceAsk, 'measured'> => {
  const measured = measurable.flatMap((code) => {
    const text = texts[code];
    const read = text === undefined ? undefined : readMeasured(text, locale);
    return read?.ok
      ? [[code, { shift: read.value.value as number, deviation: read.value.sd ?? 0 }] as const]
      : [];
  });
  return measured.length === 0 ? {} : { measured: Object.fromEntries(measured) };
};
