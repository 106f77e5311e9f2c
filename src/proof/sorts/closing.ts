import type { Format } from '../../book/index.ts';
import { stationOf } from '../../floor/station-of.ts';
import type { Check } from '../check.ts';
import { makeCheck } from '../make-check.ts';
import { placeFigure } from '../place-figure.ts';
import type { ProofContext } from '../proof-context.ts';

/** Enough to see a head that differs; common practice. */
const closures = 10;

/** A watch stops all caps of a shift; these are enough to see the slow ones among them. Common practice. */
const timedCaps = 30;

/** A torque that the book names, read on some closures: it must lie in the range that is said. */
const torqueChecks = (
  c: ProofContext,
  format: Format,
  sort: 'applicationTorque' | 'removalTorque',
): readonly Check[] => {
  if (format[sort] === undefined) return [];
  const path = `${c.formatPath}/${sort}`;
  const torque = placeFigure(c.book, path, 'torque');
  const ends = torque.low === undefined || torque.high === undefined ? [] : [torque.low, torque.high];
  return [
    makeCheck(sort, [format.tag], 'product', {
      instrument: 'torqueMeter',
      readings: closures,
      travels: true,
      limits:
        ends.length === 0
          ? []
          : [
              { sense: 'least', figure: { ...torque, value: ends[0]! } },
              { sense: 'most', figure: { ...torque, value: ends[1]! } },
            ],
      // one number is no limit: how far from it a closure may be, the book must say
      missing: ends.length === 0 ? [path] : [],
      places: [...new Set([path, `${c.formatPath}/applicationTorque`, `${c.formatPath}/closure`])],
      conditions: ['bottles', 'caps'],
    }),
  ];
};

/** The chute between its sensors, the time of a cap, the closure on the neck and the torques that close and open it. */
export const closingChecks = (c: ProofContext): readonly Check[] => {
  const closing = stationOf(c.book, 'closing');
  if (closing === undefined) return [];
  const { station, path } = closing;
  const { chute } = station;
  const sensors = [chute?.highSensor, chute?.lowSensor].filter((tag) => tag !== undefined);
  const perBottle = placeFigure(c.book, `${path}/perBottle`, 'time');
  return [
    ...(chute === undefined
      ? []
      : [
          makeCheck('capChute', [station.tag, ...sensors], 'dry', {
            id: `capChute ${station.tag}`,
            point: 'witness',
            places: [`${path}/chute`],
            missing:
              sensors.length < 2
                ? [`${path}/chute/${chute.highSensor === undefined ? 'high' : 'low'}Sensor`]
                : [],
            parts: { high: chute.highSensor ?? '', low: chute.lowSensor ?? '' },
            conditions: ['caps'],
          }),
        ]),
    makeCheck('perBottle', [station.tag], 'dry', {
      instrument: 'stopwatch',
      readings: timedCaps,
      judged: 'mean',
      limits: [{ sense: 'most', figure: perBottle }],
      missing: perBottle.missing,
      places: [`${path}/perBottle`, `${path}/heads`],
      conditions: ['bottles', 'caps', 'frequency'],
    }),
    ...(c.format === undefined
      ? []
      : [
          makeCheck('closing', [station.tag, c.format.tag], 'product', {
            point: 'witness',
            readings: closures,
            travels: true,
            places: ['closure', 'neck', 'applicationTorque', 'changeParts'].map(
              (field) => `${c.formatPath}/${field}`,
            ),
            parts: { closure: c.format.closure ?? '' },
            missing: c.format.closure === undefined ? [`${c.formatPath}/closure`] : [],
            conditions: ['bottles', 'caps'],
          }),
          makeCheck('leak', [station.tag, c.format.tag], 'product', {
            readings: closures,
            travels: true,
            places: ['closure', 'neck', 'applicationTorque'].map((field) => `${c.formatPath}/${field}`),
            conditions: ['bottles', 'caps', 'product'],
          }),
          ...torqueChecks(c, c.format, 'applicationTorque'),
          ...torqueChecks(c, c.format, 'removalTorque'),
        ]),
  ];
};
