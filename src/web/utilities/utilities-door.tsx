import type { ReactElement } from 'react';
import { WholeWords } from '../sheets/whole-words.tsx';
import { usePagePart } from '../state/page-context.ts';
import { OnBasis } from './found-basis.tsx';
import { UtilitiesPage } from './utilities-page.tsx';

/** The page of utilities with the words of every sheet behind it: fetched when somebody asks for it. */
export const UtilitiesDoor = (): ReactElement => {
  const id = usePagePart((state) => state.id);
  return (
    <WholeWords>
      <OnBasis key={id}>
        <UtilitiesPage />
      </OnBasis>
    </WholeWords>
  );
};
