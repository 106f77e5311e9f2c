import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Book, Join } from '../../book/index.ts';
import { readBook } from '../../book/index.ts';
import { laidJoins } from '../laid-joins.ts';
import { markOf, plantedList } from '../testing/planted-list.arbitrary.ts';
import type { JoinFault } from './fault.ts';
import { faultsOfJoins } from './faults-of-joins.ts';

const faultsOf = (book: Book): readonly JoinFault[] => faultsOfJoins(laidJoins(book), book);

const markOfFault = ({ code, ends, parts }: JoinFault): string => {
  const { one, other, section } = parts;
  const named = [one, other, section].flatMap((tag) => (tag === undefined ? [] : [`${tag}`]));
  return markOf(code, ...(named.length > 0 ? named : ends.map(({ join }) => join)));
};

describe('the faults of a list of joins', () => {
  it('are those that were planted in any list, each once, and nothing else', () => {
    fc.assert(
      fc.property(plantedList, ({ book, planted }) => {
        expect(faultsOf(book).map(markOfFault).sort()).toEqual([...planted].sort());
      }),
      { numRuns: 200 },
    );
  });

  it('name both ends, with label and section', () => {
    fc.assert(
      fc.property(plantedList, ({ book }) => {
        for (const { code, ends } of faultsOf(book)) {
          if (code === 'JOIN_SECTION_ALONE') continue;
          expect(ends.length % 2).toBe(0);
          expect(ends.length).toBeGreaterThan(0);
          for (const { join } of ends) {
            expect(new Set(ends.filter((one) => one.join === join).map(({ side }) => side))).toEqual(
              new Set(['from', 'to']),
            );
          }
        }
      }),
      { numRuns: 50 },
    );
  });

  it('stand in books that read', () => {
    fc.assert(
      fc.property(plantedList, ({ book }) => {
        expect(readBook(JSON.stringify(book)).ok).toBe(true);
      }),
      { numRuns: 20 },
    );
  });
});

const two = (...joins: readonly Join[]): Book => ({
  twinfloor: 1,
  agreement: { conductorColours: 'NFPA 79' },
  line: {
    sections: [{ tag: '+S1', holds: ['+FILL'], frost: true }, { tag: '+S2' }],
    stations: [{ tag: '+FILL', kind: 'fill', lanes: [{ tag: '-Y11' }, { tag: '-Y12' }] }],
    splits: [{ tag: 'SP1', between: ['+S1', '+S2'] }],
    joins,
  },
});
const codesOf = (book: Book): readonly string[] => faultsOf(book).map(({ code }) => code);
const bond: Join = { tag: 'J-0', kind: 'bond', split: 'SP1', from: '+S1:PE', to: '+S2:PE' };
const emptied: readonly Join[] = ['-Y11', '-Y12'].map((from, i) => ({
  tag: `D-${i}`,
  kind: 'drained',
  from,
}));

describe('a join that ends where it begins', () => {
  it('is one wire in its terminal, so that it is the only one to be put right', () => {
    const loop: Join = { tag: 'J-1', kind: 'tube', split: 'SP1', from: '+S1-X1:1', to: '+S1-X1:1' };
    const found = faultsOf(two(bond, loop, ...emptied));
    expect(found.map(({ code, parts }) => [code, parts])).toEqual([
      ['JOIN_ENDS_SAME', { join: 'J-1', terminal: '+S1-X1:1' }],
    ]);
    // two devices of one name on two sections are two terminals
    expect(codesOf(two(bond, { ...loop, to: '+S2-X1:1' }, ...emptied))).toEqual([]);
  });
});

describe('a bond', () => {
  const wire = (potential?: string): Join => ({
    tag: 'J-1',
    kind: 'conductor',
    split: 'SP1',
    from: 'X1:1',
    to: 'X2:1',
    ...(potential === undefined ? {} : { potential }),
  });
  it('must cross each split that carries power, or of which nobody says that it does not', () => {
    expect(codesOf(two(wire('L1'), ...emptied))).toEqual(['JOIN_BOND_MISSING']);
    expect(codesOf(two(wire('230 V AC'), ...emptied))).toEqual(['JOIN_BOND_MISSING']);
    expect(codesOf(two(wire(), ...emptied))).toEqual(['JOIN_BOND_UNSURE']);
    expect(codesOf(two(wire('24 V DC'), ...emptied))).toEqual([]);
    expect(codesOf(two(wire('L1'), bond, ...emptied))).toEqual([]);
  });
});

describe('a colour', () => {
  const coloured = (potential: string, colour: string): readonly string[] =>
    codesOf(
      two(
        bond,
        { tag: 'J-1', kind: 'conductor', split: 'SP1', from: 'a', to: 'b', potential, colour },
        ...emptied,
      ),
    );
  it('is held against what the conductor carries by the rules that were agreed', () => {
    // NFPA 79:2021 13.2, read in a transcription in a public forum
    expect(coloured('N', 'white')).toEqual([]);
    expect(coloured('N', 'blue')).toEqual(['JOIN_COLOUR_WRONG']);
    expect(coloured('0 V', 'white with blue stripe')).toEqual([]);
    expect(coloured('L1', 'brown')).toEqual(['JOIN_COLOUR_WRONG']);
    expect(coloured('PE', 'GN/YE')).toEqual([]);
    expect(coloured('AC control', 'rot')).toEqual([]);
  });
  it('that nobody has a rule or a word for is left to people', () => {
    expect(coloured('spare', 'white')).toEqual([]);
    expect(coloured('L1', 'mauve')).toEqual([]);
  });
});

describe('frost', () => {
  it('asks that every meter and valve of the section be drained', () => {
    expect(codesOf(two(bond))).toEqual(['JOIN_NOT_DRAINED', 'JOIN_NOT_DRAINED']);
    expect(codesOf(two(bond, ...emptied))).toEqual([]);
  });
  it('on the way reaches each section, unless the book says of one that it does not; dry is empty too', () => {
    const way = (frost: boolean | undefined, ...joins: readonly Join[]): readonly string[] => {
      const book = two(bond, ...joins);
      const [first, second] = book.line!.sections!;
      const { frost: _, ...rest } = first!;
      const sections = [{ ...rest, ...(frost === undefined ? {} : { frost }) }, second!];
      return codesOf({ ...book, line: { ...book.line, sections, transport: { frost: true } } });
    };
    expect(way(undefined)).toEqual(['JOIN_NOT_DRAINED', 'JOIN_NOT_DRAINED']);
    expect(way(false)).toEqual([]);
    const dried = emptied.map((join) => ({ ...join, kind: 'dried' as const }));
    expect(way(undefined, ...dried)).toEqual([]);
  });
});
