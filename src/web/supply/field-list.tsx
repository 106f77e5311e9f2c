import type { ReactElement } from 'react';
import { pipeMaterialNames, valueAt } from '../../book/index.ts';
import { QuantityField } from '../field/quantity-field.tsx';
import { usePageState, useWords } from '../state/page-context.ts';

export interface FieldListProps {
  /** Path of the part of the book that the fields stand in. */
  readonly at: string;
  readonly fields: readonly string[];
}

/** Fields of one part of the book, each edited where it stands. */
export const FieldList = ({ at, fields }: FieldListProps): ReactElement => {
  const words = useWords();
  const { shown } = usePageState();
  return (
    <dl className="inputs">
      {fields.map((field) => {
        const path = `${at}/${field}`;
        const numbered = /\/(\d+)\//.exec(`/${field}`)?.[1];
        const name = words.fieldName(path);
        const value = shown === undefined ? undefined : valueAt(shown, path);
        const standing = typeof value === 'object' && value !== null ? value : {};
        const { standing: known, by } = standing as { standing?: string; by?: string };
        return (
          <div key={field}>
            <dt>
              {name}
              {numbered !== undefined && ` ${Number(numbered) + 1}`}
            </dt>
            <dd>
              <QuantityField
                path={path}
                label={shown === undefined ? name : words.placeName(shown, path)}
                options={field === 'material' ? pipeMaterialNames : undefined}
              />
            </dd>
            {known !== undefined && (
              <dd className="under">
                {words.say(`standing.${known}`)}
                {by !== undefined && `: ${by}`}
              </dd>
            )}
          </div>
        );
      })}
    </dl>
  );
};
