import { voltageUnbalanceSheet } from '../../../sheets/power/voltage-unbalance.ts';
import type { Calculation } from '../calculation.ts';
import type { Known } from '../known.ts';

/** Place of the last reading of the three voltages. */
export const betweenLines = (c: Calculation): string | undefined => {
  const readings = c.book.floors![c.floor]!.power?.readings ?? [];
  const last = readings.findLastIndex((reading) => reading.between !== undefined);
  return last < 0 ? undefined : `${c.floorPath}/power/readings/${last}/between`;
};

/** Unbalance of the three voltages that were read last, and what it does to the currents. */
export const voltageUnbalance = (c: Calculation) =>
  c.once('voltageUnbalance', (c) => {
    const path = betweenLines(c);
    if (path === undefined) c.miss(`${c.floorPath}/power/readings`);
    if (path === undefined) return undefined;
    const at = (i: number): Known | undefined => c.needed(`${path}/${i}`, 'voltage');
    return c.run(voltageUnbalanceSheet, { first: at(0), second: at(1), third: at(2) });
  });
