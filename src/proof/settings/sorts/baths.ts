import type { Book } from '../../../book/index.ts';
import { placedSetting } from '../make-setting.ts';
import type { SettingRow } from '../setting-row.ts';

/** Temperatures and concentrations of the wash: thermostats, mixing valves, dosing. */
export const bathSettings = (book: Book): readonly SettingRow[] => {
  const heaters = book.line?.heaters ?? [];
  const zones = (book.line?.stations ?? []).flatMap((station, i) =>
    station.kind === 'washer'
      ? (station.zones ?? []).map((zone, z) => ({
          zone,
          station: station.tag,
          path: `/line/stations/${i}/zones/${z}`,
        }))
      : [],
  );
  return [
    ...heaters.map((heater, i) => {
      const held = zones.find(({ zone }) => zone.tag === heater.zone);
      const station = heater.station ?? held?.station;
      const target = `/line/heaters/${i}/target`;
      return placedSetting(book, 'heater', target, {
        on: heater.tag,
        ...(station === undefined ? {} : { station }),
        // what the thermostat holds is the temperature of its zone
        paths: held === undefined ? [target] : [target, `${held.path}/temperature`],
      });
    }),
    ...zones.flatMap(({ zone, station, path }) => {
      const at = { on: zone.tag, station };
      const heated = heaters.some((heater) => heater.zone === zone.tag);
      return [
        ...(zone.temperature === undefined || heated
          ? []
          : [placedSetting(book, 'temperature', `${path}/temperature`, at)]),
        ...(zone.concentration === undefined
          ? []
          : [placedSetting(book, 'concentration', `${path}/concentration`, at)]),
      ];
    }),
  ];
};
