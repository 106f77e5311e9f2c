import { memo, type ReactElement, useContext, useEffect, useMemo } from 'react';
import { tagsOf, valueAt } from '../../book/index.ts';
import type { Utility } from '../../floor/utilities/utility-finding.ts';
import { type Writing, WritingContext } from '../book-page/write-context.ts';
import { openFigure } from '../commands/open-working.ts';
import { SpineKey } from '../floors/spine-key.tsx';
import { useFacing } from '../floors/use-facing.ts';
import { GoContext, GoLink } from '../shell/go-link.tsx';
import { bookPageAddress } from '../shell/route.ts';
import { Later } from '../state/later.tsx';
import { usePage, usePagePart } from '../state/page-context.ts';
import { solveInTurn } from '../state/solve-in-turn.ts';
import { WorkingPanel } from '../working/working-panel.tsx';
import { AskSites } from './ask-site.tsx';
import { FixContext } from './fix-line.tsx';
import { FoundPart } from './found-part.tsx';
import { FoundSwitch } from './found-switch.tsx';
import { tradeAt } from './trade-part.ts';
import { trades } from './trades.ts';
import { UtilityHeads } from './utility-heads.tsx';
import { UtilityPart, type UtilityPartProps } from './utility-part.tsx';

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
const useFirstOpened = (): void => {
  const page = usePage();
  useEffect(() => {
    const { opened, assessment, facing } = page.state.get();
    if (opened !== undefined || !window.matchMedia('(min-width: 1081px)').matches) return;
    const floors = facing.flatMap((tag) => assessment?.floors.filter((floor) => floor.floor === tag) ?? []);
    for (const floor of floors.toReversed()) {
      const finding = floor.utilities.findings.find(({ verdict }) => verdict === 'short');
      if (finding === undefined) continue;
      openFigure(page, { floor: floor.floor, id: finding.id, unasked: true });
      return;
    }
  }, [page]);
};

const FacingHeads = memo((): ReactElement | null => {
  const facing = useFacing();
  return facing === undefined ? null : <UtilityHeads {...facing} />;
});

FacingHeads.displayName = 'FacingHeads';

const FacingTrade = memo(
  ({ utility, thingOf }: Pick<UtilityPartProps, 'utility' | 'thingOf'>): ReactElement | null => {
    const facing = useFacing();
    return facing === undefined ? null : <UtilityPart {...facing} utility={utility} thingOf={thingOf} />;
  },
);

FacingTrade.displayName = 'FacingTrade';

const FacingQuestions = memo((): ReactElement | null => {
  const facing = useFacing();
  return facing === undefined ? null : <AskSites floors={facing.floors} />;
});

FacingQuestions.displayName = 'FacingQuestions';

const FacingFound = memo((): ReactElement | null => {
  const facing = useFacing();
  return facing === undefined ? null : <FoundPart floors={facing.floors} />;
});

FacingFound.displayName = 'FacingFound';

/**
 * The utilities of the facing floors, trade by trade, with the working of what was pressed beside them. The rows of the trade
 * that is being written follow each key; the others are drawn when those have been painted.
 */
export const UtilitiesPage = (): ReactElement | null => {
  const { say } = usePage().words;
  const id = usePagePart((state) => state.id);
  const isOpen = usePagePart(({ opened }) => opened !== undefined);
  const isReady = usePagePart(({ shown, assessment }) => shown !== undefined && assessment !== undefined);
  const hasFloors = usePagePart(({ assessment, facing }) =>
    facing.some((tag) => assessment?.floors.some(({ floor }) => floor === tag) === true),
  );
  const written = usePagePart(({ typing }) => tradeAt(typing?.path));
  const thingOf = useThings();
  const writing = useWritingHere();
  const { solveRemedies } = usePage();
  const solve = useMemo(() => solveInTurn(solveRemedies), [solveRemedies]);
  useFirstOpened();
  if (!isReady) return null;
  const isFirst = (utility: Utility): boolean => written === undefined || written === utility;
  return (
    <WritingContext value={writing}>
      <FixContext value={solve}>
        <div className="floors utilities">
          <div className={isOpen ? 'floors-main beside-sheet' : 'floors-main'} id="figures" tabIndex={-1}>
            {hasFloors ? (
              <div className="spine">
                <Later atOnce={written === undefined}>
                  <FacingHeads />
                </Later>
                <FoundSwitch />
                <Later>
                  <FacingQuestions />
                </Later>
                <SpineKey />
                {trades.map((utility) => (
                  <Later key={utility} atOnce={isFirst(utility)}>
                    <FacingTrade utility={utility} thingOf={thingOf} />
                  </Later>
                ))}
                <Later atOnce={written === undefined}>
                  <FacingFound />
                </Later>
              </div>
            ) : (
              <p className="message">
                {say('heads.noFloor')}{' '}
                <GoLink to={bookPageAddress(id, '/floors')}>{say('utilities.floors')}</GoLink>
              </p>
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
