import { choiceField, numberField } from '../fields.ts';
import { defineSheet } from '../frame.ts';
import { beyondTable } from '../table-problem.ts';
import { areas, waterTemperatures } from './bounds.ts';
import { always } from './caution.ts';
import { latentHeat } from './if97.ts';
import { type Insulation, tableEnd, tableLoss, tableStart } from './open-tank-table.ts';
import { openTankTable } from './sources.ts';

interface OpenTankLossInputs {
  readonly bath: number;
  readonly surface: number;
  readonly walls: number;
  readonly insulation: Insulation;
}

export const openTankLossSheet = defineSheet({
  id: 'heat/open-tank-loss',
  version: 1,
  inputs: {
    bath: numberField('temperature', 'T', waterTemperatures),
    surface: numberField('area', 'A_s', areas),
    walls: numberField('area', 'A_w', areas),
    insulation: choiceField<Insulation>('\\text{insulation}', ['bare', '25 mm', '50 mm', '75 mm'], 'bare'),
  },
  outputs: {
    evaporation: numberField('heatFlow', 'P_e'),
    radiation: numberField('heatFlow', 'P_r'),
    wallLoss: numberField('heatFlow', 'P_w'),
    total: numberField('heatFlow', 'P'),
    evaporated: numberField('massFlow', 'W'),
  },
  formula: [
    'P_e = A_s\\, q_e(T), \\quad P_r = A_s\\, q_r(T), \\quad P_w = A_w\\, q_w(T), \\quad P = P_e + P_r + P_w',
    'W = \\frac{P_e}{h_{fg}(T)}',
  ],
  limits: [
    always('CAUTION_HOT_WATER'),
    always('OPEN_TANK_ROUGH'),
    always('OPEN_TANK_STILL_AIR'),
    always('EVAPORATION_TO_ROOM'),
  ],
  sources: [openTankTable],
  check: ({ bath }) =>
    Number.isNaN(tableLoss('bare', bath))
      ? [beyondTable('bath', bath, `>= ${tableStart}, <= ${tableEnd}`, openTankTable)]
      : [],
  compute: (i: OpenTankLossInputs) => {
    const evaporation = i.surface * tableLoss('evaporation', i.bath);
    const radiation = i.surface * tableLoss('bare', i.bath);
    const wallLoss = i.walls * tableLoss(i.insulation, i.bath);
    return {
      evaporation,
      radiation,
      wallLoss,
      total: evaporation + radiation + wallLoss,
      evaporated: evaporation / latentHeat(i.bath),
    };
  },
});
