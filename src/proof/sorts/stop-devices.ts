import type { StopDevice } from '../../book/index.ts';
import type { Check } from '../check.ts';
import { drivenConditions } from '../driven-conditions.ts';
import { checkId, makeCheck } from '../make-check.ts';
import { placeFigure } from '../place-figure.ts';
import type { ProofContext } from '../proof-context.ts';

/** Devices whose distance from the danger rests on the stop time; a locked guard opens after it, a button has none. */
const timed: readonly StopDevice['kind'][] = [
  'interlocked guard',
  'light curtain',
  'scanner',
  'two-hand',
  'enabling switch',
];

/** Stops at the worst speed, load and place: ten or more (ISO 13855, memory; reference practice). */
const stopReadings = 10;

const effectChecks = (c: ProofContext, { tag, effects = [] }: StopDevice, path: string): readonly Check[] =>
  effects.map(({ on, effect, category, within }, i) => {
    const at = `${path}/effects/${i}`;
    return makeCheck('effect', [tag, on], 'stops', {
      point: 'hold',
      missFails: true,
      places: [at],
      missing: effect === undefined ? [`${at}/effect`] : [],
      parts: { effect: effect ?? '', ...(category === undefined ? {} : { category }) },
      ...(within === undefined
        ? {}
        : {
            instrument: 'stopwatch',
            limits: [{ sense: 'most', figure: placeFigure(c.book, `${at}/within`, 'time') }],
          }),
    });
  });

const stopTime = (c: ProofContext, { tag }: StopDevice, path: string): Check => {
  const distance = `${path}/distance`;
  const figure = placeFigure(c.book, distance, 'length');
  return makeCheck('stopTime', [tag], 'stops', {
    point: 'witness',
    missFails: true,
    instrument: 'stopTimeMeter',
    readings: stopReadings,
    places: [distance, `${path}/kind`],
    missing: figure.missing,
    conditions: drivenConditions(c),
  });
};

/** Every cell of the matrix of stop devices and guards, what must not happen afterwards, and how long the stop takes. */
export const stopDeviceChecks = (c: ProofContext): readonly Check[] =>
  (c.book.line?.stopDevices ?? []).flatMap((device, i) => {
    const path = `/line/stopDevices/${i}`;
    const { tag, kind, reset, effects = [] } = device;
    const each = effectChecks(c, device, path);
    const after = each.map(({ id }) => id);
    const common = { point: 'hold', missFails: true, after } as const;
    return [
      ...each,
      ...(effects.length > 0
        ? []
        : [
            makeCheck('noEffects', [tag], 'stops', {
              point: 'hold',
              missFails: true,
              places: [`${path}/effects`],
              missing: [`${path}/effects`],
            }),
          ]),
      makeCheck('release', [tag], 'stops', {
        ...common,
        places: [`${path}/kind`],
        parts: { kind: kind ?? 'other' },
      }),
      makeCheck('reset', [tag], 'stops', {
        ...common,
        after: [checkId('release', [tag])],
        places: [`${path}/reset`],
        missing: reset === undefined ? [`${path}/reset`] : [],
        parts: { reset: reset ?? '' },
      }),
      ...(timed.includes(kind) ? [stopTime(c, device, path)] : []),
    ];
  });
