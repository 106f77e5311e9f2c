import type { ReactElement } from 'react';
import type { Route } from '../shell/route.ts';
import { SheetPage } from './sheet-page.tsx';
import { SheetsPage } from './sheets-page.tsx';
import { WholeWords } from './whole-words.tsx';

/** The pages of sheets: fetched when somebody asks for them. */
export const SheetsDoor = ({
  route,
}: {
  readonly route: Extract<Route, { readonly page: 'sheets' | 'sheet' }>;
}): ReactElement => (
  <WholeWords>
    {route.page === 'sheets' ? (
      <SheetsPage find={route.find} />
    ) : (
      <SheetPage key={route.sheet} id={route.sheet} inputs={route.inputs} />
    )}
  </WholeWords>
);
