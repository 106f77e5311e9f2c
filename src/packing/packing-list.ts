import { type Book, tagPath, valueAt } from '../book/index.ts';
import type { Working } from '../floor/assessment.ts';
import { placeFigure } from '../proof/place-figure.ts';
import { massesTogetherSheet } from '../sheets/building/masses-together.ts';
import { runSheet } from '../sheets/frame.ts';

export type Crate = NonNullable<NonNullable<Book['line']>['crates']>[number];
export type PackedItem = NonNullable<Crate['items']>[number];

/** A mass that the sheet of masses made of those in the book. */
export interface AddedMass {
  /** kg. */
  readonly value: number;
  readonly working: Working;
}

export interface PackedCrate {
  readonly crate: Crate;
  readonly path: string;
  /** The empty crate with all that is in it; absent where a mass is not said. */
  readonly added?: AddedMass;
  /** Whether the mass that is said is the added one, to the kilogram and the per cent of a platform scale. */
  readonly agrees?: boolean;
  /** Places that the shipping papers, the carrier or the lift want and that say nothing. */
  readonly missing: readonly string[];
}

export interface PackingList {
  readonly crates: readonly PackedCrate[];
  /** Sections, change parts and spares that are in no crate. */
  readonly unpacked: readonly string[];
  /** Things that are in more than one. */
  readonly twice: readonly string[];
}

/** A platform scale of a hall reads within a kilogram and a per cent of what stands on it; common practice. */
const agree = (said: number, added: number): boolean => Math.abs(said - added) <= 1 + 0.01 * added;

/** What must be known of each crate before it is handed to anybody. */
const wanted = ['mass', 'length', 'width', 'height', 'origin', 'value', 'seal'] as const;

/** Places of the masses in a crate: the empty one, then each thing once, by its row or by its own. */
const massPlaces = (book: Book, { holds = [], items = [] }: Crate, path: string): readonly string[] => {
  const described = new Set(items.map(({ describes }) => describes));
  return [
    `${path}/tare`,
    ...items.map((_, i) => `${path}/items/${i}/mass`),
    ...holds.flatMap((tag) => (described.has(tag) ? [] : [`${tagPath(book, tag) ?? path}/mass`])),
  ];
};

const addedMass = (
  book: Book,
  places: readonly string[],
): { readonly added?: AddedMass; readonly missing: readonly string[] } => {
  const figures = places.map((place) => placeFigure(book, place, 'mass'));
  const missing = figures.flatMap((figure) => figure.missing);
  if (missing.length > 0) return { missing };
  const masses = figures.map(({ value }) => value!);
  const run = runSheet(massesTogetherSheet, { masses });
  if (!run.ok) return { missing: places };
  const { outputs, notes } = run.value;
  const { id: sheet, version } = massesTogetherSheet;
  const from = { masses: { path: places[0]! } };
  const working: Working = { sheet, version, inputs: { masses }, outputs: { ...outputs }, notes, from };
  return { added: { value: outputs.mass, working }, missing: [] };
};

const packedCrate = (book: Book, crate: Crate, i: number): PackedCrate => {
  const path = `/line/crates/${i}`;
  const { added, missing } = addedMass(book, massPlaces(book, crate, path));
  const said = placeFigure(book, `${path}/mass`, 'mass').value;
  const frost = book.line?.transport?.frost === true && crate.frost === undefined;
  const shock = (crate.indicators ?? []).length === 0;
  return {
    crate,
    path,
    ...(added === undefined ? {} : { added }),
    ...(added === undefined || said === undefined ? {} : { agrees: agree(said, added.value) }),
    missing: [
      ...wanted.flatMap((field) => (crate[field] === undefined ? [`${path}/${field}`] : [])),
      // what is declared as dangerous in words alone is no declaration
      ...(crate.dangerousGoods !== undefined && crate.dangerous === undefined ? [`${path}/dangerous`] : []),
      ...(crate.kind === 'crate' || crate.kind === 'pallet' || crate.kind === 'box'
        ? crate.wood === undefined
          ? [`${path}/wood`]
          : []
        : []),
      ...(frost ? [`${path}/frost`] : []),
      ...(shock ? [`${path}/indicators`] : []),
      ...missing,
    ],
  };
};

/** What travels and has a tag: each must be in a crate. */
const travelling = ({ line }: Book): readonly string[] => [
  ...(line?.sections ?? []).map(({ tag }) => tag),
  ...(line?.formats ?? []).flatMap(({ changeParts = [] }) => changeParts.map(({ tag }) => tag)),
  ...(line?.spares ?? []).map(({ tag }) => tag),
];

/**
 * What goes into each crate, whether its masses agree, and what is in none.
 *
 * Returns  no crate and nothing unpacked where the book names no crate
 * Cost     O(crates times size of the book)
 */
export const packingList = (book: Book): PackingList => {
  const crates = book.line?.crates ?? [];
  const held = crates.flatMap(({ holds = [], items = [] }) => [
    ...new Set([...holds, ...items.flatMap(({ describes }) => describes ?? [])]),
  ]);
  const known = new Set(held);
  return {
    crates: crates.map((crate, i) => packedCrate(book, crate, i)),
    unpacked: crates.length === 0 ? [] : travelling(book).filter((tag) => !known.has(tag)),
    twice: [...new Set(held.filter((tag, i) => held.indexOf(tag) !== i))],
  };
};

/** The name that people gave a thing, with its tag. */
export const thingText = (book: Book, tag: string): string => {
  const path = tagPath(book, tag);
  const name = path === undefined ? undefined : valueAt(book, `${path}/name`);
  return typeof name === 'string' && name !== tag ? `${name} ${tag}` : tag;
};
