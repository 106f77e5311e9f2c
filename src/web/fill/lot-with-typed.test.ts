import { describe, expect, it } from 'vitest';
import { lotWithTyped } from './lot-with-typed.ts';

const words = { numbers: 'de', readNumber: (text: string) => Number(text.replace(',', '.')) };
const lot = {
  id: 'a',
  floor: 'LARKMOOR',
  format: 'FLAGON-2L',
  packages: [{ gross: '2.97 kg' }],
  by: 'the engineer',
};

describe('what is typed in beside a lot', () => {
  it('goes with it as its record keeps it, whatever the language of the fields', () => {
    const { body, changed } = lotWithTyped(
      lot,
      { variation: '12,5 mL', tareSample: '18', edition: ' 2026 ' },
      words,
    );
    expect(changed).toBe(true);
    expect(body).toEqual({
      floor: 'LARKMOOR',
      format: 'FLAGON-2L',
      packages: lot.packages,
      by: 'the engineer',
      variation: '12.5 mL',
      tareSample: 18,
      edition: '2026',
    });
    expect(
      lotWithTyped({ ...body, id: 'b' }, { variation: '12,5 mL', tareSample: '18' }, words).changed,
    ).toBe(false);
  });
  it('that can’t be read yet says nothing new', () => {
    expect(lotWithTyped(lot, { variation: 'twelve', plan: '12; 0.8' }, words).changed).toBe(false);
  });
});
