import type { Zone } from '../../book/index.ts';
import type { Check, CheckSort, InstrumentSort } from '../check.ts';
import type { ConditionId } from '../condition.ts';
import { drivenConditions } from '../driven-conditions.ts';
import { makeCheck } from '../make-check.ts';
import { placeFigure } from '../place-figure.ts';
import type { ProofContext } from '../proof-context.ts';

interface Asked {
  readonly sort: CheckSort & `wash${string}`;
  readonly instrument: InstrumentSort;
  readonly readings: number;
  /** Of the zone, what the reading rests on beside the rule. */
  readonly fields: readonly (keyof Zone & string)[];
  /** Whether a cold bath makes the reading worth nothing. */
  readonly warm: boolean;
}

/** Warm, half-way and at the end of a run: a bath that only starts warm is seen. Common practice. */
const overTheRun = 3;

/** Bottles that are left to drip and weighed; a scale tells of one little. Common practice. */
const drainedBottles = 10;

/** What is asked of a zone, named as the finding that asks it. */
const askedOfZone: readonly Asked[] = [
  {
    sort: 'washTemperature',
    instrument: 'thermometer',
    readings: overTheRun,
    fields: ['temperature'],
    warm: false,
  },
  {
    sort: 'washConcentration',
    instrument: 'titration',
    readings: overTheRun,
    fields: ['concentration', 'alkali', 'medium'],
    warm: false,
  },
  { sort: 'washPressure', instrument: 'gauge', readings: 1, fields: ['pressure'], warm: true },
  {
    sort: 'washContact',
    instrument: 'stopwatch',
    readings: overTheRun,
    fields: ['rows', 'sprayFraction', 'dead', 'timeOut', 'emptying', 'soaks'],
    warm: false,
  },
];

const washed = (medium: Zone['medium']): boolean => medium === 'detergent' || medium === 'sanitiser';

/** Zones that are held at a temperature: what they are tried with counts only when warm. */
export const warmZones = ({ book }: ProofContext): readonly ConditionId[] =>
  (book.line?.stations ?? []).flatMap((station) =>
    station.kind === 'washer'
      ? (station.zones ?? []).flatMap(({ tag, medium, temperature }): ConditionId[] =>
          washed(medium) && temperature !== undefined ? [`bathTemperature ${tag}`] : [],
        )
      : [],
  );

/** What each wash zone must reach by its rule, and what the rinses leave, which a laboratory tells later. */
export const washingChecks = (c: ProofContext): readonly Check[] =>
  (c.book.line?.stations ?? []).flatMap((station, s) => {
    if (station.kind !== 'washer') return [];
    const path = `/line/stations/${s}`;
    const zones = station.zones ?? [];
    const rinse = zones.findLast(({ medium }) => medium === 'water' || medium === 'recovered water');
    return [
      ...zones.flatMap(({ tag }, z) =>
        askedOfZone.flatMap(({ sort, instrument, readings, fields, warm }) => {
          const finding = c.finding(`${sort} ${tag}`);
          if (finding === undefined) return [];
          const asked = c.asked(finding);
          return [
            makeCheck(sort, [tag], 'wet', {
              ...asked,
              point: 'witness',
              instrument,
              readings,
              places: [
                ...asked.places,
                ...fields.map((field) => `${path}/zones/${z}/${field}`),
                ...(sort === 'washContact' ? [`${path}/stroke`, `${path}/dwell`, `${path}/dwellBy`] : []),
              ],
              conditions: [
                ...(warm ? ([`bathTemperature ${tag}`] as const) : []),
                ...(sort === 'washContact' ? (['lineAtIndex', ...drivenConditions(c)] as const) : []),
              ],
            }),
          ];
        }),
      ),
      ...(station.carryOver === undefined
        ? []
        : [
            makeCheck('carryOver', [station.tag], 'wet', {
              instrument: 'scale',
              readings: drainedBottles,
              judged: 'mean',
              limits: [{ sense: 'most', figure: placeFigure(c.book, `${path}/carryOver`, 'volume') }],
              places: [`${path}/carryOver`, `${path}/dwell`],
              conditions: ['lineAtIndex', 'bottles'],
            }),
          ]),
      ...(rinse === undefined || !zones.some(({ medium }) => washed(medium))
        ? []
        : [
            makeCheck('rinseResidue', [rinse.tag], 'wet', {
              point: 'witness',
              late: { who: 'laboratory', before: 'handover' },
              places: [`${path}/zones`, `${path}/carryOver`, '/agreement/hygiene'],
              // what may be left is for the rule to say: no figure of it is held
              ...(c.book.agreement?.hygiene?.residue === undefined
                ? { missing: ['/agreement/hygiene/residue'] }
                : {
                    instrument: 'titration' as const,
                    limits: [
                      {
                        sense: 'most' as const,
                        figure: placeFigure(c.book, '/agreement/hygiene/residue', 'soluteConcentration'),
                      },
                    ],
                  }),
              conditions: ['lineAtIndex', 'bottles', ...warmZones(c)],
            }),
          ]),
    ];
  });
