import { type Book, pointerOf, stepsOf, tagsOf, valueAt } from '../book/index.ts';
import { canonicalJson } from '../record/canonical-json.ts';
import { byText } from '../record/heads.ts';
import { toHex } from '../record/hex.ts';
import { sha256 } from '../record/sha256.ts';

/**
 * A place of a book that stays the same when another thing is put before it: within the thing that bears the tag, an entry
 * without one by what it is of, as `/settings/lane=-Y11,format=FLAGON-2L/preset`.
 */
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

/** What tells the entries of a list apart that bear no tag: what each is of. */
const ofWhat = ['lane', 'format'] as const;

const keyOf = (entry: unknown): string =>
  ofWhat
    .flatMap((field) => {
      const of = typeof entry === 'object' && entry !== null ? (entry as Record<string, unknown>)[field] : '';
      return typeof of === 'string' && of !== '' ? [`${field}=${of}`] : [];
    })
    .join(',');

/** Steps from a thing on with each entry of a list named by what it is of, else by its number. */
const namedSteps = (thing: unknown, steps: readonly string[]): readonly string[] => {
  let at = thing;
  return steps.map((step) => {
    const [list, entry] = [at, valueAt(at, pointerOf([step]))];
    at = entry;
    const key = Array.isArray(list) ? keyOf(entry) : '';
    // of two entries of the same thing neither is told by it
    return key !== '' && (list as unknown[]).filter((one) => keyOf(one) === key).length === 1 ? key : step;
  });
};

/** The same steps by number; undefined where a list has no entry of that name. */
const numberedSteps = (thing: unknown, steps: readonly string[]): readonly string[] | undefined => {
  let at = thing;
  const numbered: string[] = [];
  for (const step of steps) {
    const named = Array.isArray(at) && step.includes('=');
    const index = named ? (at as unknown[]).findIndex((entry) => keyOf(entry) === step) : -1;
    if (named && index < 0) return undefined;
    numbered.push(named ? String(index) : step);
    at = valueAt(at, pointerOf([numbered.at(-1)!]));
  }
  return numbered;
};

const isWithin = (path: string, outer: string | undefined): boolean =>
  outer !== undefined && (path === outer || path.startsWith(`${outer}/`));

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
    const thing = of === undefined ? '' : paths.get(of);
    if (thing === undefined) return undefined;
    const steps = numberedSteps(valueAt(book, thing), stepsOf(path));
    return steps === undefined ? undefined : thing + pointerOf(steps);
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
      const thing = valueAt(book, pointerOf(steps.slice(0, depth)));
      const of = valueAt(thing, '/tag');
      if (typeof of === 'string') return { of, path: pointerOf(namedSteps(thing, steps.slice(depth))) };
    }
    return { path: pointerOf(namedSteps(book, steps)) };
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
      const known = recorded.map(pathOf);
      // what stood within a place that it hung on, it hung on too
      const isKnown = (one: StablePlace): boolean => {
        const path = pathOf(one);
        return path !== undefined && known.some((outer) => isWithin(path, outer));
      };
      return [
        ...recorded.filter((one) => digestAt(one) !== one.sha256),
        ...basis(at).filter((one) => !isKnown(one)),
      ].map(placeOnly);
    },
  };
};
