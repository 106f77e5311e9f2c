import { type ReactElement, useId, useState } from 'react';
import { valueAt } from '../../book/index.ts';
import type { FloorAssessment } from '../../floor/assessment.ts';
import type { Utility } from '../../floor/utilities/utility-finding.ts';
import { PartFields } from '../book-page/part-fields.tsx';
import { focusSoon } from '../book-page/write-context.ts';
import { floorClass } from '../floors/floor-class.ts';
import { usePage, usePagePart } from '../state/page-context.ts';
import { partOfTrade } from './trade-part.ts';

interface FormProps {
  readonly utility: Utility;
  readonly floor: FloorAssessment;
  readonly path: string;
  readonly id: string;
  readonly close: () => void;
}

const Form = ({ utility, floor, path, id, close }: FormProps): ReactElement => {
  const { say } = usePage().words;
  const name = say('utilities.form.of', { utility: say(`utility.${utility}`), floor: floor.name });
  return (
    <section className="site-form" id={id} aria-label={name}>
      <div className="inner-head">
        <h3>{name}</h3>
        <button type="button" onClick={close}>
          {say('utilities.form.close')}
        </button>
      </div>
      <PartFields path={path} />
    </section>
  );
};

export interface SiteFormsProps {
  readonly utility: Utility;
  readonly floors: readonly FloorAssessment[];
}

/** What each floor has of a utility, to be filled in where its rows stand; a form that is shut is not there. */
export const SiteForms = ({ utility, floors }: SiteFormsProps): ReactElement => {
  const page = usePage();
  const { say } = page.words;
  const id = useId();
  const [open, setOpen] = useState<string>();
  const book = usePagePart((state) => state.book);
  const pathOf = (tag: string): string =>
    `/floors/${(book?.floors ?? []).findIndex((floor) => floor.tag === tag)}/${partOfTrade[utility]}`;
  const shown = floors.find(({ floor }) => floor === open);
  const close = (): void => {
    setOpen(undefined);
    focusSoon(`[data-form="${utility} ${open}"]`);
  };
  return (
    <>
      <div className="site-doors">
        {floors.map((floor) => {
          const path = pathOf(floor.floor);
          const empty = valueAt(book, path) === undefined;
          return (
            <span key={floor.floor} className={book === undefined ? '' : floorClass(book, floor.floor)}>
              <button
                type="button"
                data-form={`${utility} ${floor.floor}`}
                aria-expanded={open === floor.floor}
                aria-controls={open === floor.floor ? id : undefined}
                aria-label={say('utilities.form.of', {
                  utility: say(`utility.${utility}`),
                  floor: floor.name,
                })}
                onClick={() => {
                  setOpen(open === floor.floor ? undefined : floor.floor);
                  if (open !== floor.floor) focusSoon(`[data-path^="${path}/"]`);
                }}
              >
                {say('utilities.form', { floor: floor.name })}
              </button>{' '}
              {empty && <span className="small quiet">{say('utilities.form.none')}</span>}
            </span>
          );
        })}
      </div>
      {shown !== undefined && (
        <Form
          key={shown.floor}
          utility={utility}
          floor={shown}
          path={pathOf(shown.floor)}
          id={id}
          close={close}
        />
      )}
    </>
  );
};
