import { type ReactElement, useMemo } from 'react';
import type { Limit } from '../../proof/index.ts';
import { openFigure } from '../commands/open-working.ts';
import { GoLink } from '../shell/go-link.tsx';
import { bookPageAddress } from '../shell/route.ts';
import { usePage, usePagePart, useWords } from '../state/page-context.ts';
import { workingAddress } from '../working/working-address.ts';
import { useCheckSays } from './check-says.ts';

/** The thing of the book in which a value stands. */
const partOf = (path: string): string => path.replace(/\/[^/]+$/, '');

/** A limit, which opens what made it: its working beside the page, else its sheet, else its place in the book. */
export const LimitDoor = ({ limit }: { readonly limit: Limit }): ReactElement => {
  const page = usePage();
  const words = useWords();
  const id = usePagePart((state) => state.id);
  const assessment = usePagePart((state) => state.assessment);
  const says = useCheckSays();
  const { working, fields, figure } = limit;
  const opened = useMemo(() => {
    if (working === undefined) return undefined;
    for (const { floor, workings } of assessment?.floors ?? []) {
      const number = workings.indexOf(working);
      if (number >= 0) return { floor, working: number };
    }
    return undefined;
  }, [assessment, working]);
  const text = says.limit(limit);
  if (opened !== undefined) {
    return (
      <button type="button" className="link limit" onClick={() => openFigure(page, opened)}>
        {text}
      </button>
    );
  }
  const to =
    working !== undefined && fields !== undefined
      ? workingAddress(words, working, fields)
      : figure.path === undefined
        ? undefined
        : bookPageAddress(id, partOf(figure.path));
  return to === undefined ? (
    <span className="limit">{text}</span>
  ) : (
    <GoLink className="limit" to={to}>
      {text}
    </GoLink>
  );
};
