import { expect, it } from 'vitest';
import { misfits } from './misfits.ts';

const lanes = '{n, plural, one {# lane} other {# lanes}} of {floor}';

it.each([
  [lanes, '{n, plural, one {# Ventil} other {# Ventile}} von {floor}', 'de', []],
  ['of {floor}', 'von {floor', 'de', [{ is: 'braces' }]],
  ['of {floor}', 'von }floor{', 'de', [{ is: 'braces' }]],
  ['of {floor}', 'von Halle', 'de', [{ is: 'missing', parts: ['floor'] }]],
  [
    'of {floor}',
    'von {halle}',
    'de',
    [
      { is: 'missing', parts: ['floor'] },
      { is: 'unknown', parts: ['halle'] },
    ],
  ],
  [
    'of {floor}',
    'von {floor, plural, one {Halle} other {Hallen}}',
    'de',
    [{ is: 'uncounted', parts: ['floor'] }],
  ],
  [lanes, '{n, plural, one {# Ventil}} von {floor}', 'de', [{ is: 'other', parts: ['n'] }]],
  // CLDR: Polish has `few` and `many`, German has not
  [lanes, '{n, plural, few {# tory} other {# toru}} {floor}', 'pl', []],
  [lanes, '{n, plural, few {# Ventile} other {# Ventile}} {floor}', 'de', [{ is: 'forms', parts: ['few'] }]],
  [lanes, '{n, plural, few {# x} =0 {kein x} other {# x}} {floor}', undefined, []],
])('%s as %s in %s', (english, text, language, expected) => {
  expect(misfits(english, text, language)).toEqual(expected);
});
