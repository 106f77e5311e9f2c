import fc from 'fast-check';
import { zipSync } from 'fflate';
import { describe, expect, it } from 'vitest';
import type { Encoding } from '../csv/encodings.ts';
import { limits } from '../limits.ts';
import { tableProblemText } from '../problems.text.ts';
import { type TableProblemCode, tableProblems } from '../problems.ts';
import { readTable } from '../read-table.ts';
import { pack } from './packing.ts';
import { writeXlsx } from './write-xlsx.ts';

const good = (): Uint8Array =>
  writeXlsx({
    name: 'Table',
    columns: [{ heading: 'answer', width: 9 }],
    rows: Array.from({ length: 40 }, (_, i) => [{ text: `answer ${i} ${(i * 7919) % 1013}`, open: true }]),
  });

const parts = (more: Record<string, string>): Record<string, string> => ({
  '_rels/.rels': '<R><Relationship Id="a" Type="x/officeDocument" Target="w.xml"/></R>',
  'w.xml': '<workbook><sheet name="One" id="r1"/></workbook>',
  '_rels/w.xml.rels': '<R><Relationship Id="r1" Type="x/worksheet" Target="s.xml"/></R>',
  's.xml': '<worksheet><row><c><v>1</v></c></row></worksheet>',
  ...more,
});

/** A byte pattern in a file, changed at a place behind it, everywhere that it stands. */
const changed = (
  bytes: Uint8Array,
  mark: readonly number[],
  behind: number,
  value: readonly number[],
): Uint8Array => {
  const out = bytes.slice();
  for (let at = 0; at < out.length; at += 1) {
    if (mark.every((byte, i) => bytes[at + i] === byte)) out.set(value, at + behind);
  }
  return out;
};
const directory = [0x50, 0x4b, 1, 2];
const end = [0x50, 0x4b, 5, 6];
const le = (value: number): readonly number[] => [
  value & 255,
  (value >>> 8) & 255,
  (value >>> 16) & 255,
  (value >>> 24) & 255,
];

const codesOf = (bytes: Uint8Array, said?: Encoding): readonly string[] => {
  const read = readTable(bytes, said);
  return read.ok ? [] : read.problems.map(({ code }) => code);
};

/** Text that packs to about a quarter. */
const noise = (lines: number): string => {
  let state = 1;
  return Array.from({ length: lines / 4 }, () => {
    state = (state * 48271) % 2147483647;
    return state.toString(16);
  }).join('\n');
};

const named = (name: string): Uint8Array => zipSync({ [name]: Uint8Array.of(1) });
const row = (cells: string): Uint8Array => pack(parts({ 's.xml': `<worksheet>${cells}</worksheet>` }));

/** One file that provokes each problem. */
const provoked: Readonly<Record<TableProblemCode, () => Uint8Array>> = {
  TABLE_TOO_LARGE: () => new Uint8Array(limits.file + 1).fill(32),
  TABLE_NOT_TEXT: () => Uint8Array.of(1, 0, 2),
  TABLE_NOT_IN_ENCODING: () => Uint8Array.of(0xfc),
  TABLE_QUOTE_OPEN: () => new TextEncoder().encode('a,"b\n'),
  TABLE_TOO_MANY_CELLS: () => row('<row r="1000000"><c><v>1</v></c></row>'),
  TABLE_OLD_OR_LOCKED: () => Uint8Array.of(0xd0, 0xcf, 0x11, 0xe0),
  TABLE_NOT_XLSX: () => pack({ 'a.txt': 'x' }),
  TABLE_ZIP_BROKEN: () => good().slice(0, -30),
  TABLE_ZIP_ENTRIES: () => changed(good(), end, 10, [255, 255]),
  TABLE_ZIP_NAME: () => named('../../etc/passwd'),
  // what the directory states is enough to be refused: nothing is unpacked to find out
  TABLE_ZIP_UNPACKED: () => changed(pack({ 'a.xml': noise(400_000) }), directory, 24, le(70_000_000)),
  TABLE_ZIP_RATIO: () => pack({ 'a.xml': ' '.repeat(2_000_000) }),
  TABLE_ZIP_METHOD: () => changed(good(), directory, 8, [1, 0]),
  TABLE_XML_BROKEN: () => row('<row><c></row></c>'),
  TABLE_XML_DOCTYPE: () =>
    pack(
      parts({ 's.xml': '<!DOCTYPE a [<!ENTITY b SYSTEM "file:///etc/passwd">]><worksheet>&b;</worksheet>' }),
    ),
};

describe('the listed problems', () => {
  it.each(Object.keys(tableProblems) as TableProblemCode[])('%s is raised', (code) => {
    const bytes = provoked[code]();
    // only what a person said of the letters can be wrong
    const said = code === 'TABLE_NOT_IN_ENCODING' ? 'utf-8' : undefined;
    expect(codesOf(bytes, said)).toEqual([code]);
    const read = readTable(bytes, said);
    for (const part of tableProblems[code]) {
      const [problem] = read.ok ? [] : read.problems;
      const there = part === 'given' || part === 'allowed' ? problem?.[part] : problem?.parts?.[part];
      expect(there, part).toBeDefined();
    }
  });
  it('have a sentence each that names what they carry', () => {
    expect(Object.keys(tableProblemText.en).sort()).toEqual(Object.keys(tableProblems).sort());
    for (const [code, needs] of Object.entries(tableProblems)) {
      const words = [...tableProblemText.en[code as TableProblemCode].matchAll(/\{(\w+)\}/g)].map(
        (each) => each[1],
      );
      expect(words.filter((word) => word !== 'path').sort(), code).toEqual([...needs].sort());
    }
  });
});

