import { describe, expect, it } from 'vitest';
import { bodyProblems } from '../../../record/append-record.ts';
import { recordKinds } from '../../../record/kinds.ts';
import { forgetMark, keepMark, keptMark, type MarkDraft, markLacks, markRecord } from './mark-draft.ts';
import { readingOf } from './methods.ts';

const readNumber = (text: string): number | undefined =>
  /^\d+(?:\.\d+)?$/.test(text) ? Number(text) : undefined;
const read = (typed: string, method: string) => readingOf(typed, method, { readNumber });

describe('a reading of a join', () => {
  it('has the unit that its method is read in, unless another was typed', () => {
    expect(read('0.12', 'continuity')).toBe('0.12 ohm');
    expect(read('550', 'insulation')).toBe('550 Mohm');
    expect(read('> 550', 'insulation')).toBe('> 550 Mohm');
    expect(read('800 kohm', 'insulation')).toBe('800 kohm');
    expect(read('45 N m', 'torque')).toBe('45 N m');
  });
  it('is none where it is another kind of quantity, below nothing or no number', () => {
    expect(read('45 N m', 'continuity')).toBeUndefined();
    expect(read('good', 'pull')).toBeUndefined();
    expect(read('-3', 'torque')).toBeUndefined();
  });
  it('of a leak is told in words', () => {
    expect(read(' no bubbles ', 'leak')).toBe('no bubbles');
  });
});

const notes = () => {
  const kept = new Map<string, unknown>();
  return {
    notes: {
      read: (name: string) => kept.get(name),
      write: (name: string, value: unknown) => void kept.set(name, value),
      watch: () => () => undefined,
    },
  };
};
const page = { newId: () => 'id-1', now: () => '2026-03-02T08:00:00Z' };
const draft: MarkDraft = {
  state: 'tested',
  texts: { method: 'continuity', reading: '0.12', instrument: 'meter 3', remark: '', by: 'the fitter' },
  attached: [],
};

describe('a mark of a join', () => {
  it('is kept over a reload, and the next one has the person and the instrument alone', () => {
    const own = notes();
    const of = { book: 'b', join: 'J-1' };
    keepMark(own, of, draft);
    expect(keptMark(own, of)).toEqual(draft);
    forgetMark(own, of, draft);
    const next = keptMark(own, of);
    expect([next.state, next.texts.reading, next.texts.instrument]).toEqual(['', '', 'meter 3']);
  });
  it('wants a state, a name, what is wrong with trouble, and what an insulation was read as', () => {
    const { texts } = draft;
    expect(markLacks(draft, '0.12 ohm')).toEqual([]);
    expect(markLacks({ ...draft, state: '', texts: { ...texts, by: ' ' } }, '0.12 ohm')).toEqual([
      'state',
      'by',
    ]);
    expect(markLacks({ ...draft, state: 'trouble' }, '0.12 ohm')).toEqual(['remark']);
    expect(markLacks({ ...draft, texts: { ...texts, method: '' } }, '0.12')).toEqual(['method']);
    expect(markLacks({ ...draft, texts: { ...texts, method: 'insulation', reading: '' } }, '')).toEqual([
      'reading',
    ]);
    expect(markLacks(draft, undefined)).toEqual(['reading']);
  });
  it('is a record that fits its kind and says which records it follows, none among them', () => {
    for (const follows of [[], ['id-0']]) {
      const record = markRecord(page, draft, {
        join: 'J-1',
        floor: 'LARKMOOR',
        reading: '0.12 ohm',
        follows,
      });
      expect(bodyProblems(record, recordKinds, '')).toEqual([]);
      expect(record.body).toMatchObject({ reading: '0.12 ohm', follows });
    }
  });
});
