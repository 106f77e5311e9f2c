import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readBook } from '../../book/index.ts';
import { allWords } from '../words/all-words.ts';
import { utilitiesPageWords } from '../words/utilities-page.text.ts';
import { makeWords } from '../words/words.ts';
import { ownPlace } from './own-place.ts';

const demo = readBook(readFileSync('src/book/demo/flagon-line.json', 'utf8'));
if (!demo.ok) throw new Error('the demo book does not read');
const words = makeWords(allWords([], [utilitiesPageWords]), 'en');
const said = (path: string) => ownPlace(words, demo.value, path);

describe('a place as one asks for it', () => {
  it('names the part and the field, without the floor', () => {
    expect(said('/floors/1/power/feeder/length')).toBe('feeder, length');
    expect(said('/floors/1/air/quality')).toBe('air, quality');
  });
  it('calls a thing by its name', () => {
    expect(said('/line/drives/1/shaftPower')).toBe('wash pump, shaft power');
  });
  it('counts what has no name, and calls a voltage by its lines', () => {
    expect(said('/floors/1/power/readings/0/between/1')).toBe('reading 1, L2–L3');
  });
});
