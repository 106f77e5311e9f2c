import { stationsBefore } from '../../book/flow-order.ts';
import type { Book } from '../../book/index.ts';
import type { Problem } from '../../quantity/problem.ts';
import { shiftProblem } from './problems.ts';

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
          shiftProblem('SHIFT_HOLDS_CIRCLE', `/line/holdRules/${rules.indexOf(first)}`, {
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
    if (followers > 1) return [shiftProblem('SHIFT_BRANCHES', path, { parts: { station: tag } })];
    return followers === 0 && i !== ends
      ? [shiftProblem('SHIFT_NO_WAY_OUT', path, { parts: { station: tag } })]
      : [];
  });
};

const rooms = (book: Book): readonly Problem[] =>
  (book.line?.stations ?? []).flatMap(({ tag, kind, room }, i) =>
    room === 0 && kind === 'closing'
      ? [shiftProblem('SHIFT_NO_ROOM', `/line/stations/${i}/room`, { parts: { station: tag } })]
      : [],
  );

const chutes = (book: Book): readonly Problem[] =>
  (book.line?.stations ?? []).flatMap((station, i) => {
    const { highSensor, lowSensor } = station.kind === 'closing' ? (station.chute ?? {}) : {};
    return highSensor !== undefined && highSensor === lowSensor
      ? [
          shiftProblem('SHIFT_CHUTE_ONE_SENSOR', `/line/stations/${i}/chute/lowSensor`, {
            given: highSensor,
          }),
        ]
      : [];
  });

/** What keeps a line from running for a shift, as far as the book alone tells it; everything at once. */
export const shiftProblemsOf = (book: Book): readonly Problem[] => [
  ...circles(book),
  ...ways(book),
  ...rooms(book),
  ...chutes(book),
];
