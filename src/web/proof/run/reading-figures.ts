import type { Working } from '../../../floor/assessment.ts';
import { type Kind, readEntry } from '../../../quantity/index.ts';
import { lengthSpreadSheet } from '../../../sheets/contents/length-spread.ts';
import { massSpreadSheet } from '../../../sheets/contents/mass-spread.ts';
import { timeSpreadSheet } from '../../../sheets/contents/time-spread.ts';
import { volumeSpreadSheet } from '../../../sheets/contents/volume-spread.ts';
import { runSheet, type Sheet } from '../../../sheets/frame.ts';

/** What the readings that are there say together. */
export interface ReadingFigures {
  readonly values: readonly number[];
  /** Mean with its 95 % interval and the spread, by a sheet; absent below two readings, and of a kind without a sheet. */
  readonly spread?: {
    readonly mean: number;
    readonly meanLow: number;
    readonly meanHigh: number;
    readonly spread: number;
    readonly working: Pick<Working, 'sheet' | 'inputs'>;
    /** The fields of that sheet. */
    readonly fields: Sheet['inputs'];
  };
}

const sheets: Partial<Record<Kind, typeof timeSpreadSheet>> = {
  time: timeSpreadSheet,
  mass: massSpreadSheet,
  volume: volumeSpreadSheet,
  length: lengthSpreadSheet,
};

/** Of both ends of the mean, and of the share that the sheet's own reach holds; common practice. */
const confidence = 0.95;
const coverage = 0.99;

/** Readings of a kind as numbers and what they say together; one that does not read is left out. */
export const readingFigures = (readings: readonly string[], kind: Kind): ReadingFigures => {
  const values = readings.flatMap((text, i) => {
    const read = readEntry(text, kind, { path: `/readings/${i}` });
    return read.ok ? [read.value.value] : [];
  });
  const sheet = sheets[kind];
  if (sheet === undefined || values.length < 2) return { values };
  const inputs = { values, confidence, coverage };
  const run = runSheet(sheet, inputs);
  if (!run.ok) return { values };
  const { mean, meanLow, meanHigh, spread } = run.value.outputs;
  const working = { sheet: sheet.id, inputs };
  return { values, spread: { mean, meanLow, meanHigh, spread, working, fields: sheet.inputs } };
};
