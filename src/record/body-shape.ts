import type { Problem } from '../quantity/problem.ts';
import { readEntry } from '../quantity/read-entry.ts';
import { isCount, isHash, isToken } from './envelope.ts';
import { recordProblem } from './problems.ts';
import { isTimestamp } from './timestamp.ts';

/** Says everything that is wrong with a value at a path; nothing wrong, an empty list. */
export type Shape = (value: unknown, path: string) => readonly Problem[];

const fits =
  (allowed: string, test: (value: unknown) => boolean): Shape =>
  (value, path) =>
    test(value) ? [] : [recordProblem('RECORD_BODY', path, { given: value, allowed })];

/** A text with something in it; quantities stay as they were typed, with their unit. */
export const text = fits('a text that is not empty', (v) => typeof v === 'string' && v.trim() !== '');
export const count = fits('whole number from 0', isCount);
export const flag = fits('true or false', (v) => typeof v === 'boolean');
export const digest = fits('SHA-256, 64 hexadecimal digits', isHash);
/** A key or a signature. */
export const digits = (many: number): Shape =>
  fits(
    `${many} lower-case hexadecimal digits`,
    (v) => typeof v === 'string' && v.length === many && /^[0-9a-f]+$/.test(v),
  );
/** A part of a whole, as a number. */
export const share = fits('a number from 0 to 1', (v) => typeof v === 'number' && v >= 0 && v <= 1);
/** A share as a person types it, with its spread where there is one. */
export const shareText = fits(
  'a share, such as 3 % ± 1 %',
  (v) => typeof v === 'string' && readEntry(v, 'ratio', { path: '' }).ok,
);
/** A plan of a sample as a person types it out of a standard. */
export const planText = fits(
  'packages; factor; short, such as 12; 0.826; 1',
  (v) => typeof v === 'string' && /^\s*\d{1,6}\s*;\s*\d{1,2}(\.\d{1,6})?\s*;\s*\d{1,6}\s*$/.test(v),
);
export const token = fits('an id: letters, digits and . _ : -', isToken);
/** A place of a book, or of a thing of it; the empty one is the whole. */
export const pointer = fits(
  'a JSON Pointer, such as /supply/source',
  (v) => typeof v === 'string' && v.length <= 300 && /^(\/[^/]+)*$/.test(v),
);
/** A place inside a thing of the book, by the names of the fields on the way to it. */
export const placeWithin = fits(
  'a place within the floor, such as air/compressor/cutIn',
  (v) => typeof v === 'string' && v.length <= 300 && /^[A-Za-z0-9]+(\/[A-Za-z0-9]+)*$/.test(v),
);
export const moment = fits('date and time with offset, such as 2026-11-24T09:30:00Z', isTimestamp);

export const oneOf = (...options: readonly string[]): Shape =>
  fits(options.join(', '), (v) => typeof v === 'string' && options.includes(v));

export const listOf =
  (shape: Shape, fewest = 0): Shape =>
  (value, path) => {
    if (!Array.isArray(value) || value.length < fewest) {
      return [recordProblem('RECORD_BODY', path, { given: value, allowed: `a list of ${fewest} or more` })];
    }
    return value.flatMap((item, i) => shape(item, `${path}/${i}`));
  };

/** An object with these members and no others: a mistyped name is found, not carried along. */
export const members =
  (needed: Readonly<Record<string, Shape>>, optional: Readonly<Record<string, Shape>> = {}): Shape =>
  (value, path) => {
    if (typeof value !== 'object' || value === null || Array.isArray(value)) {
      return [recordProblem('RECORD_BODY', path, { given: value, allowed: 'an object' })];
    }
    const given = value as Readonly<Record<string, unknown>>;
    const known = { ...needed, ...optional };
    return [
      ...Object.entries(needed).flatMap(([name, shape]) =>
        shape(Object.hasOwn(given, name) ? given[name] : undefined, `${path}/${name}`),
      ),
      ...Object.entries(optional).flatMap(([name, shape]) =>
        Object.hasOwn(given, name) ? shape(given[name], `${path}/${name}`) : [],
      ),
      ...Object.keys(given)
        .filter((name) => !Object.hasOwn(known, name))
        .map((name) =>
          recordProblem('RECORD_BODY', `${path}/${name}`, { given: name, allowed: Object.keys(known) }),
        ),
    ];
  };

/** Tags of things of the book. */
export const tags = listOf(text);
