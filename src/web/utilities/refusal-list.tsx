import type { ReactElement } from 'react';
import { valueAt } from '../../book/index.ts';
import type { Refusal } from '../../floor/utilities/utility-finding.ts';
import { QuantityField } from '../field/quantity-field.tsx';
import { useFindSheet } from '../sheets/sheet-context.ts';
import { GoLink } from '../shell/go-link.tsx';
import { bookPageAddress } from '../shell/route.ts';
import { usePage, usePagePart } from '../state/page-context.ts';
import { isEditable } from '../working/is-editable.ts';
import { refusalSentences } from './refusal-text.ts';

/** The part of the book in which a place stands. */
const partOf = (path: string): string => path.replace(/\/[^/]+$/, '');

const Place = ({ path }: { readonly path: string }): ReactElement => {
  const page = usePage();
  const { shown, id } = page.state.get();
  const name = shown === undefined ? path : page.words.placeName(shown, path);
  return (
    <span className="refused-place">
      {name} {isEditable(valueAt(shown, path)) && <QuantityField path={path} label={name} />}{' '}
      <GoLink to={bookPageAddress(id, partOf(path))}>{page.words.say('utilities.inBook')}</GoLink>
    </span>
  );
};

/** Why a question has no answer: the sheet that refused, and the places of the book whose values it would not take. */
export const RefusalList = ({ refusals }: { readonly refusals: readonly Refusal[] }): ReactElement | null => {
  const page = usePage();
  const { words } = page;
  const findSheet = useFindSheet();
  const units = usePagePart((state) => state.units);
  if (refusals.length === 0) return null;
  const show = { units, book: page.state.get().shown };
  return (
    <ul className="refusals">
      {refusals.map((refusal) => (
        <li key={refusal.sheet + JSON.stringify(refusal.problems)}>
          <span className="short">
            {words.say('utilities.refused', {
              sheet: words.say(`sheet.${refusal.sheet}.title`),
              why: refusalSentences(words, findSheet, refusal, show),
            })}
          </span>
          {refusal.places.map((path) => (
            <Place key={path} path={path} />
          ))}
        </li>
      ))}
    </ul>
  );
};
