import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { readBook } from './read-book.ts';

const page = readFileSync('docs/book.md', 'utf8');
const blocks = [...page.matchAll(/```json\n([\s\S]*?)```/g)].map(([, block]) => block!.trim());

/** The fragments of the page, each put where it belongs in a book. */
const books = blocks.flatMap((block): unknown[] => {
  if (block.includes('"twinfloor"')) return [JSON.parse(block)];
  if (block.includes('"pulses"')) {
    return [
      { twinfloor: 1, line: { stations: [{ tag: '+FILL', kind: 'fill', lanes: [JSON.parse(block)] }] } },
    ];
  }
  return block.split('\n').map((fragment) => {
    if (fragment.startsWith('{'))
      return { twinfloor: 1, floors: [{ tag: 'A', supply: { source: JSON.parse(fragment) } }] };
    const field = JSON.parse(`{${fragment}}`) as Record<string, unknown>;
    const piece = 'bore' in field ? { kind: 'pipe' } : { kind: 'valve' };
    const source = 'surface' in field ? { kind: 'gravity' } : { kind: 'main' };
    const inRun = 'bore' in field || 'kv' in field;
    const supply = inRun ? { run: [{ ...piece, ...field }] } : { source: { ...source, ...field } };
    return { twinfloor: 1, floors: [{ tag: 'A', supply }] };
  });
});

describe('the page on the book', () => {
  it('has examples that read', () => {
    expect(books.length).toBeGreaterThan(9);
    for (const book of books) {
      const read = readBook(book);
      expect([JSON.stringify(book), read.ok ? [] : read.problems]).toEqual([JSON.stringify(book), []]);
    }
  });
});