describe('a hostile file', () => {
  it('is refused when it names a part outside, an absolute one, or one twice', () => {
    for (const name of ['../x', 'a/../../x', '/etc/passwd', 'C:\\x', 'a\\..\\x', './x', 'a\u0000b']) {
      expect(codesOf(named(name)), name).toEqual(['TABLE_ZIP_NAME']);
    }
    const twice = zipSync({ 'a.xml': Uint8Array.of(1), 'b.xml': Uint8Array.of(2) });
    const bytes = changed(twice, [...new TextEncoder().encode('b.xml')], 0, [
      ...new TextEncoder().encode('a.xml'),
    ]);
    expect(codesOf(bytes)).toEqual(['TABLE_ZIP_NAME']);
  });
  it('that lies about a size or a check number is found out', () => {
    const bytes = pack(parts({ 's.xml': `<worksheet>${' '.repeat(5000)}</worksheet>` }));
    expect(codesOf(bytes)).toEqual([]);
    expect(codesOf(changed(bytes, directory, 24, le(9)))).toEqual(['TABLE_ZIP_BROKEN']);
    expect(codesOf(changed(bytes, directory, 24, le(90_000)))).toEqual(['TABLE_ZIP_BROKEN']);
    expect(codesOf(changed(bytes, directory, 16, le(1)))).toEqual(['TABLE_ZIP_BROKEN']);
    expect(codesOf(changed(bytes, directory, 20, le(0xffffffff)))).toEqual(['TABLE_ZIP_BROKEN']);
  });
  it('that unpacks a thousandfold behind a small stated size is refused', () => {
    const honest = pack(parts({ 's.xml': `<worksheet>${' '.repeat(6_000_000)}</worksheet>` }));
    const bytes = changed(honest, directory, 24, le(90_000));
    expect(codesOf(bytes)).toEqual(['TABLE_ZIP_BROKEN']);
  });
  it('gets nothing from outside and no entity of its own', () => {
    for (const xml of [
      '<worksheet>&lol;</worksheet>',
      '<worksheet>&#x110000;</worksheet>',
      '<worksheet>&#0000000000000000065;</worksheet>',
      '<worksheet><row>',
      '<worksheet></row>',
      '<worksheet/><worksheet/>',
      'text<worksheet/>',
      '<worksheet><!-- never closed',
      '<worksheet a=b/>',
      '<worksheet a="<"/>',
      `${'<a>'.repeat(200)}${'</a>'.repeat(200)}`,
      '',
    ]) {
      expect(codesOf(pack(parts({ 's.xml': xml }))), xml).toEqual(['TABLE_XML_BROKEN']);
    }
    const outside = '<R><Relationship Id="r1" Type="x/worksheet" Target="../../../s.xml"/></R>';
    expect(codesOf(pack(parts({ '_rels/w.xml.rels': outside })))).toEqual(['TABLE_NOT_XLSX']);
  });
  it('with many tabs on one part, or many cells, ends in a problem or a table', () => {
    const tabs = pack(parts({ 'w.xml': `<workbook>${'<sheet name="a" id="r1"/>'.repeat(51)}</workbook>` }));
    expect(codesOf(tabs)).toEqual(['TABLE_TOO_MANY_CELLS']);
    expect(codesOf(row('<row><c r="XFD1"><v>1</v></c></row>'))).toEqual(['TABLE_TOO_MANY_CELLS']);
    expect(codesOf(row(`<row>${'<c/>'.repeat(20_000)}</row>`))).toEqual([]);
  });
  it('of any bytes, or a good one with some changed, never throws', () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 400 }), (bytes) => {
        readTable(bytes);
        readTable(Uint8Array.from([0x50, 0x4b, 3, 4, ...bytes, ...end, ...bytes]));
      }),
    );
    const bytes = good();
    const places = fc.array(fc.tuple(fc.nat(bytes.length - 1), fc.nat(255)), { minLength: 1, maxLength: 6 });
    fc.assert(
      fc.property(places, fc.nat(bytes.length), (changes, length) => {
        const out = bytes.slice();
        for (const [at, value] of changes) out[at] = value;
        readTable(out);
        readTable(out.subarray(0, length));
      }),
      { numRuns: 400 },
    );
  });
  it('with one byte of its cells changed is refused, not read as something else', () => {
    const bytes = good();
    const rows = readTable(bytes);
    fc.assert(
      fc.property(fc.nat(bytes.length - 1), fc.integer({ min: 1, max: 255 }), (at, by) => {
        const out = bytes.slice();
        out[at] = (out[at] as number) ^ by;
        const read = readTable(out);
        // a changed byte in what is not read (dates, comments, styles) leaves the cells as they were
        if (read.ok)
          expect(read.value.map((tab) => tab.rows)).toEqual(rows.ok && rows.value.map((tab) => tab.rows));
      }),
      { numRuns: 600 },
    );
  });
});
