import { describe, expect, it } from 'vitest';
import { members } from '../../record/body-shape.ts';
import { trialParts } from '../../record/record-bodies.ts';
import { writtenQuantity } from '../field/written-quantity.ts';
import { allWords } from '../words/all-words.ts';
import { fillWords } from '../words/fill.text.ts';
import { makeWords } from '../words/words.ts';
import { type WeighPlace, weighBody } from './weigh-body.ts';
import { firstDraft, laneAfter, rowWith, type WeighDraft } from './weigh-draft.ts';

const words = (locale = 'en') => makeWords(allWords([], [fillWords]), locale);
const lanes = ['-Y11', '-Y12', '-Y13', '-Y14'];
const units: Readonly<Record<string, string>> = {
  gross: 'kg',
  tare: 'kg',
  time: 's',
  temperature: 'degC',
  pressure: 'bar',
  volume: 'L',
  level: 'mm',
};
const place: WeighPlace = {
  floor: 'OXBOW',
  format: 'FLAGON-2L',
  lanes,
  unitOf: (field) => units[field] ?? '',
  device: 'ab12',
};
const draft = (texts: Partial<WeighDraft['texts']>): WeighDraft => {
  const first = firstDraft('-Y12', 'kg');
  return { ...first, texts: { ...first.texts, by: 'the engineer', preset: '796', ...texts } };
};

describe('a bottle at the scales', () => {
  it('is a record of its lane, with each figure as typed and its unit', () => {
    const made = weighBody(
      words(),
      draft({ gross: '2.981', tare: '0.96', time: '12.30', pressure: '1.2 psi' }),
      place,
      'trace',
    );
    if (!('body' in made)) throw new Error('no body');
    expect(made.body).toEqual({
      floor: 'OXBOW',
      format: 'FLAGON-2L',
      lane: '-Y12',
      preset: 796,
      by: 'the engineer',
      row: '1-ab12',
      lanesOpen: 4,
      gross: '2.981 kg',
      tare: '0.96 kg',
      time: '12.30 s',
      pressure: '1.2 psi',
      overflow: 'trace',
    });
    expect(members(trialParts.needed, trialParts.optional)(made.body, '')).toEqual([]);
  });

  it('keeps the digits that were typed in any language', () => {
    const of = { kind: 'mass', unit: 'kg', path: 'gross' } as const;
    expect(writtenQuantity({ ...of, text: '2,980', locale: 'de' })).toMatchObject({
      value: { text: '2.980 kg', value: 2.98 },
    });
    expect(writtenQuantity({ ...of, text: '2980 g', locale: 'en' })).toMatchObject({
      value: { text: '2980 g', value: 2.98 },
    });
  });

  it('says at the field what is missing or wrong, all at once', () => {
    const made = weighBody(
      words(),
      draft({ gross: '', tare: '3 s', preset: 'many', by: ' ' }),
      place,
      'none',
    );
    if (!('problems' in made)) throw new Error('no problems');
    expect(Object.keys(made.problems).sort()).toEqual(['by', 'gross', 'preset', 'tare']);
  });

  it('belongs to the row of the lanes before it; a lane that has its bottle begins the next row', () => {
    let row: WeighDraft['row'] = { number: 1, lanes: [] };
    const rows: number[] = [];
    for (const lane of ['-Y11', '-Y12', '-Y14', '-Y11', '-Y13', '-Y12', '-Y12']) {
      row = rowWith(row, lanes, lane);
      rows.push(row.number);
    }
    expect(rows).toEqual([1, 1, 1, 2, 2, 3, 4]);
    expect(laneAfter(lanes, '-Y14')).toBe('-Y11');
  });
});
