import { describe, expect, it } from 'vitest';
import { flattened, makeCatalogue, prefixed } from './catalogue.ts';
import { parseMessage, partsOf } from './message.ts';
import { numberText } from './number-text.ts';

const catalogue = makeCatalogue([
  {
    en: {
      held: 'held by {what}, {seconds} in every cycle',
      lanes: '{n, plural, one {# lane} other {# lanes}} open',
      only: 'only English',
    },
    de: { held: 'gehalten: {what}, {seconds} je Takt' },
    pl: { lanes: '{n, plural, one {# tor} few {# tory} many {# torów} other {# toru}}' },
  },
]);

describe('the catalogue', () => {
  it('puts names and numbers in their places', () => {
    expect(catalogue.say('held', { what: 'the fill', seconds: '6.2 s' })).toBe(
      'held by the fill, 6.2 s in every cycle',
    );
  });
  it('chooses the plural form by the rule of the language', () => {
    expect(catalogue.say('lanes', { n: 1 })).toBe('1 lane open');
    expect(catalogue.say('lanes', { n: 4 })).toBe('4 lanes open');
    // Unicode CLDR plural rules: in Polish 2 to 4 are `few`, 5 is `many`
    expect(catalogue.say('lanes', { n: 3 }, 'pl')).toBe('3 tory');
    expect(catalogue.say('lanes', { n: 5 }, 'pl')).toBe('5 torów');
  });
  it('speaks the nearest language that it has, then English, then shows the key', () => {
    expect(catalogue.say('held', { what: 'x', seconds: 'y' }, 'de-AT')).toContain('gehalten');
    expect(catalogue.say('only', {}, 'de')).toBe('only English');
    expect(catalogue.say('nobody.has.this')).toBe('nobody.has.this');
  });
  it('leaves a part that was not given visible', () => {
    expect(catalogue.say('held', { what: 'x' })).toContain('{seconds}');
  });
  it('accents words but not parts in the pseudo language', () => {
    expect(catalogue.say('held', { what: '-Y14', seconds: '6.2 s' }, 'qps')).toBe(
      '⟦ĥéļð bý -Y14, 6.2 s íñ évéŕý çýçļé⟧',
    );
  });
  it('takes more texts, which win, and stays as it was itself', () => {
    const more = catalogue.with([{ en: { only: 'another', new: 'new' }, de: { only: 'anderes' } }]);
    expect([more.say('only'), more.say('only', {}, 'de'), more.say('new')]).toEqual([
      'another',
      'anderes',
      'new',
    ]);
    expect(more.say('held', { what: 'x', seconds: 'y' }, 'de')).toContain('gehalten');
    expect(more.keys()).toEqual(['held', 'lanes', 'new', 'only']);
    expect([catalogue.say('only'), catalogue.has('new')]).toEqual(['only English', false]);
  });
  it('flattens trees of words and prefixes codes', () => {
    expect(flattened('sheet.a/b', { en: { title: 'T', inputs: { flow: 'flow' } } })).toEqual({
      en: { 'sheet.a/b.title': 'T', 'sheet.a/b.inputs.flow': 'flow' },
    });
    expect(prefixed('problem.', { en: { X: 'x' } })).toEqual({ en: { 'problem.X': 'x' } });
  });
});

describe('a translation', () => {
  const german = catalogue.translated({
    language: 'de',
    texts: new Map([
      ['only English', 'nur deutsch'],
      ['held by {what}, {seconds} in every cycle', 'steht an {what}'],
    ]),
  });
  it('is looked up by the English text', () => {
    expect(german.say('only', {}, 'de-AT')).toBe('nur deutsch');
    expect(german.has('only', 'de')).toBe(true);
  });
  it('gives way to words that the catalogue has in the language itself', () => {
    expect(german.say('held', { what: 'x', seconds: 'y' }, 'de')).toContain('gehalten');
  });
  it('leaves the other languages as they are', () => {
    expect(german.say('only')).toBe('only English');
    expect(german.say('lanes', { n: 3 }, 'pl')).toBe('3 tory');
    expect(catalogue.say('only', {}, 'de')).toBe('only English');
  });
  it('that lacks a text leaves the English, with the plural forms of English and the numbers of the reader', () => {
    // CLDR: in French nought is `one`, in English `other`
    const french = catalogue.translated({ language: 'fr', texts: new Map() });
    expect(french.say('lanes', { n: 0 }, 'fr')).toBe('0 lanes open');
    expect(french.say('lanes', { n: 1.5 }, 'fr')).toBe('1,5 lanes open');
  });
});

describe('a message', () => {
  it('names the parts that it wants', () => {
    expect(partsOf(parseMessage('{a} and {n, plural, one {# of {b}} other {#}}'))).toEqual(['a', 'n', 'b']);
  });
});

describe('a number in a sentence', () => {
  it('takes the narrow space of ISO 80000-1 in English and the marks of the locale elsewhere', () => {
    expect(numberText(1050, 'en')).toBe('1\u202f050');
    expect(numberText(-12345.6, 'en', 6)).toBe('\u221212\u202f345.6');
    expect(numberText(1234.5, 'de', 5)).toBe('1.234,5');
  });
});
