import { type ReactElement, type ReactNode, useMemo } from 'react';
import type { Catalogue } from '../../text/index.ts';
import { PageContext, usePage } from '../state/page-context.ts';
import { wordsOf } from './words.ts';

/** A part of the page that has more words than the first figures need: they come with it. */
export const MoreWords = ({
  catalogue,
  children,
}: {
  readonly catalogue: Catalogue;
  readonly children: ReactNode;
}): ReactElement => {
  const page = usePage();
  const whole = useMemo(() => ({ ...page, words: wordsOf(catalogue, page.words) }), [page, catalogue]);
  return <PageContext value={whole}>{children}</PageContext>;
};
