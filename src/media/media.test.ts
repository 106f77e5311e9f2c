import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { checkMedia, headSize, largestMedia, type MediaProblemCode, momentOf, typesOf } from './index.ts';
import { writtenByOthers } from './testing/written-by-others.ts';

const types: Readonly<Record<keyof typeof writtenByOthers, string>> = {
  jpeg: 'image/jpeg',
  jpegChanged: 'image/jpeg',
  jpegPlain: 'image/jpeg',
  png: 'image/png',
  webp: 'image/webp',
  mp4: 'video/mp4',
  mov: 'video/quicktime',
  webm: 'video/webm',
  webmSound: 'video/webm',
  mp3: 'audio/mpeg',
  wav: 'audio/wav',
  ogg: 'audio/ogg',
  m4a: 'audio/mp4',
};
const names = Object.keys(types) as (keyof typeof types)[];
const text = (said: string): Uint8Array => new TextEncoder().encode(said);
const codesOf = (bytes: Uint8Array, mediaType: string): readonly string[] =>
  checkMedia(bytes, { mediaType, bytes: bytes.length }).map(({ code }) => code);

describe('what a file is', () => {
  it.each(names)('%s is told by its first bytes as the program that wrote it says', (name) => {
    expect(typesOf(writtenByOthers[name])[0]).toBe(types[name]);
    expect(typesOf(writtenByOthers[name].subarray(0, headSize))[0]).toBe(types[name]);
    expect(codesOf(writtenByOthers[name], types[name])).toEqual([]);
  });

  it('is not what another form is said to be', () => {
    for (const name of names) {
      for (const said of new Set(Object.values(types))) {
        if (typesOf(writtenByOthers[name]).includes(said)) continue;
        expect(codesOf(writtenByOthers[name], said), `${name} as ${said}`).toEqual(['MEDIA_NOT_AS_SAID']);
      }
    }
  });

  it('may have parameters behind its type, and be sound in a container of films', () => {
    expect(codesOf(writtenByOthers.webm, 'Video/WebM; codecs="vp8"')).toEqual([]);
    expect(codesOf(writtenByOthers.webmSound, 'audio/webm')).toEqual([]);
    expect(codesOf(writtenByOthers.m4a, 'video/mp4')).toEqual([]);
  });

  it.each<readonly [string, Uint8Array, MediaProblemCode]>([
    ['nothing', new Uint8Array(), 'MEDIA_EMPTY'],
    ['a page', text('<!doctype html><script>alert(1)</script>'), 'MEDIA_UNKNOWN'],
    [
      'a drawing in XML, in which a script can stand',
      text('<svg xmlns="http://www.w3.org/2000/svg"/>'),
      'MEDIA_UNKNOWN',
    ],
    ['a program', text('MZ\u0090\0'), 'MEDIA_UNKNOWN'],
    ['a text', text('not a picture at all'), 'MEDIA_UNKNOWN'],
    ['the first bytes of a picture alone', Uint8Array.of(0x89, 0x50, 0x4e, 0x47), 'MEDIA_UNKNOWN'],
    ['another thing in the container of pictures', text('RIFF....AVI LIST'), 'MEDIA_UNKNOWN'],
    ['a document', text('%PDF-1.7\n'), 'MEDIA_NOT_AS_SAID'],
  ])('%s is no photograph', (_, bytes, code) => {
    expect(codesOf(bytes, 'image/jpeg')).toEqual([code]);
  });

  it('may be as large as the limit and not a byte more', () => {
    const said = { mediaType: 'image/jpeg', bytes: largestMedia };
    expect(checkMedia(writtenByOthers.jpeg, said)).toEqual([]);
    expect(checkMedia(writtenByOthers.jpeg, { ...said, bytes: largestMedia + 1 })).toMatchObject([
      { code: 'MEDIA_TOO_LARGE', given: '50.0 MB', allowed: '50.0 MB' },
    ]);
  });
});

describe('the moment that a file tells', () => {
  it.each([
    ['jpeg', '2027-04-19T09:10:11+01:00'],
    ['png', '2027-04-19T09:10:11+01:00'],
    ['webp', '2027-04-19T09:10:11+01:00'],
    // a picture that tells of its last change alone, by a clock without an offset
    ['jpegChanged', '2027-04-19T10:00:00'],
    ['jpegPlain', undefined],
    ['mp4', '2027-04-19T08:10:11Z'],
    ['mov', '2027-04-19T08:10:11Z'],
    ['m4a', '2027-04-19T08:10:11Z'],
    ['webm', undefined],
    ['wav', undefined],
  ] as const)('of %s is the one it was written with', (name, moment) => {
    expect(momentOf(writtenByOthers[name])).toBe(moment);
  });

  it('is none where the file is cut or broken, and nothing is thrown', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...names),
        fc.array(fc.tuple(fc.nat(2000), fc.nat(255)), { maxLength: 20 }),
        fc.nat(2000),
        (name, changes, cut) => {
          const bytes = writtenByOthers[name].slice();
          for (const [at, value] of changes) bytes[at % bytes.length] = value;
          const moment = momentOf(bytes.subarray(0, cut));
          if (moment !== undefined) expect(moment).toMatch(/^\d{4}-\d{2}-\d{2}T\d{2}:\d{2}:\d{2}/);
        },
      ),
      { numRuns: 2000 },
    );
  });
});
