import type { Book } from '../../../book/index.ts';
import { boundAt, makeSetting, placedSetting } from '../make-setting.ts';
import type { SettingRow } from '../setting-row.ts';

/** Of a drive behind an inverter its frequency and parameters, of one on the supply the dial of its overload relay. */
export const driveSettings = (book: Book): readonly SettingRow[] =>
  (book.line?.drives ?? []).flatMap(({ tag, inverter, station }, i): readonly SettingRow[] => {
    const at = { on: tag, ...(station === undefined ? {} : { station }) };
    if (inverter === true) {
      return [
        makeSetting('frequency', { ...at, form: { is: 'quantity', kind: 'frequency', unit: 'Hz' } }),
        makeSetting('parameters', at),
      ];
    }
    const dial = `/line/drives/${i}/overload`;
    const [least, most] = [
      boundAt(book, `${dial}/least`, 'current'),
      boundAt(book, `${dial}/most`, 'current'),
    ];
    return [
      placedSetting(book, 'overload', `${dial}/set`, {
        ...at,
        range: { ...(least === undefined ? {} : { least }), ...(most === undefined ? {} : { most }) },
      }),
    ];
  });
