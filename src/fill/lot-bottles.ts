import {
  referenceWeightDensity,
  usualAirDensity,
  volumeByWeighing,
} from '../sheets/contents/volume-by-weighing.ts';
import type { LotJudgement } from './judge-lot.ts';
import { type RunControl, runControl } from './lot-control.ts';
import type { WeighedLot } from './weighed-lot.ts';

export interface LotBottle {
  readonly volume: number;
  readonly lane?: string;
}

/** The last step of a judgement that has an output, with that. */
const outputIn = ({ steps }: LotJudgement, name: string) =>
  steps.findLast(({ outputs }) => outputs[name] !== undefined)?.outputs[name];

/** Density of the product that the judgement worked with, kg/m3. */
const densityIn = (judgement: LotJudgement): number | undefined => {
  const density = judgement.steps.findLast(({ inputs }) => typeof inputs.density === 'number')?.inputs
    .density;
  return typeof density === 'number' ? density : undefined;
};

/** Contents of each bottle at the rule's temperature, as the worksheet has them, m3; undefined where they are not known. */
export const lotBottles = (judgement: LotJudgement, lot: WeighedLot): readonly LotBottle[] | undefined => {
  const volumes = outputIn(judgement, 'volumes');
  const laneAt = (i: number) => {
    const lane = lot.packages[i]?.lane;
    return lane === undefined ? {} : { lane };
  };
  if (Array.isArray(volumes) && volumes.length === lot.packages.length) {
    return (volumes as readonly number[]).map((volume, i) => ({ volume, ...laneAt(i) }));
  }
  // Handbook 133 speaks of gross masses: the bottles are seen as volumes all the same
  const density = densityIn(judgement);
  const tares = lot.tares ?? lot.packages.flatMap(({ tare }) => tare ?? []);
  const usual = tares.reduce((sum, tare) => sum + tare, 0) / tares.length;
  if (density === undefined || tares.length === 0) return undefined;
  return lot.packages.map(({ gross }, i) => ({
    volume: volumeByWeighing(gross - usual, density, usualAirDensity, referenceWeightDensity),
    ...laneAt(i),
  }));
};

/** How far a bottle may fall short, m3: of the rule's table, or as it was typed in. */
export const deficiencyIn = (judgement: LotJudgement, lot: WeighedLot): number | undefined => {
  const deficiency = outputIn(judgement, 'deficiency');
  return typeof deficiency === 'number' ? deficiency : lot.variation;
};

/** The bottles of a lot as a run, in the order drawn: do the lanes differ, has one drifted, what can it do. */
export const lotControl = (judgement: LotJudgement, lot: WeighedLot): RunControl | undefined => {
  const bottles = lotBottles(judgement, lot);
  if (bottles === undefined) return undefined;
  const deficiency = deficiencyIn(judgement, lot);
  return runControl(
    bottles,
    lot.label === undefined || deficiency === undefined ? {} : { lowest: lot.label - deficiency },
  );
};
