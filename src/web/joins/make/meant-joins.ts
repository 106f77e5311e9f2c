import { findCode, type LaidJoin } from '../../../joins/index.ts';

/**
 * The joins that an address can mean: the one that has the tag, else all whose label bears the code.
 *
 * Returns  more than one where two bear the same code, so that no record lands on the wrong one unseen
 */
export const meantJoins = (
  asked: string | undefined,
  joins: readonly LaidJoin[],
  byTag: ReadonlyMap<string, LaidJoin>,
): readonly LaidJoin[] => {
  if (asked === undefined) return [];
  const tagged = byTag.get(asked);
  if (tagged !== undefined) return [tagged];
  const found = findCode(asked, joins);
  const meant = found.is === 'found' ? [found] : found.is === 'shared' ? found.nearest : [];
  return meant.flatMap(({ join }) => byTag.get(join) ?? []);
};
