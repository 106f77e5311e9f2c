import type { Figure, Origin } from '../../finding.ts';
import { judgeFloor } from '../../judge-floor.ts';
import { keptLine, type LineFigures } from '../../line-figures.ts';
import { stationOf } from '../../station-of.ts';
import type { Calculation } from '../calculation.ts';
import type { Known } from '../known.ts';

/** Whether a rule of the line lets something hold the washer. */
export const mayBeHeld = (c: Calculation): boolean => {
  const washer = stationOf(c.book, 'washer')?.station.tag;
  return (c.book.line?.holdRules ?? []).some(({ holds }) => holds === washer);
};

/** What the line does on this floor, as its own question found it, or finds it now. */
const lineHere = (c: Calculation): LineFigures => {
  const where = { floor: c.floor, formatPath: c.formatPath };
  const kept = keptLine(c.reader, where);
  if (kept !== undefined) return kept;
  const format = c.book.line?.formats?.[Number(c.formatPath.split('/').at(-1))]?.tag;
  return judgeFloor(c.reader, c.floor, format).figures;
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
    const { cycle } = lineHere(c);
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
