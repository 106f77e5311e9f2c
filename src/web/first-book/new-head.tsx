import type { ReactElement } from 'react';
import { useWords } from '../state/page-context.ts';

/** The head where no book is shown yet. */
export const NewHead = (): ReactElement => (
  <header className="head">
    <h1>{useWords().say('page.new')}</h1>
  </header>
);
