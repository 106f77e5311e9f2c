import { type Book, valueAt } from '../../book/index.ts';
import type { Figure } from '../../floor/assessment.ts';
import { readEntry } from '../../quantity/read-entry.ts';
import { pulsesOfVolumeSheet } from '../../sheets/contents/pulses-of-volume.ts';
import type { Check } from '../check.ts';
import { makeCheck } from '../make-check.ts';
import { placeFigure } from '../place-figure.ts';
import type { ProofContext } from '../proof-context.ts';
import { sheetLimit } from '../sheet-limit.ts';

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

/** The class of a meter as a share, where its maker's words are one: `0.5 %`, `± 0.5 %`. */
const classShare = (book: Book, path: string): Figure | undefined => {
  const said = valueAt(book, path);
  if (typeof said !== 'string') return undefined;
  const read = readEntry(said.replace(/^\s*(?:±|\+\/-)\s*/, ''), 'ratio', { path });
  return read.ok
    ? { id: path, kind: 'ratio', path, value: read.value.value, assumed: [], missing: [] }
    : undefined;
};

/** Each meter whose maker says how far it may err: its count against a volume that was weighed or measured. */
const knownVolumes = ({ book }: ProofContext): readonly Check[] =>
  (book.line?.stations ?? []).flatMap((station, s) =>
    (station.kind === 'fill' ? (station.lanes ?? []) : []).flatMap(({ tag, pulses, out }, l) => {
      const lane = `/line/stations/${s}/lanes/${l}`;
      const meterClass = classShare(book, `${lane}/meter/class`);
      if (pulses === undefined || out === true || meterClass === undefined) return [];
      const level = '/line/formats/0/level';
      const given = {
        pulses: placeFigure(book, `${lane}/pulses`, 'pulseDensity'),
        volume: placeFigure(book, level, 'volume'),
        meterClass,
      };
      const bound = (sense: 'least' | 'most', output: 'lowest' | 'highest') =>
        sheetLimit(pulsesOfVolumeSheet, given, output, { sense, id: `${lane}/pulses`, kind: 'pulseDensity' });
      const limits = [bound('least', 'lowest'), bound('most', 'highest')];
      return [
        makeCheck('pulses', [tag], 'wet', {
          instrument: 'scale',
          readings: 3,
          limits,
          missing: [...new Set(limits.flatMap(({ figure }) => figure.missing))],
          places: [`${lane}/pulses`, `${lane}/meter/class`, level],
          after: [`counter ${tag}`],
        }),
      ];
    }),
  );

/** What stands between a line that was joined and its first start, beside bonds, insulation, voltage, rotation and signals. */
export const firstStartChecks = (c: ProofContext): readonly Check[] => [
  ...overloads(c),
  ...regulators(c),
  ...flushes(c),
  ...counters(c),
  ...knownVolumes(c),
];
