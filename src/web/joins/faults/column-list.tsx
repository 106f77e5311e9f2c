import { type ReactElement, useId } from 'react';
import { type ListField, listFields } from '../../../joins/index.ts';
import { useWords } from '../../state/page-context.ts';
import type { OfferedColumn } from './read-list.ts';

/** What each column of a list holds: guessed, remembered from the last list, or said here. */
export const ColumnList = ({
  columns,
  match,
}: {
  readonly columns: readonly OfferedColumn[];
  readonly match: (key: string, field: ListField | '') => void;
}): ReactElement => {
  const { say } = useWords();
  const id = useId();
  return (
    <ul className="list-columns">
      {columns.map(({ column, heading, key, samples, field, by }) => (
        <li className="list-column" key={column} data-heading={key} data-by={by}>
          <label htmlFor={`${id}${column}`}>
            <b>{heading}</b> <span className="small quiet">{samples.join(', ')}</span>
          </label>
          <select
            id={`${id}${column}`}
            value={field ?? ''}
            onChange={({ target }) => match(key, target.value as ListField | '')}
          >
            <option value="">{say('joining.list.passedOver')}</option>
            {listFields.map((one) => (
              <option key={one} value={one}>
                {say(`joining.column.${one}`)}
              </option>
            ))}
          </select>
          <span className="small quiet">{say(`joining.list.by.${by}`)}</span>
        </li>
      ))}
    </ul>
  );
};
