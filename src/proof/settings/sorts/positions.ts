import type { Book } from '../../../book/index.ts';
import { boundAt, makeSetting } from '../make-setting.ts';
import type { SettingRow } from '../setting-row.ts';

const millimetres = { is: 'quantity', kind: 'length', unit: 'mm' } as const;
/** Of the screw of a flow control, from closed. */
const turns = { is: 'quantity', kind: 'angle', unit: 'turn' } as const;

const at = (on: string, station: string | undefined) => ({
  on,
  ...(station === undefined ? {} : { station }),
});

/** What is moved or screwed: flow controls of the cylinders, sensors, guides for each bottle. */
export const positionSettings = (book: Book): readonly SettingRow[] => {
  const { cylinders = [], devices = [], stations = [], formats = [] } = book.line ?? {};
  return [
    ...cylinders.flatMap(({ tag, station }) => [
      makeSetting('throttleOut', { ...at(tag, station), form: turns }),
      makeSetting('throttleBack', { ...at(tag, station), form: turns }),
    ]),
    ...devices
      .filter(({ kind }) => kind === 'input')
      .map(({ tag, station }) => makeSetting('sensor', { ...at(tag, station), form: millimetres })),
    ...stations
      .filter(({ kind }) => kind === 'conveyor')
      .flatMap(({ tag }) =>
        formats.map((format, i) => {
          // a bottle does not go between guides that are narrower than itself
          const least = boundAt(book, `/line/formats/${i}/body`, 'length');
          return makeSetting('guide', {
            ...at(tag, tag),
            format: format.tag,
            form: millimetres,
            range: least === undefined ? {} : { least },
          });
        }),
      ),
  ];
};
