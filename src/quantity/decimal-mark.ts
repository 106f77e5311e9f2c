const marks = new Map<string, '.' | ','>();

const known = (locale: string): '.' | ',' => {
  try {
    const part = new Intl.NumberFormat(locale, { numberingSystem: 'latn' })
      .formatToParts(1.5)
      .find(({ type }) => type === 'decimal');
    return part?.value === ',' ? ',' : '.';
  } catch {
    // not a language tag: the point of English
    return '.';
  }
};

/** The mark before decimals in a locale. Kept by locale, because asking Intl takes longer than reading a quantity. */
export const decimalMark = (locale: string): '.' | ',' => {
  const held = marks.get(locale);
  if (held !== undefined) return held;
  // the pseudo language is written as English; Intl would take the machine's own language for it
  const mark = locale.startsWith('en') || locale === 'qps' ? '.' : known(locale);
  // languages are few; a stranger who sends many does not fill the memory
  if (marks.size < 100) marks.set(locale, mark);
  return mark;
};
