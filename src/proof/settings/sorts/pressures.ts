import type { Book } from '../../../book/index.ts';
import { boundAt, placedSetting } from '../make-setting.ts';
import type { SettingRow, SettingSort } from '../setting-row.ts';

/** Where a floor may have something to set, beside the line. */
const ofFloor: readonly (readonly [SettingSort, string])[] = [
  ['supplyRegulator', 'supply/source/regulator'],
  ['cutIn', 'supply/source/vessel'],
  ['cutOut', 'supply/source/vessel'],
  ['airRegulator', 'air/regulator'],
];

const fieldOf: Partial<Record<SettingSort, string>> = { cutIn: 'cutIn', cutOut: 'cutOut' };

/** Set pressures: regulators of the line, regulators and pressure switches of each floor. */
export const pressureSettings = (book: Book): readonly SettingRow[] => [
  ...(book.line?.airDrops ?? []).map(({ tag }, i) => {
    const path = `/line/airDrops/${i}`;
    const least = boundAt(book, `${path}/pressure`, 'gaugePressure');
    return placedSetting(book, 'regulator', `${path}/regulated`, {
      on: tag,
      range: least === undefined ? {} : { least },
    });
  }),
  ...(book.floors ?? []).flatMap((floor, i) =>
    ofFloor.flatMap(([sort, within]): readonly SettingRow[] => {
      const [first = '', ...rest] = within.split('/');
      const part = rest.reduce<unknown>(
        (at, step) => (at as Readonly<Record<string, unknown>> | undefined)?.[step],
        (floor as Readonly<Record<string, unknown>>)[first],
      );
      if (part === undefined) return [];
      const path = `/floors/${i}/${within}/${fieldOf[sort] ?? 'set'}`;
      return [placedSetting(book, sort, path, { on: floor.tag, floor: floor.tag })];
    }),
  ),
];
