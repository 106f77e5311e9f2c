const same: Readonly<Record<string, string>> = {
  ' ': '',
  '\t': '',
  '\n': '',
  '\u00a0': '',
  '\u2007': '',
  '\u2009': '',
  '\u200a': '',
  '\u202f': '',
  '·': '',
  '⋅': '',
  '∙': '',
  '•': '',
  '*': '',
  '.': '',
  '^': '',
  ',': '',
  _: '',
  µ: 'u',
  μ: 'u',
  Ω: 'ohm',
  '\u2126': 'ohm',
  '°': 'deg',
  º: 'deg',
  '℃': 'degC',
  '℉': 'degF',
  '⁰': '0',
  '¹': '1',
  '²': '2',
  '³': '3',
  '⁴': '4',
  '⁻': '-',
  '−': '-',
  '₂': '2',
  ℓ: 'L',
  '″': '"',
  '”': '"',
  '“': '"',
  '′': "'",
  '’': "'",
  '‘': "'",
  '⁄': '/',
  '∕': '/',
  '％': '%',
};

const isDigit = (char: string | undefined): boolean => char !== undefined && char >= '0' && char <= '9';

/**
 * One spelling for many: spaces, dots and raised marks go, so that `N·m`, `N m` and `Nm`, or `m³/h` and
 * `m3 / h`, are one. Letters keep their case: `mW` is not `MW`.
 */
export const plainSpelling = (text: string): string => {
  let plain = '';
  for (const char of text.replaceAll(' per ', '/')) plain += same[char] ?? char;
  if (!plain.includes('-')) return plain;
  // a hyphen joins (`lbf-in`), but before a digit it is a power (`min-1`)
  let joined = '';
  for (let i = 0; i < plain.length; i += 1) {
    if (plain[i] !== '-' || isDigit(plain[i + 1])) joined += plain[i];
  }
  return joined;
};
