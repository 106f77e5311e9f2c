import type { ReactElement } from 'react';
import { valueAt } from '../../book/index.ts';
import { QuantityField } from '../field/quantity-field.tsx';
import { usePage, usePagePart } from '../state/page-context.ts';
import { isEditable } from './is-editable.ts';

/** A figure that is written in the book and not worked out: its field; below it stands how what is asked came about. */
export const BookValue = ({
  path,
  worked,
}: {
  readonly path: string;
  readonly worked: boolean;
}): ReactElement | null => {
  const { words } = usePage();
  const shown = usePagePart((state) => state.shown);
  if (shown === undefined || !isEditable(valueAt(shown, path))) return null;
  const name = words.placeName(shown, path);
  return (
    <>
      <dl className="inputs" aria-label={words.say('utilities.said')}>
        <div>
          <dt>{name}</dt>
          <dd>
            <QuantityField path={path} label={name} />
          </dd>
        </div>
      </dl>
      {worked && <h3>{words.say('utilities.demandWorked')}</h3>}
    </>
  );
};
