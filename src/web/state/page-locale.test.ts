import { expect, it } from 'vitest';
import { pageLocale } from './page-locale.ts';

it.each([
  ['the browser where nothing else is said', null, undefined, 'de-AT', 'de-AT'],
  ['numbers of a language that has no words here', null, undefined, 'it-IT', 'it-IT'],
  ['what was chosen before the browser', null, 'fr', 'de-AT', 'fr'],
  ['with the country that the browser knows', null, 'de', 'de-AT', 'de-AT'],
  ['the address before all', 'es', 'fr', 'de-AT', 'es'],
  ['the pseudo language', 'qps', undefined, 'en-US', 'qps'],
  ['no address that is no locale', 'not a locale', 'fr', 'en-US', 'fr'],
  ['nothing that another program wrote', null, { language: 'fr' }, 'en-US', 'en-US'],
  ['English where the browser says nothing', null, undefined, '', 'en'],
])('%s', (_, asked, chosen, browser, expected) => {
  expect(pageLocale({ asked, chosen, browser })).toBe(expected);
});
