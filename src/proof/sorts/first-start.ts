import type { Check } from '../check.ts';
import { makeCheck } from '../make-check.ts';
import { placeFigure } from '../place-figure.ts';
import type { ProofContext } from '../proof-context.ts';

/** A dial of an overload relay or a gauge behind a regulator is set no nearer than this; common practice. */
const dialShare = 0.05;

const flushed: ReadonlySet<string | undefined> = new Set([
  'product',
  'water',
  'hot water',
  'air',
  'steam',
  'hot water return',
]);

/** The dial of each motor's overload relay against the book, before there is voltage; an inverter has none. */
const overloads = ({ book }: ProofContext): readonly Check[] =>
  (book.line?.drives ?? []).flatMap(({ tag, inverter, overload }, i) => {
    if (inverter === true && overload === undefined) return [];
    const path = `/line/drives/${i}`;
    const figure = placeFigure(book, `${path}/overload/set`, 'current');
    return [
      makeCheck('overload', [tag], 'placed', {
        point: 'witness',
        missFails: true,
        limits: [{ sense: 'within', figure, share: dialShare }],
        missing: figure.missing,
        places: ['overload', 'current'].map((field) => `${path}/${field}`),
      }),
    ];
  });

/** Each regulator of the line against the pressure that the book sets. */
const regulators = ({ book }: ProofContext): readonly Check[] =>
  (book.line?.airDrops ?? []).flatMap(({ tag, regulated }, i) => {
    if (regulated === undefined) return [];
    const place = `/line/airDrops/${i}/regulated`;
    const figure = placeFigure(book, place, 'gaugePressure');
    return [
      makeCheck('regulator', [tag], 'air', {
        instrument: 'gauge',
        limits: [{ sense: 'within', figure, share: dialShare }],
        missing: figure.missing,
        places: [place],
      }),
    ];
  });

/** The first water and air of a new tie-in go through an open end, not through the meters and valves of the line. */
const flushes = ({ book, here }: ProofContext): readonly Check[] =>
  here.role === 'built on'
    ? []
    : (book.line?.tieIns ?? []).flatMap(({ tag, kind }, i) =>
        flushed.has(kind)
          ? [
              makeCheck('flush', [tag], kind === 'air' ? 'air' : 'water', {
                point: 'hold',
                places: [`/line/tieIns/${i}/kind`, `/line/tieIns/${i}/connection`],
              }),
            ]
          : [],
      );

/** The counter of each lane: what it counts with the lane open, and with it shut. */
const counters = ({ book }: ProofContext): readonly Check[] =>
  (book.line?.stations ?? []).flatMap((station, s) =>
    station.kind === 'fill'
      ? (station.lanes ?? []).flatMap(({ tag, pulses, out }, l) =>
          pulses === undefined || out === true
            ? []
            : [
                makeCheck('counter', [tag], 'wet', {
                  places: [`/line/stations/${s}/lanes/${l}/pulses`],
                }),
              ],
        )
      : [],
  );

/** What stands between a line that was joined and its first start, beside bonds, insulation, voltage, rotation and signals. */
export const firstStartChecks = (c: ProofContext): readonly Check[] => [
  ...overloads(c),
  ...regulators(c),
  ...flushes(c),
  ...counters(c),
];
