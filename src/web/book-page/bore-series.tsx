import type { ReactElement } from 'react';
import { valueAt } from '../../book/index.ts';
import {
  hoseSeries,
  hygienicSeries,
  type PipeSeries,
  schedule40Series,
  seriesFor,
} from '../../floor/remedies/pipe-series.ts';
import { putValue } from '../commands/put-value.ts';
import { usePage, usePagePart } from '../state/page-context.ts';

const all = [hoseSeries, hygienicSeries, schedule40Series];

/** Sizes that can be bought, by name, with the bore that they truly have; the series of the material first. */
export const BoreSeries = ({
  path,
  label,
}: {
  readonly path: string;
  readonly label: string;
}): ReactElement => {
  const page = usePage();
  const { words } = page;
  const { say } = words;
  const piece = usePagePart(({ book }) => valueAt(book, path.replace(/\/bore$/, '')));
  const { material, name } = (piece ?? {}) as { readonly material?: string; readonly name?: string };
  const first = seriesFor(material, name);
  const series: readonly PipeSeries[] = [first, ...all.filter((each) => each !== first)];
  const millimetres = (bore: number) =>
    words.quantity(bore, 'length', { units: 'metric', unit: 'mm', digits: 4 });
  return (
    <select
      className="series"
      aria-label={say('write.series', { name: label })}
      value=""
      onChange={(event) => {
        const [id, size] = event.target.value.split('|');
        const chosen = all.find((each) => each.id === id)?.bores.find((each) => each.name === size);
        // the book keeps what was chosen as text: the same in every language
        if (chosen !== undefined) putValue(page, path, `${Number((chosen.bore * 1000).toFixed(3))} mm`);
      }}
    >
      <option value="">{say('write.series.choose')}</option>
      {series.map(({ id, bores }) => (
        <optgroup key={id} label={say(`write.series.${id}`)}>
          {bores.map(({ name: size, bore }) => (
            <option key={size} value={`${id}|${size}`}>
              {say('write.series.size', { name: size, bore: millimetres(bore).text })}
            </option>
          ))}
        </optgroup>
      ))}
    </select>
  );
};
