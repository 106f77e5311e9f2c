import type { Book } from '../../../book/index.ts';
import { heaterSheet } from '../../../sheets/power/heater.ts';
import type { Calculation } from '../calculation.ts';
import type { Known } from '../known.ts';
import { machineVoltage } from '../power/machine-load.ts';
import { heatOfAll } from './heat-of-all.ts';

type Heater = NonNullable<NonNullable<Book['line']>['heaters']>[number];
export type HeatKind = NonNullable<Heater['kind']>;

export interface HeaterAt {
  readonly heater: Heater;
  readonly kind: HeatKind;
  readonly path: string;
}

export const heatersOf = (book: Book): readonly HeaterAt[] =>
  (book.line?.heaters ?? []).map((heater, i) => ({
    heater,
    kind: heater.kind ?? 'electric',
    path: `/line/heaters/${i}`,
  }));

export const heatersOfZone = (book: Book, zone: string): readonly HeaterAt[] =>
  heatersOf(book).filter(({ heater }) => heater.zone === zone);

/** What an electric heater gives at the voltage of this floor; the answer of its sheet. */
export const electricHere = (c: Calculation, { path, heater }: HeaterAt) =>
  c.run(heaterSheet, {
    power: c.needed(`${path}/power`, 'power'),
    ratedVoltage: c.needed(`${path}/voltage`, 'voltage'),
    supplyVoltage: machineVoltage(c),
    phases: {
      value: heater.phases === '1' ? 'single-phase' : 'three-phase',
      from: { path: `${path}/phases`, ...(heater.phases === undefined ? { assumed: true } : {}) },
    },
  });

/** Power that one heater gives on this floor: electric ones by its voltage, the others as they are rated. */
export const powerHere = (c: Calculation, at: HeaterAt): Known | undefined =>
  at.kind === 'electric' ? electricHere(c, at)?.power : c.needed(`${at.path}/power`, 'power');

/** Power of all heaters of a zone on this floor. */
export const zonePower = (c: Calculation, zone: string): Known | undefined =>
  c.once(`zonePower ${zone}`, (c) => {
    const powers = heatersOfZone(c.book, zone).map((at) => powerHere(c, at));
    return powers.length === 0 ? undefined : heatOfAll(c, powers);
  });
