import { describe, expect, it } from 'vitest';
import { keepNotes } from '../state/kept-notes.ts';
import { forgetAnswers, isBegun, keepAnswer, putAside, readAnswers, takeBack } from './form-answers.ts';

const memory = (): Storage => {
  const kept = new Map<string, string>();
  return {
    get length() {
      return kept.size;
    },
    key: (i) => [...kept.keys()][i] ?? null,
    getItem: (key) => kept.get(key) ?? null,
    setItem: (key, value) => void kept.set(key, value),
    removeItem: (key) => void kept.delete(key),
    clear: () => kept.clear(),
  };
};
const notesOn = (local: Storage) => keepNotes({ local, changes: new EventTarget() });

describe('a form that was begun', () => {
  it('is there again after a reload, and keeps the name of its book', () => {
    const local = memory();
    keepAnswer(notesOn(local), 'one', 'rate', '900 /h');
    keepAnswer(notesOn(local), 'two', 'row', '3');
    expect(readAnswers(notesOn(local))).toEqual({ id: 'one', answers: { rate: '900 /h', row: '3' } });
  });
  it('loses nothing where two tabs answer different questions', () => {
    const local = memory();
    const [here, there] = [notesOn(local), notesOn(local)];
    keepAnswer(here, 'one', 'rate', '900 /h');
    keepAnswer(there, 'two', 'row', '3');
    keepAnswer(here, 'one', 'rate', '950 /h');
    expect(readAnswers(here)?.answers).toEqual({ rate: '950 /h', row: '3' });
  });
  it('can be taken back after a fresh start, and is empty once its book is made', () => {
    const notes = notesOn(memory());
    keepAnswer(notes, 'one', 'rate', '900 /h');
    putAside(notes);
    expect(isBegun(readAnswers(notes))).toBe(false);
    expect(takeBack(notes)?.answers).toEqual({ rate: '900 /h' });
    expect(isBegun(readAnswers(notes))).toBe(true);
    forgetAnswers(notes);
    expect(isBegun(readAnswers(notes))).toBe(false);
  });
  it('is not begun where another program wrote into its place', () => {
    const local = memory();
    local.setItem('twinfloor-notes/first-book', '{"answers":{"rate":5},"id":"x"}');
    expect(readAnswers(notesOn(local))).toBeUndefined();
    local.setItem('twinfloor-notes/first-book', '{cut');
    expect(readAnswers(notesOn(local))).toBeUndefined();
  });
});
