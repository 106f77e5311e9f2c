import { backflowLossSheet } from '../../../sheets/water/backflow-loss.ts';
import type { Calculation } from '../calculation.ts';
import type { Known } from '../known.ts';
import { waterRunLoss } from './run-pieces.ts';
import { pressureBehind } from './source-pressure.ts';
import { type TieInAt, waterDraw } from './water-draw.ts';

/** Whether a text says that there is none. */
export const saysNone = (text: string): boolean => /^\s*(no|none|not fitted|nothing)\b/i.test(text);

/** Behind the backflow device: by its stated loss, else by what such devices are remembered to take. */
const behindBackflow = (c: Calculation, pressure: Known | undefined): Known | undefined => {
  const { water } = c.book.floors![c.floor]!;
  const path = `${c.floorPath}/water`;
  const inRun = (water?.run ?? []).some(({ kind }) => kind === 'constant');
  if (water?.backflow === undefined || saysNone(water.backflow) || inRun) return pressure;
  const loss = c.number(`${path}/backflowLoss`, 'pressureDifference');
  if (loss === undefined) c.assume(`${path}/backflowLoss`);
  return c.run(backflowLossSheet, {
    pressure,
    ...(loss === undefined ? {} : { lowLoss: loss, highLoss: loss }),
  })?.least;
};

/** Pressure at a tie-in while the line draws its fresh water: as the site says it, else from the source along the run. */
export const tieInPressure = (c: Calculation, at: TieInAt): Known | undefined =>
  c.once(`tieInPressure ${at.path}`, (c) => {
    const { water } = c.book.floors![c.floor]!;
    const path = `${c.floorPath}/water`;
    if (at.tieIn.kind === 'hot water') return c.needed(`${path}/hot/pressure`, 'gaugePressure');
    const said = c.number(`${path}/pressure`, 'gaugePressure');
    if (said !== undefined || water?.source === undefined) {
      return said ?? c.needed(`${path}/pressure`, 'gaugePressure');
    }
    const flow = waterDraw(c, at);
    const run = water.run ?? [];
    if (run.length === 0) c.assume(`${path}/run`);
    const loss = run.length === 0 ? undefined : waterRunLoss(c, run, `${path}/run`, flow);
    // a run whose loss is not known leaves the pressure unknown
    if (run.length > 0 && loss === undefined) return undefined;
    return behindBackflow(c, pressureBehind(c, at.path, { flow, loss }));
  });
