import { type Book, type Join, tagsOf } from '../book/index.ts';
import { codeOfJoin } from './code/join-code.ts';
import type { JoinEnd, LaidJoin, Side } from './laid-join.ts';
import { sectionsOfThings } from './sections-of-things.ts';
import { terminalOf } from './terminal.ts';

/** What all joins are looked up in, made once a book. */
interface Ground {
  readonly sections: ReadonlyMap<string, string>;
  readonly tags: ReadonlySet<string>;
  readonly splits: ReadonlyMap<string, readonly [string, string]>;
  readonly boxes: ReadonlySet<string>;
  /** The box of a strip, by its name and by section and name, where there is one only. */
  readonly boxOfStrip: ReadonlyMap<string, string>;
}

const onSection = (section: string, strip: string): string => `${section} ${strip}`;

const groundOf = (book: Book): Ground => {
  const holders = new Map<string, Set<string>>();
  for (const { tag, section, terminals = [] } of book.line?.boxes ?? []) {
    for (const { name } of terminals) {
      const strip = (terminalOf(name)?.strip ?? name).replace(/^-/, '');
      for (const key of [strip, ...(section === undefined ? [] : [onSection(section, strip)])])
        holders.set(key, (holders.get(key) ?? new Set()).add(tag));
    }
  }
  return {
    sections: sectionsOfThings(book),
    tags: new Set(tagsOf(book).map(({ tag }) => tag)),
    splits: new Map((book.line?.splits ?? []).map(({ tag, between }) => [tag, between])),
    boxes: new Set((book.line?.boxes ?? []).map(({ tag }) => tag)),
    boxOfStrip: new Map(
      [...holders].flatMap(([strip, [box, other]]) =>
        box === undefined || other !== undefined ? [] : [[strip, box] as const],
      ),
    ),
  };
};

const endOf = (join: Join, side: Side, ground: Ground): JoinEnd => {
  const label = side === 'from' ? join.from : join.to;
  const apart = (side === 'from' ? join.fromEnd : join.toEnd) ?? {};
  const terminal = label === undefined ? undefined : terminalOf(label);
  const { location, strip } = terminal ?? {};
  // the label of a whole thing, or of a terminal on one: -M3:U1
  const on = apart.on ?? [label, `-${strip}`, strip].find((tag) => tag !== undefined && ground.tags.has(tag));
  const sectionOf = (tags: readonly (string | undefined)[]): string | undefined =>
    tags
      .map((tag) => (tag === undefined ? undefined : ground.sections.get(tag)))
      .find((tag) => tag !== undefined);
  const said = sectionOf([apart.section, location, on]);
  const named = [location, on].find((tag) => tag !== undefined && ground.boxes.has(tag));
  const held =
    strip === undefined
      ? undefined
      : ground.boxOfStrip.get(said === undefined ? strip : onSection(said, strip));
  const box = named ?? held;
  const section = said ?? sectionOf([box]);
  const size = apart.size ?? join.size;
  const colour = apart.colour ?? join.colour;
  return {
    side,
    ...(label === undefined ? {} : { label }),
    ...(on === undefined ? {} : { on }),
    ...(section === undefined ? {} : { section }),
    ...(box === undefined ? {} : { box }),
    ...(size === undefined ? {} : { size }),
    ...(colour === undefined ? {} : { colour }),
  };
};

/** An end whose section nobody says is on the other side of the split than its partner. */
const across = (end: JoinEnd, other: JoinEnd, between: readonly [string, string] | undefined): JoinEnd => {
  if (between === undefined || end.section !== undefined || other.section === undefined) return end;
  const [one, two] = between;
  const section = other.section === one ? two : other.section === two ? one : undefined;
  return section === undefined ? end : { ...end, section };
};

/**
 * The joins of a book with both ends found out: thing, section and box of each.
 *
 * Method   a section is said at the end, or follows from the location in the label, the thing, the box of the strip, or
 *          the split whose other side is known; what follows from nothing stays unknown
 * Cost     O(size of the book)
 */
export const laidJoins = (book: Book): readonly LaidJoin[] => {
  const ground = groundOf(book);
  return (book.line?.joins ?? []).map((join, i) => {
    const between = join.split === undefined ? undefined : ground.splits.get(join.split);
    const [first, second] = [endOf(join, 'from', ground), endOf(join, 'to', ground)];
    const [from, to] = [across(first, second, between), across(second, first, between)];
    const box = join.box ?? to.box ?? from.box;
    const { tag, kind, name, label, split, cable, core, potential, after = [] } = join;
    return {
      tag,
      path: `/line/joins/${i}`,
      code: codeOfJoin(join),
      from,
      to,
      after,
      ...(kind === undefined ? {} : { kind }),
      ...(name === undefined ? {} : { name }),
      ...(label === undefined ? {} : { label }),
      ...(split === undefined ? {} : { split }),
      ...(box === undefined ? {} : { box }),
      ...(cable === undefined ? {} : { cable }),
      ...(core === undefined ? {} : { core }),
      ...(potential === undefined ? {} : { potential }),
    };
  });
};
