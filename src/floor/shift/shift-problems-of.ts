import { stationsBefore } from '../../book/flow-order.ts';
import type { Book } from '../../book/index.ts';
import { checkShift, type ShiftLine } from '../../line/shift/index.ts';
import type { Problem } from '../../quantity/problem.ts';
import { holdRulesOf } from '../hold-rules-of.ts';
import { floorShiftProblem } from './problems.ts';

/** Hold rules by which stations wait for each other in a circle. */
const circles = (book: Book): readonly Problem[] => {
  const rules = book.line?.holdRules ?? [];
  for (const first of rules) {
    const chain = [first];
    for (;;) {
      const last = chain.at(-1)!;
      const next = rules.find((rule) => rule.holds === last.while);
      if (next === undefined || (next !== first && chain.includes(next))) break;
      if (next === first) {
        return [
          floorShiftProblem('SHIFT_HOLDS_CIRCLE', `/line/holdRules/${rules.indexOf(first)}`, {
            parts: {
              rules: chain.map(({ tag }) => tag).join(', '),
              stations: [...chain.map((rule) => rule.holds), first.holds].join(' → '),
            },
          }),
        ];
      }
      chain.push(next);
    }
  }
  return [];
};

/** Stations that nothing follows, but the last, and those that several follow. */
const ways = (book: Book): readonly Problem[] => {
  const stations = book.line?.stations ?? [];
  const after = new Map<string, number>();
  stations.forEach((_, i) => {
    for (const tag of stationsBefore(stations, i)) after.set(tag, (after.get(tag) ?? 0) + 1);
  });
  const last = stations.findLastIndex(({ kind }) => kind === 'take-off');
  const ends = last < 0 ? stations.length - 1 : last;
  return stations.flatMap(({ tag }, i) => {
    const followers = after.get(tag) ?? 0;
    const path = `/line/stations/${i}`;
    if (followers > 1) return [floorShiftProblem('SHIFT_BRANCHES', path, { parts: { station: tag } })];
    return followers === 0 && i !== ends
      ? [floorShiftProblem('SHIFT_ENDS_EARLY', path, { parts: { station: tag } })]
      : [];
  });
};

/** A place before the heads that holds no bottle; every other room of the book is one at least. */
const rooms = (book: Book): readonly Problem[] =>
  (book.line?.stations ?? []).flatMap(({ tag, kind, room }, i): Problem[] => {
    const path = `/line/stations/${i}/room`;
    return room === 0 && kind === 'closing'
      ? [{ code: 'SHIFT_ROOM_ZERO', path, given: 0, parts: { station: tag } }]
      : [];
  });

const chutes = (book: Book): readonly Problem[] =>
  (book.line?.stations ?? []).flatMap((station, i) => {
    const { highSensor, lowSensor } = station.kind === 'closing' ? (station.chute ?? {}) : {};
    return highSensor !== undefined && highSensor === lowSensor
      ? [
          floorShiftProblem('SHIFT_ONE_SENSOR', `/line/stations/${i}/chute/lowSensor`, {
            given: highSensor,
          }),
        ]
      : [];
  });

/** What the line calls otherwise than the book. */
const bookNames: Readonly<Record<string, string>> = {
  low: 'capsBelowLow',
  high: 'capsBelowHigh',
  start: 'capsBelowHigh',
};

/** The field of the book from which a field of the line comes. */
const fieldOf = (kind: string, field: string, parent: string | undefined): string => {
  if (parent === 'chute') return field === 'rate' ? 'sorterRate' : (bookNames[field] ?? field);
  if ((kind === 'load' && field === 'seconds') || (kind === 'take-off' && field === 'perBottle'))
    return 'rate';
  return (kind === 'load' || kind === 'take-off') && field === 'room' ? 'capacity' : field;
};

/** Where in the book a place of the line stands: `/closing/chute/high` is at its closing station. */
const bookPlace = (book: Book, path: string): string => {
  const [, first = '', ...line] = path.split('/');
  const kind = first === 'takeOff' ? 'take-off' : first;
  const station = (book.line?.stations ?? []).findIndex((each) => each.kind === kind);
  const rest = line.map((field, i) => fieldOf(kind, field, line[i - 1]));
  return station < 0 ? '/line' : ['/line/stations', station, ...rest].join('/');
};

/** What is wrong with a line that was bound, at the places of the book that it came from. */
export const lineProblemsOf = (book: Book, line: ShiftLine): readonly Problem[] =>
  checkShift(line).map((problem) => ({ ...problem, path: bookPlace(book, problem.path) }));

/** A station that waits while what it feeds is empty, as a line is at its start. */
const emptied = (book: Book): readonly Problem[] =>
  holdRulesOf(book).never.map((parts) =>
    floorShiftProblem(
      'SHIFT_HOLD_EMPTY',
      `/line/interlocks/${(book.line?.interlocks ?? []).findIndex(({ tag }) => tag === parts.rule)}`,
      { parts },
    ),
  );

/** What keeps a line from running for a shift, as far as the book alone tells it; everything at once. */
export const shiftProblemsOf = (book: Book): readonly Problem[] => [
  ...circles(book),
  ...emptied(book),
  ...ways(book),
  ...rooms(book),
  ...chutes(book),
];
