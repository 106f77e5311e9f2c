import type { ReactElement } from 'react';
import type { Form } from '../../book/form.ts';
import { valueAt } from '../../book/index.ts';
import { putValue } from '../commands/put-value.ts';
import { usePage, usePagePart } from '../state/page-context.ts';
import { Choose } from './choice-field.tsx';
import { ListSection } from './list-section.tsx';

/** What may be one word or a table: the properties of a product are those of water, or stand line by line. */
export const PropertiesField = ({
  path,
  label,
  form,
}: {
  readonly path: string;
  readonly label: string;
  readonly form: Extract<Form, { is: 'either' }>;
}): ReactElement => {
  const page = usePage();
  const { say } = page.words;
  const value = usePagePart(({ book }) => valueAt(book, path));
  const list = form.of.find((each) => each.is === 'list');
  return (
    <>
      <Choose
        path={path}
        label={label}
        value={Array.isArray(value) ? 'table' : typeof value === 'string' ? value : ''}
        groups={[
          {
            options: [
              { value: 'water', text: say('write.properties.water') },
              { value: 'table', text: say('write.properties.table') },
            ],
          },
        ]}
        none={say('write.unknown')}
        choose={(next) => putValue(page, path, next === '' ? undefined : next === 'table' ? [{}] : next)}
      />
      {Array.isArray(value) && list?.is === 'list' && <ListSection path={path} label={label} form={list} />}
    </>
  );
};
