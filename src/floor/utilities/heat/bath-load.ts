import { type BottleMaterial, bottleMaterialNames } from '../../../sheets/heat/bottle-materials.ts';
import { openTankLossSheet } from '../../../sheets/heat/open-tank-loss.ts';
import type { Insulation } from '../../../sheets/heat/open-tank-table.ts';
import { washLoadSheet } from '../../../sheets/heat/wash-load.ts';
import { agreedRate } from '../agreed-period.ts';
import type { Calculation } from '../calculation.ts';
import type { Known } from '../known.ts';
import { feedTemperature } from './bath-water.ts';
import { bottleBefore } from './bottle-path.ts';
import { carryOver } from './carry-over.ts';
import { heatOfAll } from './heat-of-all.ts';
import type { ZoneAt } from './zones-of.ts';

const sheetMaterials: Readonly<Record<string, BottleMaterial>> = { steel: 'stainless steel' };

/** Material of the format as the sheets of heat know it; others are asked for. */
export const bottleMaterial = (c: Calculation): Known<BottleMaterial> | undefined => {
  const path = `${c.formatPath}/material`;
  const given = c.neededWord(path);
  if (given === undefined) return undefined;
  const value = sheetMaterials[given.value] ?? (given.value as BottleMaterial);
  if (bottleMaterialNames.includes(value)) return { value, from: given.from };
  c.miss(path);
  c.note('MATERIAL_NO_HEAT', { material: given.value });
  return undefined;
};

/** Where the table of open tanks begins, K: 90 degF. */
const tableFrom = 305.4;

/** What a warm bath loses by its surface and walls; undefined where neither is said or it is cooler than the table. */
export const bathLoss = (c: Calculation, { path, zone }: ZoneAt) =>
  c.once(`bathLoss ${path}`, (c) => {
    const bath = c.needed(`${path}/temperature`, 'temperature');
    const surface = c.number(`${path}/surface`, 'area');
    const walls = c.number(`${path}/walls`, 'area');
    if (surface === undefined) c.assume(`${path}/surface`);
    if (walls === undefined) c.assume(`${path}/walls`);
    if (surface === undefined && walls === undefined) return undefined;
    if (bath !== undefined && bath.value < tableFrom) {
      c.note('BATH_LOSES_LITTLE');
      return undefined;
    }
    const none = (of: string): Known => ({ value: 0, from: { path: `${path}/${of}`, assumed: true } });
    const insulation: Insulation =
      zone.insulation === undefined || zone.insulation === 'none' ? 'bare' : zone.insulation;
    return c.run(openTankLossSheet, {
      bath,
      surface: surface ?? none('surface'),
      walls: walls ?? none('walls'),
      insulation: {
        value: insulation,
        from: {
          path: `${path}/insulation`,
          ...(zone.insulation === undefined ? { assumed: true } : {}),
        },
      },
    });
  });

/** Heat that a zone takes all the time at the agreed rate: bottles, what they carry, fresh water, surface and walls. */
export const bathLoad = (c: Calculation, at: ZoneAt) =>
  c.once(`bathLoad ${at.path}`, (c) => {
    const { path, index } = at;
    const loss = bathLoss(c, at);
    const before = bottleBefore(c, at);
    const fresh = c.number(`${path}/flow`, 'volumeFlow');
    return c.run(washLoadSheet, {
      rate: agreedRate(c),
      material: bottleMaterial(c),
      mass: c.needed(`${c.formatPath}/mass`, 'mass'),
      entry: before,
      zone: c.needed(`${path}/temperature`, 'temperature'),
      // a bottle comes dry into the first zone
      ...(index === 0 ? {} : { carryOver: carryOver(c, at), carryTemperature: before }),
      ...(fresh === undefined ? {} : { makeUp: fresh, makeUpTemperature: feedTemperature(c, at) }),
      ...(loss === undefined
        ? {}
        : {
            surface: heatOfAll(c, [loss.evaporation, loss.radiation]),
            walls: loss.wallLoss,
          }),
    });
  });
