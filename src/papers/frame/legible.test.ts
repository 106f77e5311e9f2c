import { expect, it } from 'vitest';
import { legibleText } from './legible.ts';

const piecesOf = (text: string): readonly string[] => legibleText(text, () => true).split('\u200b');

it('a word is left to the rules of its language, what is longer than any word may be broken anywhere', () => {
  expect(piecesOf('Schaltschrankeinspeisungsklemme')).toHaveLength(1);
  expect(piecesOf('reduced-pressure')).toHaveLength(1);
  expect(piecesOf('/floors/1/power/transformer/reactanceRatio')).toHaveLength(1);
  const digest = piecesOf('3f'.repeat(32));
  expect(digest.join('')).toBe('3f'.repeat(32));
  expect(Math.max(...digest.map((piece) => piece.length))).toBeLessThanOrEqual(8);
});

it('what turns the direction stands there by its number', () => {
  expect(legibleText('a\u202eb', () => true)).toBe('a‹U+202E›b');
});
