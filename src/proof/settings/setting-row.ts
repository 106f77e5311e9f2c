import type { SettingForm } from '../../book/index.ts';
import type { Working } from '../../floor/assessment.ts';

/** Sorts of settings that the book knows by itself, and those that it adds. */
export const settingSorts = [
  'preset',
  'changeOver',
  'dwell',
  'drip',
  'dump',
  'delay',
  'temperature',
  'heater',
  'concentration',
  'frequency',
  'parameters',
  'overload',
  'regulator',
  'supplyRegulator',
  'cutIn',
  'cutOut',
  'airRegulator',
  'throttleOut',
  'throttleBack',
  'sensor',
  'guide',
  'changePart',
  'program',
  'backup',
  'own',
] as const;

export type SettingSort = (typeof settingSorts)[number];

/** An end of the allowed range. */
export interface SettingBound {
  /** SI. */
  readonly value: number;
  /** As the book writes it, where it does. */
  readonly text?: string;
  /** Place of the book that says so. */
  readonly path?: string;
  /** The sheet with the numbers that made it. */
  readonly working?: Working;
}

export interface SettingRange {
  readonly least?: SettingBound;
  readonly most?: SettingBound;
}

/** One thing that can be turned, typed or moved. */
export interface SettingRow {
  /** Stable: the tag that the book gives it, or its sort and the tags that it is on. */
  readonly id: string;
  readonly sort: SettingSort;
  /** Tag of the thing that it belongs to; absent: the line as a whole. */
  readonly on?: string;
  /** Station at which it is found. */
  readonly station?: string;
  readonly format?: string;
  /** Floor on which alone it is, as the regulator of a site. */
  readonly floor?: string;
  /** Name that the book gives it. */
  readonly name?: string;
  readonly form: SettingForm;
  /** What the book allows, whatever the floor. */
  readonly range: SettingRange;
  /** Places of the book at which its value stands; none where the book has no place for it. */
  readonly paths: readonly string[];
  /** What it is to be, as the book writes it. */
  readonly designed?: string;
}
