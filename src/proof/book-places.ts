import { type Book, pointerOf, stepsOf, tagsOf, valueAt } from '../book/index.ts';
import { canonicalJson } from '../record/canonical-json.ts';
import { byText } from '../record/heads.ts';
import { toHex } from '../record/hex.ts';
import { sha256 } from '../record/sha256.ts';

/** A place of a book that stays the same when another thing is put before it: within the thing that bears the tag. */
export interface StablePlace {
  readonly of?: string;
  readonly path: string;
}

/** What stood at a place when a result was recorded. */
export interface Basis extends StablePlace {
  readonly sha256: string;
}

/** What people call a thing or remark of it, and who said a number: none of it moves a figure. */
const remarks = new Set(['name', 'note']);
const sayings = new Set(['standing', 'by', 'on']);

const essence = (value: unknown): unknown => {
  if (Array.isArray(value)) return value.map(essence);
  if (typeof value !== 'object' || value === null) return value;
  const quantity = 'value' in value;
  const kept = Object.entries(value).filter(([key]) => !remarks.has(key) && !(quantity && sayings.has(key)));
  // a number with no width written as an object is the number
  if (quantity && kept.length === 1) return essence(kept[0]![1]);
  return Object.fromEntries(kept.map(([key, inner]) => [key, essence(inner)]));
};

/** One text for each place, to tell places apart. */
export const placeKey = ({ of = '', path }: StablePlace): string => `${of}\n${path}`;

const placeOnly = ({ of, path }: StablePlace): StablePlace => ({ ...(of === undefined ? {} : { of }), path });

/** The places of one book, each with what stands there. */
export interface BookPlaces {
  /** The place within the innermost thing with a tag; from the top of the book where there is none. */
  readonly stable: (path: string) => StablePlace;
  /** Where a stable place stands now; undefined where no thing has its tag. */
  readonly pathOf: (place: StablePlace) => string | undefined;
  /** What the book says at some places, to be kept with a result: each place once, sorted. */
  readonly basis: (paths: readonly string[]) => readonly Basis[];
  /**
   * The places whose values are others than those that a result was recorded over: those of its basis that changed, then
   * those of `paths`, on which the check hangs now, that it did not hang on then.
   */
  readonly changedSince: (recorded: readonly Basis[], paths: readonly string[]) => readonly StablePlace[];
}

/**
 * The places of a book and the digests of what stands there, remarks left out; nothing has a digest too.
 *
 * Cost     O(size of the book) once, then O(size of what stands at a place), each place once
 */
export const placesOfBook = (book: Book): BookPlaces => {
  const paths = new Map(tagsOf(book).map(({ tag, path }) => [tag, path]));
  const digests = new Map<string, string>();
  const pathOf = ({ of, path }: StablePlace): string | undefined => {
    if (of === undefined) return path;
    const thing = paths.get(of);
    return thing === undefined ? undefined : thing + path;
  };
  const digestAt = (place: StablePlace): string => {
    const key = placeKey(place);
    const known = digests.get(key);
    if (known !== undefined) return known;
    const path = pathOf(place);
    const text = canonicalJson(essence(path === undefined ? null : (valueAt(book, path) ?? null)));
    if (!text.ok) throw new Error(`a book is not JSON: ${JSON.stringify(text.problems)}`);
    const digest = toHex(sha256(new TextEncoder().encode(text.value)));
    digests.set(key, digest);
    return digest;
  };
  const stable = (path: string): StablePlace => {
    const steps = stepsOf(path);
    for (let depth = steps.length; depth > 0; depth -= 1) {
      const of = valueAt(book, `${pointerOf(steps.slice(0, depth))}/tag`);
      if (typeof of === 'string') return { of, path: pointerOf(steps.slice(depth)) };
    }
    return { path };
  };
  const basis = (at: readonly string[]): readonly Basis[] => {
    const places = new Map(at.map(stable).map((place) => [placeKey(place), place]));
    return [...places]
      .sort(([a], [b]) => byText(a, b))
      .map(([, place]) => ({ ...place, sha256: digestAt(place) }));
  };
  return {
    stable,
    pathOf,
    basis,
    changedSince: (recorded, at) => {
      const known = new Set(recorded.map(placeKey));
      return [
        ...recorded.filter((one) => digestAt(one) !== one.sha256),
        ...basis(at).filter((one) => !known.has(placeKey(one))),
      ].map(placeOnly);
    },
  };
};
