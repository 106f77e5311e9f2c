import type { Book } from '../book/index.ts';
import type { Figure, Origin, Working } from '../floor/assessment.ts';
import { holdRulesOf } from '../floor/hold-rules-of.ts';
import { stationOf } from '../floor/station-of.ts';

/** Rows of the cause-and-effect table by which stations wait for each other; the others have no part in the pace. */
const holdRows = (book: Book): readonly string[] => {
  const { holds, unfollowed } = holdRulesOf(book);
  const tags = new Set([...holds.map(({ rule }) => rule), ...unfollowed]);
  return (book.line?.interlocks ?? []).flatMap(({ tag }, i) =>
    tags.has(tag) ? [`/line/interlocks/${i}`] : [],
  );
};

/** Parts of the book behind the pace of a line and behind what its lanes fill: found together by iteration. */
export const pacePlaces = (floor: number, book: Book): readonly string[] => [
  `/floors/${floor}/standsAt`,
  `/floors/${floor}/supply`,
  `/floors/${floor}/liquid`,
  `/floors/${floor}/settings`,
  `/floors/${floor}/air`,
  `/floors/${floor}/power/frequency`,
  '/line/stations',
  '/line/cylinders',
  '/line/drives',
  '/line/holdRules',
  ...holdRows(book),
  '/line/formats',
  '/line/products',
];

/** Parts of the book behind the balance with all lanes open: it knows no counts, no timers and nothing of the washer. */
const balancePlaces = (floor: number, book: Book): readonly string[] => {
  const fill = stationOf(book, 'fill');
  if (fill === undefined) return pacePlaces(floor, book);
  const lanes = fill.station.lanes ?? [];
  return [
    ...['standsAt', 'supply', 'liquid'].map((field) => `/floors/${floor}/${field}`),
    '/line/products',
    ...['manifoldHeight', 'mouthHeight'].map((field) => `${fill.path}/${field}`),
    ...lanes.flatMap((_, i) => ['kv', 'nozzle', 'out'].map((field) => `${fill.path}/lanes/${i}/${field}`)),
    // a lane that fills from below stands under the liquid in the bottle
    ...(lanes.some(({ nozzle }) => nozzle === 'bottom up') ? ['/line/formats'] : []),
  ];
};

/**
 * Places of the book that a figure rests on.
 *
 * Method   the origins of its working, back to the places, each working once
 * Symbols  floor  its place among the floors of the book
 * Returns  places, sorted; where a value was solved with others, the parts of the book that they are solved from:
 *          iteration keeps no list of its own
 * Cost     O(workings behind it)
 */
export const figurePlaces = (
  figure: Figure,
  workings: readonly Working[],
  floor: number,
  book: Book,
): readonly string[] => {
  const places = new Set<string>([...figure.assumed, ...figure.missing]);
  if (figure.path !== undefined) places.add(figure.path);
  const seen = new Set<number>();
  /** How values behind it were solved with others: by the balance of flows, or by the pace. */
  const solved = new Set<'balance' | 'pace'>();
  const follow = (origin: Origin): void => {
    if ('path' in origin) places.add(origin.path);
    else if ('working' in origin) visit(origin.working);
    else solved.add(origin.solved === 'balance' ? 'balance' : 'pace');
  };
  const visit = (number: number): void => {
    const working = workings[number];
    if (working === undefined || seen.has(number)) return;
    seen.add(number);
    for (const origin of Object.values(working.from)) follow(origin);
  };
  if (figure.working !== undefined) visit(figure.working);
  for (const how of solved) {
    const parts = how === 'balance' ? balancePlaces(floor, book) : pacePlaces(floor, book);
    for (const place of parts) places.add(place);
  }
  return [...places].sort();
};
