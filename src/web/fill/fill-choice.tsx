import { type ReactElement, useId } from 'react';
import { floorClass } from '../floors/floor-class.ts';
import { useWords } from '../state/page-context.ts';
import { useFillPlace } from './fill-place.tsx';

/** On which floor, and which bottle. */
export const FillChoice = ({ withFloor }: { readonly withFloor: boolean }): ReactElement => {
  const { say } = useWords();
  const id = useId();
  const { book, floor, format, choose } = useFillPlace();
  const formats = book.line?.formats ?? [];
  return (
    <div className="fill-choice">
      {withFloor && (
        <label htmlFor={`${id}f`} className={floorClass(book, floor.tag)}>
          <span className="said">{say('setting.floor')}</span>
          <select
            id={`${id}f`}
            data-choice="floor"
            value={floor.tag}
            onChange={(event) => choose({ floor: event.target.value })}
          >
            {(book.floors ?? []).map(({ tag, name }) => (
              <option key={tag} value={tag}>
                {name ?? tag}
              </option>
            ))}
          </select>
        </label>
      )}
      {formats.length > 1 ? (
        <label htmlFor={`${id}b`}>
          <span className="said">{say('setting.format')}</span>
          <select
            id={`${id}b`}
            data-choice="format"
            value={format?.tag}
            onChange={(event) => choose({ format: event.target.value })}
          >
            {formats.map(({ tag, name }) => (
              <option key={tag} value={tag}>
                {name ?? tag}
              </option>
            ))}
          </select>
        </label>
      ) : (
        <span className="quiet">{format?.name ?? format?.tag}</span>
      )}
    </div>
  );
};
