import { placeText } from '../book/place-text.ts';
import type { FloorProof, Lack, PunchPoint } from '../proof/index.ts';
import type { Telling } from './telling.ts';

/** What a gate still wants, by the name that people know it by. */
export const lackName = (
  { sort, id, path }: Lack,
  { checks }: FloorProof,
  punch: readonly PunchPoint[],
  telling: Telling,
): string => {
  if (sort === 'check') {
    const found = checks.find(({ check }) => check.id === id);
    return found === undefined ? id : telling.checks.name(found.check);
  }
  if (sort === 'punch') return `${id}: ${punch.find(({ point }) => point === id)?.text ?? ''}`;
  return path === undefined ? id : placeText(telling.book, path);
};
