import { type ReactElement, useContext, useEffect, useMemo } from 'react';
import { tagsOf, valueAt } from '../../book/index.ts';
import type { FloorAssessment } from '../../floor/assessment.ts';
import { type Writing, WritingContext } from '../book-page/write-context.ts';
import { openFigure } from '../commands/open-working.ts';
import { SpineKey } from '../floors/spine-key.tsx';
import { GoContext, GoLink } from '../shell/go-link.tsx';
import { bookPageAddress } from '../shell/route.ts';
import { Later } from '../state/later.tsx';
import { usePage, usePagePart, usePageState } from '../state/page-context.ts';
import { solveInTurn } from '../state/solve-in-turn.ts';
import { WorkingPanel } from '../working/working-panel.tsx';
import { AskSites } from './ask-site.tsx';
import { FixContext } from './fix-line.tsx';
import { FoundPart } from './found-part.tsx';
import { FoundSwitch } from './found-switch.tsx';
import { trades } from './trades.ts';
import { UtilityHeads } from './utility-heads.tsx';
import { UtilityPart } from './utility-part.tsx';

/** The name of a thing by its tag, or the tag where it has none. */
const useThings = (): ((tag: string) => string) => {
  const book = usePagePart((state) => state.book);
  return useMemo(() => {
    const names = new Map(
      tagsOf(book).map(({ tag, path }) => {
        const name = valueAt(book, `${path}/name`);
        return [tag, typeof name === 'string' ? `${name} ${tag}` : tag];
      }),
    );
    return (tag) => names.get(tag) ?? tag;
  }, [book]);
};

const useWritingHere = (): Writing => {
  const go = useContext(GoContext);
  const id = usePagePart((state) => state.id);
  return useMemo(() => {
    const address = (path: string) => bookPageAddress(id, path);
    return { address, open: (path, how) => go(address(path), how), tell: () => undefined };
  }, [go, id]);
};

/** Where there is room beside the rows, what is short opens as soon as the page is there. */
const useFirstOpened = (floors: readonly FloorAssessment[]): void => {
  const page = usePage();
  // biome-ignore lint/correctness/useExhaustiveDependencies: once, when the page comes
  useEffect(() => {
    if (page.state.get().opened !== undefined) return;
    if (!window.matchMedia('(min-width: 1081px)').matches) return;
    for (const floor of floors.toReversed()) {
      const finding = floor.utilities.findings.find(({ verdict }) => verdict === 'short');
      if (finding === undefined) continue;
      openFigure(page, { floor: floor.floor, id: finding.id, unasked: true });
      return;
    }
  }, [page]);
};

/** The utilities of the facing floors, trade by trade, with the working of what was pressed beside them. */
export const UtilitiesPage = (): ReactElement | null => {
  const { shown, assessment, facing, opened, id } = usePageState();
  const { say } = usePage().words;
  const thingOf = useThings();
  const writing = useWritingHere();
  const { solveRemedies } = usePage();
  const solve = useMemo(() => solveInTurn(solveRemedies), [solveRemedies]);
  const [left, right] = facing.map((tag) => assessment?.floors.find((floor) => floor.floor === tag));
  const floors = [left, right].filter((floor) => floor !== undefined);
  useFirstOpened(floors);
  if (shown === undefined || assessment === undefined) return null;
  return (
    <WritingContext value={writing}>
      <FixContext value={solve}>
        <div className="floors utilities">
          <div
            className={opened === undefined ? 'floors-main' : 'floors-main beside-sheet'}
            id="figures"
            tabIndex={-1}
          >
            {floors.length === 0 ? (
              <p className="message">
                {say('heads.noFloor')}{' '}
                <GoLink to={bookPageAddress(id, '/floors')}>{say('utilities.floors')}</GoLink>
              </p>
            ) : (
              <div className="spine">
                <UtilityHeads book={shown} assessment={assessment} left={left} right={right} />
                <FoundSwitch />
                <AskSites floors={floors} />
                <SpineKey />
                {trades.map((utility) => (
                  <UtilityPart
                    key={utility}
                    book={shown}
                    utility={utility}
                    left={left}
                    right={right}
                    thingOf={thingOf}
                  />
                ))}
                <FoundPart floors={floors} />
              </div>
            )}
          </div>
          <Later>
            <WorkingPanel />
          </Later>
        </div>
      </FixContext>
    </WritingContext>
  );
};
