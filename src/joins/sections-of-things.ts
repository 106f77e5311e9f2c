import { type Book, tagsOf, valueAt } from '../book/index.ts';

/** Fields by which a thing says on what it sits, the nearest first. */
const hosts = ['section', 'station', 'zone', 'tieIn', 'drop'] as const;

const text = (value: unknown): string | undefined => (typeof value === 'string' ? value : undefined);

/**
 * Section on which each thing of the book sits, as far as the book says: by the section itself, the station that a
 * section holds, or the thing of which it is a part.
 *
 * Method   each thing asks its own fields, then the thing around it, until a section is reached; a circle reaches none
 * Cost     O(things)
 */
export const sectionsOfThings = (book: Book): ReadonlyMap<string, string> => {
  const found = new Map<string, string>();
  for (const { tag, holds } of book.line?.sections ?? []) {
    found.set(tag, tag);
    for (const station of holds ?? []) found.set(station, tag);
  }
  const things = tagsOf(book);
  const byPath = new Map(things.map(({ path, tag }) => [path, tag]));
  const pathOf = new Map(things.map(({ path, tag }) => [tag, path]));
  const around = (path: string): string | undefined => {
    for (let at = path.lastIndexOf('/'); at > 0; at = path.lastIndexOf('/', at - 1)) {
      const tag = byPath.get(path.slice(0, at));
      if (tag !== undefined) return tag;
    }
    return undefined;
  };
  const sectionOf = (tag: string, onWay: ReadonlySet<string>): string | undefined => {
    const known = found.get(tag);
    const path = pathOf.get(tag);
    if (known !== undefined || path === undefined || onWay.has(tag)) return known;
    const further = new Set([...onWay, tag]);
    const thing = valueAt(book, path);
    for (const host of [...hosts.map((key) => text(valueAt(thing, `/${key}`))), around(path)]) {
      const section = host === undefined ? undefined : sectionOf(host, further);
      if (section !== undefined) {
        found.set(tag, section);
        return section;
      }
    }
    return undefined;
  };
  for (const { tag } of things) sectionOf(tag, new Set());
  return found;
};
