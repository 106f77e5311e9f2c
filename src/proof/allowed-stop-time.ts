import type { Book, StopDevice } from '../book/index.ts';
import { runSheet } from '../sheets/frame.ts';
import { type DistanceForm, longestStopTimeSheet } from '../sheets/safety/longest-stop-time.ts';
import type { Limit } from './limit.ts';
import { placeFigure } from './place-figure.ts';

/** How a distance follows from a stop time, by what the device is; a locked guard opens after it, a button has none. */
const forms: Partial<Record<NonNullable<StopDevice['kind']>, DistanceForm>> = {
  'interlocked guard': 'walking',
  scanner: 'walking',
  'light curtain': 'hand',
  'two-hand': 'two-hand',
};

const formOf = ({ kind }: StopDevice): DistanceForm | undefined =>
  kind === undefined ? undefined : forms[kind];

/** Whether the distance of a device from the danger rests on its stop time. */
export const isTimed = (device: StopDevice): boolean => formOf(device) !== undefined;

/**
 * The longest stop time that the mounted distance of a device allows.
 *
 * Returns  a limit with its working; unknown where the book does not say the distance or how far one is in before the
 *          signal, and where no time is short enough for so short a distance
 */
export const allowedStopTime = (book: Book, device: StopDevice, path: string): Limit => {
  const mounted = placeFigure(book, `${path}/distance`, 'length');
  const intrusion = placeFigure(book, `${path}/reach`, 'length');
  const form = formOf(device);
  const common = { id: 'stopTime', kind: 'time', assumed: [] } as const;
  const missing = [...mounted.missing, ...intrusion.missing];
  if (form === undefined || mounted.value === undefined || intrusion.value === undefined) {
    return { sense: 'most', figure: { ...common, missing } };
  }
  const inputs = { form, mounted: mounted.value, intrusion: intrusion.value };
  const run = runSheet(longestStopTimeSheet, inputs);
  if (!run.ok) return { sense: 'most', figure: { ...common, missing: [`${path}/distance`] } };
  const { outputs, notes } = run.value;
  const { id: sheet, version } = longestStopTimeSheet;
  return {
    sense: 'most',
    figure: { ...common, value: outputs.time, missing: [] },
    working: {
      sheet,
      version,
      inputs,
      outputs: { ...outputs },
      notes,
      from: {
        form: { path: `${path}/kind` },
        mounted: { path: `${path}/distance` },
        intrusion: { path: `${path}/reach` },
      },
    },
    fields: longestStopTimeSheet.inputs,
  };
};
