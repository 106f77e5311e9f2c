import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { readJsonText } from './json-text.ts';

const problemIn = (text: string) => {
  const read = readJsonText(text);
  return read.ok ? undefined : read.problems[0];
};

describe('JSON text', () => {
  it('reads to what the platform reads, whatever the data are', () => {
    fc.assert(
      fc.property(fc.json({ maxDepth: 6 }), fc.integer({ min: 0, max: 4 }), (text, indent) => {
        const spaced = JSON.stringify(JSON.parse(text), null, indent);
        const read = readJsonText(spaced);
        // a key that stands twice is refused here and loses a value there
        if (read.ok) expect(read.value).toEqual(JSON.parse(spaced));
        else expect(read.problems.map(({ code }) => code)).not.toContain('BOOK_JSON_BROKEN');
      }),
    );
  });

  it('is broken here exactly where the platform refuses it', () => {
    const letters = fc.string({
      unit: fc.constantFrom(...'{}[]",:0123456789.eE+-truefalsn \n\t\\u/bé'),
      maxLength: 12,
    });
    const cut = fc.tuple(fc.json({ maxDepth: 3 }), fc.nat(), letters).map(([text, at, put]) => {
      const place = at % (text.length + 1);
      return text.slice(0, place) + put + text.slice(place + (at % 3));
    });
    fc.assert(
      fc.property(fc.oneof(letters, cut), (text) => {
        let platform = true;
        try {
          JSON.parse(text);
        } catch {
          platform = false;
        }
        const read = readJsonText(text);
        const broken = !read.ok && read.problems.some(({ code }) => code === 'BOOK_JSON_BROKEN');
        expect(broken).toBe(!platform);
      }),
      { numRuns: 3000 },
    );
  });

  it.each([
    ['{\n  "a": 1,\n  "b" 2\n}', 3, 7, '/b', [':']],
    ['{ "a": [1, 2, }', 1, 15, '/a/2', ['value']],
    ['{ "a": 1 ', 1, 10, '/a', [',', '}']],
    ['[1 2]', 1, 4, '/0', [',', ']']],
    ['{ a: 1 }', 1, 3, '', ['key', '}']],
    ["{ 'a': 1 }", 1, 3, '', ['key', '}']],
    ['{ "a": 1, }', 1, 11, '/a', ['key']],
    ['{ "a": "x\ny" }', 1, 8, '/a', ['value']],
    ['{} extra', 1, 4, '', ['end']],
    ['', 1, 1, '', ['value']],
    ['{ "a": 01 }', 1, 9, '/a', [',', '}']],
    ['\r\n\r\n nope', 3, 2, '', ['value']],
  ])('%j breaks off at line %i, column %i', (text, line, column, path, allowed) => {
    expect(problemIn(text)).toMatchObject({
      code: 'BOOK_JSON_BROKEN',
      path,
      allowed,
      parts: { line, column },
    });
  });

  it('refuses a key that stands twice, since one of the two would be lost', () => {
    expect(problemIn('{ "a": { "b": 1,\n "b": 2 } }')).toMatchObject({
      code: 'BOOK_KEY_TWICE',
      path: '/a/b',
      given: 'b',
      parts: { line: 2, column: 2 },
    });
  });

  it('stops at nesting that no book has, before it is costly', () => {
    expect(problemIn('['.repeat(1_000_000))).toMatchObject({ code: 'BOOK_TOO_DEEP', allowed: '64' });
    expect(problemIn('{"a":'.repeat(1_000_000))).toMatchObject({ code: 'BOOK_TOO_DEEP' });
    expect(readJsonText('['.repeat(64) + ']'.repeat(64)).ok).toBe(true);
  });

  it('reads a string of megabytes', () => {
    const long = JSON.stringify('x\\n"é'.repeat(500_000));
    expect(readJsonText(long)).toEqual({ ok: true, value: JSON.parse(long) });
  });
});
