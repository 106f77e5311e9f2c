import type { ReactElement } from 'react';
import { fittings, pipeMaterials, valueAt } from '../../book/index.ts';
import { unitsOf } from '../../quantity/index.ts';
import { NoteField } from '../field/note-field.tsx';
import { QuantityField } from '../field/quantity-field.tsx';
import { usePage, usePagePart } from '../state/page-context.ts';
import { BoreSeries } from './bore-series.tsx';
import { ClaimField, ReferenceField, WordField } from './choice-field.tsx';
import type { Place } from './place-at.ts';

export interface LeafFieldProps {
  readonly path: string;
  readonly place: Place;
  readonly label: string;
  /** It stands in a table. */
  readonly small?: boolean;
}

/** Loss coefficient that the table gives the fitting beside which `k` stands. */
const useUsualK = (path: string): number | undefined =>
  usePagePart(({ shown }) => {
    if (!/\/fittings\/\d+\/k$/.test(path)) return undefined;
    const kind = valueAt(shown, path.replace(/k$/, 'kind'));
    return typeof kind === 'string' && Object.hasOwn(fittings, kind)
      ? fittings[kind as keyof typeof fittings].k
      : undefined;
  });

/** Roughness that the material gives the pipe, where the book says none. */
const useUsualRoughness = (path: string): number | undefined =>
  usePagePart(({ shown }) => {
    if (!path.endsWith('/roughness')) return undefined;
    const material = valueAt(shown, path.replace(/roughness$/, 'material'));
    return typeof material === 'string' && Object.hasOwn(pipeMaterials, material)
      ? pipeMaterials[material as keyof typeof pipeMaterials].roughness
      : undefined;
  });

const isDay = (help: string): boolean => help.startsWith('help./about/dates/');

/** One field of the book, by what may stand in it. */
export const LeafField = ({ path, place, label, small }: LeafFieldProps): ReactElement => {
  const { words } = usePage();
  const k = useUsualK(path);
  const roughness = useUsualRoughness(path);
  const { form, must, help } = place;
  switch (form.is) {
    case 'quantity':
      return (
        <>
          <QuantityField
            path={path}
            label={label}
            placeholder={
              roughness === undefined
                ? undefined
                : words.quantity(roughness, 'length', { units: 'metric', unit: 'mm' }).text
            }
          />
          {help.endsWith(':pipe/bore') && <BoreSeries path={path} label={label} />}
        </>
      );
    case 'word':
      return <WordField path={path} label={label} must={must} form={form} />;
    case 'claim':
      return <ClaimField path={path} label={label} must={must} />;
    case 'number':
      return (
        <QuantityField
          path={path}
          label={label}
          wordy
          placeholder={k === undefined ? undefined : words.number(k)}
        />
      );
    case 'text': {
      if (form.tag !== undefined && 'refersTo' in form.tag) {
        return <ReferenceField path={path} label={label} must={must} form={form} />;
      }
      if (/\/note$/.test(path) && small !== true) return <NoteField path={path} label={label} />;
      const options =
        form.unitOf === undefined ? form.table?.rows : unitsOf(form.unitOf).map(({ label: unit }) => unit);
      const usual = form.unitOf !== undefined ? 'write.usual' : isDay(help) ? 'write.day' : undefined;
      return (
        <QuantityField
          path={path}
          label={label}
          options={options}
          placeholder={usual && words.say(usual)}
          wordy
        />
      );
    }
    default:
      return <QuantityField path={path} label={label} wordy />;
  }
};
