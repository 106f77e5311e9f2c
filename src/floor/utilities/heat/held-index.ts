import type { Figure, Origin } from '../../finding.ts';
import { lineFigures } from '../../line-figures.ts';
import { stationOf } from '../../station-of.ts';
import type { Calculation } from '../calculation.ts';
import type { Known } from '../known.ts';

/** Whether a rule of the line lets something hold the washer. */
export const mayBeHeld = (c: Calculation): boolean => {
  const washer = stationOf(c.book, 'washer')?.station.tag;
  return (c.book.line?.holdRules ?? []).some(({ holds }) => holds === washer);
};

const originOf = ({ working, output }: Figure, path: string): Origin =>
  working === undefined || output === undefined ? { path } : { working, output };

/**
 * Index of the washer where the line holds it: the cycle of the line on this floor.
 *
 * Returns  undefined where nothing may hold it, or where the cycle is not known, which is then missed
 */
export const heldIndex = (c: Calculation): Known | undefined =>
  c.once('heldIndex', (c) => {
    if (!mayBeHeld(c)) return undefined;
    const { cycle } = lineFigures(c.reader, { floor: c.floor, formatPath: c.formatPath });
    if (cycle?.value === undefined) {
      for (const path of cycle?.missing ?? []) c.miss(path);
      return undefined;
    }
    const path = `${c.floorPath}/supply`;
    return c.given(path, {
      value: cycle.value,
      from: originOf(cycle, path),
      ...(cycle.low === undefined || cycle.high === undefined ? {} : { low: cycle.low, high: cycle.high }),
    });
  });
