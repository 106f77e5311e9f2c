import { describe, expect, it } from 'vitest';
import { keptFields, keptTexts } from '../state/kept-texts.ts';
import { writtenShare } from './measured-allowances.ts';

describe('what a browser kept', () => {
  it('counts as far as it has the shape that is wanted', () => {
    expect(keptTexts({ gross: '2.98', tare: 3, lane: null })).toEqual({ gross: '2.98' });
    for (const other of [undefined, null, 'text', 7, ['text']]) {
      expect(keptFields(other).gross).toBeUndefined();
    }
  });
});

describe('a measured allowance', () => {
  it('is kept as everybody reads it, whoever typed it', () => {
    expect(writtenShare(' 3,5 % ± 1,2 % ', 'de')).toEqual({ ok: true, value: '3.5 % ± 1.2 %' });
    expect(writtenShare('-0.2 %', 'en')).toEqual({ ok: true, value: '-0.2 %' });
  });

  it('is refused where it is no share', () => {
    for (const text of ['some', '', '3 L']) expect(writtenShare(text, 'en').ok).toBe(false);
  });
});
