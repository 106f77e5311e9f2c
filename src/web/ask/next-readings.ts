import type { Book } from '../../book/index.ts';
import type { Finding, FloorAssessment } from '../../floor/assessment.ts';
import { placesBehind } from '../../floor/questions/places-behind.ts';
import { reachOf, readingFor, type Whom, whomFor } from './readings.ts';

/** One reading or answer, and what it does for a finding. */
export interface NextReading {
  readonly id: string;
  readonly whom: Whom;
  /** Places of the book that it settles, the one that matters most first. */
  readonly paths: readonly string[];
  /** Share of the width that goes with it, 0 to 1; absent where nothing can be said before it is there. */
  readonly share?: number;
  /** Whether any of it stands on a value that the program or the writer assumed. */
  readonly assumed: boolean;
}

/**
 * Share of a width that goes when several values become sure together.
 *
 * Method   widths add as squares, so that a value whose share is s holds 1 - (1 - s)^2 of the square; these add
 * Symbols  shares  of the width that goes with each alone, 0 to 1
 * Returns  0 to 1
 * Assumes  as much upward as downward
 * Source   JCGM 100:2008 (GUM) 5.1.2, memory
 */
export const sharedWidth = (shares: readonly number[]): number => {
  const square = shares.reduce((sum, share) => sum + 1 - (1 - share) ** 2, 0);
  return 1 - Math.sqrt(Math.max(0, 1 - square));
};

type Cause = Finding['causes'][number];

const grouped = <T>(all: readonly T[], keyOf: (one: T) => string): readonly (readonly T[])[] => {
  const groups = new Map<string, T[]>();
  for (const one of all) groups.set(keyOf(one), [...(groups.get(keyOf(one)) ?? []), one]);
  return [...groups.values()];
};

const ofCauses = (book: Book, causes: readonly Cause[]): readonly NextReading[] =>
  grouped(causes, ({ path }) => reachOf(path))
    .map((group) => {
      const path = group[0]?.path ?? '';
      return {
        id: readingFor(path).id,
        whom: whomFor(book, path),
        paths: group.map((cause) => cause.path),
        share: sharedWidth(group.map(({ share }) => share)),
        assumed: group.some(({ doubt }) => doubt === 'assumed'),
      };
    })
    .sort((a, b) => b.share - a.share);

const ofMissing = (book: Book, missing: readonly string[]): readonly NextReading[] =>
  grouped([...new Set(missing)], reachOf).map((paths) => ({
    id: readingFor(paths[0] ?? '').id,
    whom: whomFor(book, paths[0] ?? ''),
    paths,
    assumed: false,
  }));

/**
 * What to ask next for a finding: first what it cannot do without, then by the share of the width that goes.
 *
 * Returns  empty for a finding that carries or is short: its width is told elsewhere
 */
export const nextReadings = (book: Book, finding: Finding): readonly NextReading[] => {
  if (finding.verdict !== 'unknown') return [];
  const needed = placesBehind(finding).filter(({ waits }) => waits !== 'unsure');
  return [
    ...ofMissing(
      book,
      needed.map(({ path }) => path),
    ),
    ...ofCauses(book, finding.causes),
  ];
};

/** What narrows a finding most, whether it is decided or not. */
export const narrowingReadings = (book: Book, finding: Finding): readonly NextReading[] =>
  ofCauses(book, finding.causes);

/** A reading with the findings of a floor that wait for it. */
export interface FloorReading extends NextReading {
  readonly findings: readonly string[];
}

const merged = (all: readonly { readonly finding: string; readonly reading: NextReading }[]) =>
  grouped(all, ({ reading }) => reachOf(reading.paths[0] ?? '')).flatMap((group): readonly FloorReading[] => {
    const [first] = group;
    if (first === undefined) return [];
    const missing = group.some(({ reading }) => reading.share === undefined);
    const share = Math.max(...group.map(({ reading }) => reading.share ?? 0));
    const { share: _, ...reading } = first.reading;
    return [
      {
        ...reading,
        paths: [...new Set(group.flatMap((each) => each.reading.paths))],
        assumed: group.some((each) => each.reading.assumed),
        // what cannot be said without it is told, what it would only narrow is not
        findings: [
          ...new Set(
            group
              .filter((each) => !missing || each.reading.share === undefined)
              .map(({ finding }) => finding),
          ),
        ],
        ...(missing ? {} : { share }),
      },
    ];
  });

/**
 * What to ask next on a floor: the readings for every finding that is not decided, each once.
 *
 * Method   in the order of the spine, whose first rows weigh most; within a row what it cannot do without comes first.
 *          Of what only narrows a row the three that narrow it most are named
 */
export const floorReadings = (book: Book, floor: FloorAssessment): readonly FloorReading[] =>
  merged(
    floor.findings.flatMap((finding) => {
      const all = nextReadings(book, finding);
      const told = [
        ...all.filter(({ share }) => share === undefined),
        ...all.filter(({ share }) => share !== undefined).slice(0, 3),
      ];
      return told.map((reading) => ({ finding: finding.id, reading }));
    }),
  );

/**
 * Everything that is assumed for a floor, what widens any of its findings most first.
 *
 * Returns  readings that would replace the assumption; without a share where it moves no finding by a hundredth
 */
export const assumedReadings = (book: Book, floor: FloorAssessment): readonly FloorReading[] => {
  const widening = merged(
    floor.findings.flatMap((finding) =>
      ofCauses(
        book,
        finding.causes.filter(({ doubt }) => doubt === 'assumed'),
      ).map((reading) => ({ finding: finding.id, reading })),
    ),
  );
  const told = new Set(widening.flatMap(({ paths }) => paths));
  const rest = floor.findings.flatMap(({ have, demand }) => [...have.assumed, ...demand.assumed]);
  const quiet = ofMissing(
    book,
    rest.filter((path) => !told.has(path)),
  ).map((reading) => ({ ...reading, assumed: true, findings: [] }));
  return [...widening.toSorted((a, b) => (b.share ?? 0) - (a.share ?? 0)), ...quiet];
};
