import { handwritten } from '../quantity/handwritten.ts';
import type { JoinEnd } from './laid-join.ts';

/** One end in a line: what stands on it and where it is, without saying the same twice; empty where there is none. */
export const endText = (
  { label, on, section, box }: JoinEnd,
  say: (key: string, parts?: Readonly<Record<string, string>>) => string,
): string => {
  const name = label ?? on;
  const where = box ?? section;
  if (name === undefined) return where ?? '';
  return where === undefined || name.startsWith(where) ? name : say('joins.end', { label: name, where });
};

/** Size and colour of an end as one writes them by hand; empty where neither is said. */
export const endMark = ({ size, colour }: JoinEnd): string =>
  handwritten([size, colour].filter(Boolean).join(' '));
