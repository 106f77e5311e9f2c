import { stationOf } from '../../floor/station-of.ts';
import type { Check } from '../check.ts';
import { makeCheck } from '../make-check.ts';
import { placeFigure } from '../place-figure.ts';
import type { ProofContext } from '../proof-context.ts';

/** Enough to see a head that differs; common practice. */
const closures = 10;

/** A watch stops all caps of a shift; these are enough to see the slow ones among them. Common practice. */
const timedCaps = 30;

/** The chute between its sensors, the time of a cap, the closure on the neck and the torque that opens it again. */
export const closingChecks = (c: ProofContext): readonly Check[] => {
  const closing = stationOf(c.book, 'closing');
  if (closing === undefined) return [];
  const { station, path } = closing;
  const { chute } = station;
  const sensors = [chute?.highSensor, chute?.lowSensor].filter((tag) => tag !== undefined);
  const perBottle = placeFigure(c.book, `${path}/perBottle`, 'time');
  const torquePath = `${c.formatPath}/removalTorque`;
  const torque = placeFigure(c.book, torquePath, 'torque');
  const ends = torque.low === undefined || torque.high === undefined ? [] : [torque.low, torque.high];
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
          ...(c.format.removalTorque === undefined
            ? []
            : [
                makeCheck('removalTorque', [c.format.tag], 'product', {
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
                  missing: ends.length === 0 ? [torquePath] : [],
                  places: [torquePath, `${c.formatPath}/applicationTorque`, `${c.formatPath}/closure`],
                  conditions: ['bottles', 'caps'],
                }),
              ]),
        ]),
  ];
};
