import fc from 'fast-check';
import type { Book, Join } from '../../book/index.ts';
import type { JoinFaultCode } from '../integrity/fault.ts';

/** A list of joins without a fault, or with those that were planted, each with what it is found by. */
export interface PlantedList {
  readonly book: Book;
  readonly planted: readonly string[];
}

type Writable<T> = { -readonly [K in keyof T]: T[K] };
type Draft = Writable<Join>;

/** How a fault is told from every other: by the joins, sections or things that it is of. */
export const markOf = (code: JoinFaultCode, ...of: readonly string[]): string =>
  [code, ...[...new Set(of)].sort()].join(' ');

const potentials = [
  ['L1', 'brown'],
  ['L2', 'black'],
  ['L3', 'GY'],
  ['N', 'blau'],
  ['24 V DC', 'azul'],
  ['AC control', 'red'],
] as const;

/** Sections in a row, a box on each, and what crosses the splits between neighbours: bonds, wires, tubes. */
const soundList = (sections: number, wires: readonly (readonly [number, number])[]) => {
  const joins: Draft[] = [];
  const bonds: Draft[] = [];
  let number = 0;
  const wire = (split: number, which: number, more: Partial<Draft> = {}): Draft => {
    number += 1;
    const [potential, colour] = potentials[which % potentials.length]!;
    const made: Draft = {
      tag: `J-${number}`,
      kind: 'conductor',
      split: `SP${split}`,
      label: `W${number}`,
      from: `+S${split}-X1:${number}`,
      to: `+S${split + 1}-X1:${number}`,
      cable: `W${split}`,
      core: `${number}`,
      size: '1.5 mm2',
      potential,
      colour,
      ...more,
    };
    joins.push(made);
    return made;
  };
  for (let split = 1; split < sections; split += 1) {
    const bond: Draft = {
      tag: `B-${split}`,
      kind: 'bond',
      split: `SP${split}`,
      from: `+S${split}:PE${split}`,
      to: `+S${split + 1}:PE${split}`,
      size: '6 mm2',
      colour: 'GNYE',
    };
    joins.push(bond);
    bonds.push(bond);
    wire(split, 0);
  }
  for (const [split, which] of wires) wire(1 + (split % (sections - 1)), which);
  return { joins, bonds, wire };
};

type Sound = ReturnType<typeof soundList>;

/** One fault each, in joins of its own; gives the mark by which it must be found. */
const plants: readonly ((list: Sound, split: number, lone: string[]) => string)[] = [
  ({ wire }, split) => {
    const made = wire(split, 0);
    delete made.to;
    return markOf('JOIN_END_MISSING', made.tag);
  },
  ({ wire }, split) => {
    const one = wire(split, 1);
    const other = wire(split, 1, { to: one.to! });
    return markOf('JOIN_TERMINAL_FULL', one.tag, other.tag);
  },
  ({ wire }, split) => {
    const one = wire(split, 1);
    one.to = one.from!;
    return markOf('JOIN_ENDS_SAME', one.tag);
  },
  ({ wire }, split) => {
    const one = wire(split, 1);
    one.from = one.from!.replace('X1', 'X9');
    const other = wire(split, 1, { from: one.from });
    return markOf('JOIN_TERMINAL_SHARED', one.tag, other.tag);
  },
  ({ wire }, split) => {
    const one = wire(split, 2);
    const other = wire(split, 2, { label: one.label!.toLowerCase() });
    return markOf('JOIN_LABEL_TWICE', one.tag, other.tag);
  },
  ({ wire }, split) => {
    const one = wire(split, 2);
    const other = wire(split, 2, { core: one.core! });
    return markOf('JOIN_CORE_TWICE', one.tag, other.tag);
  },
  ({ wire }, split) => {
    const one = wire(split, 3, { code: '222222' });
    const other = wire(split, 3, { code: '222-222' });
    return markOf('JOIN_CODE_TWICE', one.tag, other.tag);
  },
  ({ wire }, split) =>
    markOf(
      'JOIN_SIZE_DIFFERS',
      wire(split, 4, { toEnd: { size: '2.5 mm2' }, fromEnd: { size: '1.50 mm²' } }).tag,
    ),
  ({ wire }, split) => markOf('JOIN_COLOUR_DIFFERS', wire(split, 5, { toEnd: { colour: 'white' } }).tag),
  ({ wire }, split) => markOf('JOIN_COLOUR_WRONG', wire(split, 3, { colour: 'green' }).tag),
  (_, __, lone) => {
    lone.push(`+LONE${lone.length}`);
    return markOf('JOIN_SECTION_ALONE', lone.at(-1)!);
  },
];

/** Planted apart: without its bond a split has a fault whatever else is planted there. */
const withoutBond = ({ joins, bonds }: Sound, split: number): string => {
  joins.splice(joins.indexOf(bonds[split - 1]!), 1);
  return markOf('JOIN_BOND_MISSING', `+S${split}`, `+S${split + 1}`);
};

const wired = fc.tuple(fc.nat(9), fc.nat(5));

/** Any list of up to five sections and forty joins with up to a dozen faults planted. */
export const plantedList: fc.Arbitrary<PlantedList> = fc
  .record({
    sections: fc.integer({ min: 3, max: 5 }),
    wires: fc.array(wired, { maxLength: 20 }),
    faults: fc.array(fc.tuple(fc.nat(plants.length - 1), fc.nat(9)), { maxLength: 12 }),
    unbonded: fc.option(fc.nat(9)),
    turned: fc.boolean(),
  })
  .map(({ sections, wires, faults, unbonded, turned }) => {
    const list = soundList(sections, wires);
    const lone: string[] = [];
    const planted = [
      // a code or a section of its own is planted once; the same twice would be another fault
      ...[...new Map(faults.map((one) => [one[0], one])).values()].map(([which, at]) =>
        plants[which]!(list, 1 + (at % (sections - 1)), lone),
      ),
      ...(unbonded === null ? [] : [withoutBond(list, 1 + (unbonded % (sections - 1)))]),
    ];
    const tags = Array.from({ length: sections }, (_, i) => `+S${i + 1}`);
    const book: Book = {
      twinfloor: 1,
      agreement: { conductorColours: 'IEC 60204-1' },
      line: {
        sections: [...tags, ...lone].map((tag) => ({ tag })),
        splits: tags.slice(1).map((tag, i) => ({ tag: `SP${i + 1}`, between: [tags[i]!, tag] })),
        boxes: tags.map((section, i) => ({
          tag: `+JB${i + 1}`,
          section,
          terminals: [{ name: 'X1', wires: 1 }, { name: 'X9' }],
        })),
        joins: turned ? list.joins.toReversed() : list.joins,
      },
    };
    return { book, planted };
  });
