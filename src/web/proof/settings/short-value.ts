import { handwritten } from '../../../quantity/index.ts';

/** Digits of a digest that are shown in a table: enough to tell two apart by eye. */
const shownDigits = 8;

/** A value as it stands in a table: of a digest its first digits. */
export const shortValue = (text: string): string =>
  /^[0-9a-f]{64}$/.test(text) ? `${text.slice(0, shownDigits)}…` : handwritten(text);
