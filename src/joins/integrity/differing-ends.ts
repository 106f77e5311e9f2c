import type { Kind } from '../../quantity/index.ts';
import { readEntry } from '../../quantity/read-entry.ts';
import { sameColour } from '../colour/colour-names.ts';
import type { LaidJoin } from '../laid-join.ts';
import { faultOf, type JoinFault } from './fault.ts';

/** Kinds in which a size may be written, whichever it is of. */
const sizes: readonly Kind[] = ['conductorArea', 'length'];

/** `1.0 mm2` and `1 mm²` are one size; a text that is no quantity is compared as a text. */
const sameSize = (a: string, b: string): boolean => {
  if (a.trim().toLowerCase() === b.trim().toLowerCase()) return true;
  return sizes.some((kind) => {
    const [one, other] = [readEntry(a, kind, { path: '' }), readEntry(b, kind, { path: '' })];
    // as written, not as measured: a thousandth is far below the step between two sizes
    return one.ok && other.ok && Math.abs(one.value.value - other.value.value) <= 1e-3 * one.value.value;
  });
};

const differs = (
  a: string | undefined,
  b: string | undefined,
  same: (a: string, b: string) => boolean,
): boolean => a !== undefined && b !== undefined && a !== b && !same(a, b);

/** Joins whose size or colour is another at each end: two things that were taken for one. */
export const differingEnds = (joins: readonly LaidJoin[]): readonly JoinFault[] =>
  joins.flatMap((join) => {
    const { tag, from, to } = join;
    return [
      ...(differs(from.size, to.size, sameSize)
        ? [faultOf('JOIN_SIZE_DIFFERS', [join], { join: tag, from: from.size ?? '', to: to.size ?? '' })]
        : []),
      ...(differs(from.colour, to.colour, sameColour)
        ? [
            faultOf('JOIN_COLOUR_DIFFERS', [join], {
              join: tag,
              from: from.colour ?? '',
              to: to.colour ?? '',
            }),
          ]
        : []),
    ];
  });
