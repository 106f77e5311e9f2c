const writers = new Map<string, Intl.NumberFormat>();

const writer = (locale: string, digits: number): Intl.NumberFormat => {
  const key = `${locale}/${digits}`;
  const kept = writers.get(key);
  if (kept !== undefined) return kept;
  const made = new Intl.NumberFormat(locale, { maximumSignificantDigits: digits });
  writers.set(key, made);
  return made;
};

/**
 * A bare number by the locale, to at most `digits` significant digits. English takes the narrow space of
 * ISO 80000-1 between thousands, so that a comma is never taken for a decimal mark.
 */
export const numberText = (value: number, locale: string, digits = 4): string => {
  const english = locale.startsWith('en') || locale === 'qps';
  return writer(english ? 'en' : locale, Math.max(digits, 1))
    .formatToParts(value)
    .map((part) => {
      if (part.type === 'group' && english) return '\u202f';
      return part.type === 'minusSign' ? '\u2212' : part.value;
    })
    .join('');
};
