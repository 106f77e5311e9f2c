import { createContext, type ReactElement, useContext, useEffect, useState } from 'react';
import { openFigure } from '../commands/open-working.ts';
import type { RemedySearch, SolveRemedies } from '../state/page.ts';
import { usePage, usePagePart } from '../state/page-context.ts';

/** The search of this page, one after the other. */
export const FixContext = createContext<SolveRemedies>(() => () => undefined);

/** The search begins when the typing rests. */
const rest = 500;

export interface FixLineProps {
  readonly floor: string;
  readonly floorName: string;
  readonly finding: string;
  readonly name: string;
}

/** Under a row that is short: the first change that would carry it; pressed, the others stand beside the working. */
export const FixLine = ({ floor, floorName, finding, name }: FixLineProps): ReactElement => {
  const page = usePage();
  const solve = useContext(FixContext);
  const book = usePagePart((state) => state.book);
  const [search, setSearch] = useState<RemedySearch | 'failed'>();
  useEffect(() => {
    if (book === undefined) return undefined;
    let giveUp = (): void => undefined;
    const timer = setTimeout(() => {
      giveUp = solve({ book, floor, finding }, setSearch);
    }, rest);
    return () => {
      clearTimeout(timer);
      giveUp();
    };
  }, [solve, book, floor, finding]);
  const { words } = page;
  const { say } = words;
  const found = search === undefined || search === 'failed' ? [] : search.found;
  const carrying = found.filter(({ patch, breaks }) => patch.length > 0 && breaks.length === 0);
  const first = carrying[0] ?? found.find(({ patch }) => patch.length > 0);
  const others = carrying.length - 1;
  const done = search !== undefined && search !== 'failed' && search.done;
  const told =
    first !== undefined && book !== undefined
      ? say(others > 0 ? 'utilities.fix.found.more' : 'utilities.fix.found', {
          remedy: words.remedyText(book, first),
          n: others,
        })
      : done && found.length > 0
        ? say('utilities.fix.none')
        : say('utilities.fix.ask');
  return (
    <button
      type="button"
      className="link fix"
      data-fix={finding}
      data-floor={floor}
      onClick={() => openFigure(page, { floor, id: finding })}
    >
      <span className="said">{say('utilities.side', { floor: floorName, name })} </span>
      {told}
    </button>
  );
};
