import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { textOfBytes } from './text-of-bytes.ts';

/**
 * Letters from 0x80 on of the two code pages. Unicode Consortium, mapping tables CP1252.TXT (Microsoft, 2.01) and
 * ROMAN.TXT (Apple, c02), memory; held against the platform's own where it has them.
 */
const upperHalf = {
  'windows-1252': `€\u0081‚ƒ„…†‡ˆ‰Š‹Œ\u008dŽ\u008f\u0090‘’“”•–—˜™š›œ\u009džŸ${Array.from({ length: 96 }, (_, i) => String.fromCharCode(0xa0 + i)).join('')}`,
  macintosh: new TextDecoder('macintosh').decode(Uint8Array.from({ length: 128 }, (_, i) => 128 + i)),
} as const;

/** A text in a code page of one byte a letter; nothing where it lacks a letter. */
const writerIn = (encoding: keyof typeof upperHalf) => {
  const byLetter = new Map([...upperHalf[encoding]].map((letter, i) => [letter, 0x80 + i]));
  return (text: string): Uint8Array | undefined => {
    const codes = [...text].map((letter) =>
      letter <= '\u007f' ? letter.charCodeAt(0) : byLetter.get(letter),
    );
    return codes.every((code) => code !== undefined) ? Uint8Array.from(codes) : undefined;
  };
};

const narrow = ['windows-1252', 'macintosh'] as const;

/** Words that people wrote in languages of western Europe, each with a letter beyond ASCII. */
const written = ['de', 'es', 'fr'].flatMap((language) => {
  const table = readFileSync(`src/text/languages/${language}/web.json`, 'utf8');
  return Object.values(JSON.parse(table) as Readonly<Record<string, string>>).filter((text) =>
    /[\u{80}-\u{10ffff}]/u.test(text),
  );
});

describe('a text whose code page nobody says', () => {
  it.each(narrow)('is known as %s by letters that would make no sense in the other', (encoding) => {
    const write = writerIn(encoding);
    const texts = written.filter((text) => write(text) !== undefined);
    // as many as a short list has: two letters alone may by chance be one in UTF-8
    const lists = texts.flatMap((_, i) => (i % 12 === 0 ? [texts.slice(i, i + 12).join('\n')] : []));
    expect(lists.length).toBeGreaterThan(100);
    const wrong = lists.filter((text) => {
      const read = textOfBytes(write(text) ?? new Uint8Array());
      return !read.ok || read.value.text !== text || read.value.taken !== encoding;
    });
    expect(wrong).toEqual([]);
  });
  it.each([
    '12 °C;1,5 mm²;Ø8;±5 %',
    'für Lüfter;grün/gelb',
    'Über;Öffner;Änderung',
    'tamaño;conexión',
    'Bœuf;été;à côté',
    '¿Qué?;5 µm',
    '„Hahn“;d’été – 3×400 V',
  ])('%s is read alike from both', (text) => {
    for (const encoding of narrow) {
      const bytes = writerIn(encoding)(text);
      // the code page of a Mac has no raised figures and no multiplication sign
      if (bytes !== undefined) expect(textOfBytes(bytes)).toMatchObject({ ok: true, value: { text } });
    }
  });
  it('says of one that tells it itself nothing but the text', () => {
    expect(textOfBytes(new TextEncoder().encode('für'))).toEqual({ ok: true, value: { text: 'für' } });
  });
});

describe('a text of which a person says how it is written', () => {
  it('is read so, and refused where its bytes are no letters of it', () => {
    // Конвейер in the Cyrillic code page
    const bytes = Uint8Array.from([0xca, 0xee, 0xed, 0xe2, 0xe5, 0xe9, 0xe5, 0xf0]);
    expect(textOfBytes(bytes, 'windows-1251')).toEqual({
      ok: true,
      value: { text: 'Конвейер', taken: 'windows-1251' },
    });
    expect(textOfBytes(bytes, 'utf-8')).toMatchObject({
      ok: false,
      problems: [{ code: 'TABLE_NOT_IN_ENCODING', given: 'utf-8' }],
    });
  });
});
