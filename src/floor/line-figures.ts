import type { BookReader } from './book-reader.ts';
import type { Judgement } from './judge-floor.ts';
import type { Where } from './utilities/inquiry.ts';

export type LineFigures = Judgement['figures'];

const keyOf = ({ floor, formatPath }: Where): string => `line figures ${floor} ${formatPath}`;

/** Figures of the line on a floor, kept for the questions of its utilities that rest on them. */
export const keepLine = (reader: BookReader, where: Where, figures: LineFigures): void =>
  void reader.found.set(keyOf(where), figures);

export const keptLine = (reader: BookReader, where: Where): LineFigures | undefined =>
  reader.found.get(keyOf(where)) as LineFigures | undefined;
