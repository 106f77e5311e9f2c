import type { StopDevice } from '../../book/index.ts';
import { stopReadings } from '../../sheets/safety/stop-time-used.ts';
import { allowedStopTime, isTimed } from '../allowed-stop-time.ts';
import type { Check } from '../check.ts';
import { drivenConditions } from '../driven-conditions.ts';
import { checkId, makeCheck } from '../make-check.ts';
import { placeFigure } from '../place-figure.ts';
import type { ProofContext } from '../proof-context.ts';

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

const stopTime = (c: ProofContext, device: StopDevice, path: string): Check => {
  const limit = allowedStopTime(c.book, device, path);
  return makeCheck('stopTime', [device.tag], 'stops', {
    point: 'witness',
    missFails: true,
    instrument: 'stopTimeMeter',
    readings: stopReadings,
    judged: 'stop time',
    limits: [limit],
    places: ['kind', 'distance', 'reach'].map((field) => `${path}/${field}`),
    missing: limit.figure.missing,
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
      ...(isTimed(device) ? [stopTime(c, device, path)] : []),
    ];
  });
