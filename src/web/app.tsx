import { lazy, type ReactElement, Suspense, useCallback, useEffect, useState } from 'react';
import { loadBook } from './commands/load-book.ts';
import { closeWorking } from './commands/open-working.ts';
import { redoEdit, undoEdit } from './commands/undo-edit.ts';
import { NewHead } from './first-book/new-head.tsx';
import { FloorsPage } from './floors/floors-page.tsx';
import { GoContext, GoLink } from './shell/go-link.tsx';
import { LanguageSelect } from './shell/language-select.tsx';
import { Notices } from './shell/notices.tsx';
import { PageHead } from './shell/page-head.tsx';
import {
  bookPageAddress,
  cycleAddress,
  fillAddress,
  joinsAddress,
  papersAddress,
  proofAddress,
  type Route,
  routeOf,
  utilitiesAddress,
} from './shell/route.ts';
import { untilFetched } from './shell/until-fetched.ts';
import { usePage, usePagePart, usePageState } from './state/page-context.ts';
import { useWarmUp } from './state/use-warm-up.ts';

// one writes a book now and then: the figures stand without waiting for it
const BookPage = lazy(() =>
  untilFetched(() => import('./book-page/book-page.tsx').then((m) => ({ default: m.BookPage }))),
);

const UtilitiesDoor = lazy(() =>
  untilFetched(() => import('./utilities/utilities-door.tsx').then((m) => ({ default: m.UtilitiesDoor }))),
);
const FillDoor = lazy(() =>
  untilFetched(() => import('./fill/fill-door.tsx').then((m) => ({ default: m.FillDoor }))),
);
const CycleDoor = lazy(() =>
  untilFetched(() => import('./cycle/cycle-door.tsx').then((m) => ({ default: m.CycleDoor }))),
);
const ProofDoor = lazy(() =>
  untilFetched(() => import('./proof/proof-door.tsx').then((m) => ({ default: m.ProofDoor }))),
);
const JoinsDoor = lazy(() =>
  untilFetched(() => import('./joins/joins-door.tsx').then((m) => ({ default: m.JoinsDoor }))),
);
const HallDoor = lazy(() =>
  untilFetched(() => import('./hall/hall-door.tsx').then((m) => ({ default: m.HallDoor }))),
);
const PapersDoor = lazy(() =>
  untilFetched(() => import('./papers/papers-door.tsx').then((m) => ({ default: m.PapersDoor }))),
);
const NewDoor = lazy(() =>
  untilFetched(() => import('./first-book/new-door.tsx').then((m) => ({ default: m.NewDoor }))),
);
const CompareDoor = lazy(() =>
  untilFetched(() => import('./compare/compare-door.tsx').then((m) => ({ default: m.CompareDoor }))),
);

// a hundred sheets and their words, of which a floor opens two dozen
const SheetsDoor = lazy(() =>
  untilFetched(() => import('./sheets/sheets-door.tsx').then((m) => ({ default: m.SheetsDoor }))),
);

const BookMessage = (): ReactElement => {
  const { load, problems } = usePageState();
  const { words } = usePage();
  return (
    <div className="message" id="figures" tabIndex={-1} role="status">
      <p>{words.say(`page.${load}`)}</p>
      {load === 'absent' && (
        <p>
          <GoLink to="/">{words.say('page.absent.next')}</GoLink>{' '}
          <GoLink to="/new">{words.say('page.new')}</GoLink>
        </p>
      )}
      {load === 'unreadable' && (
        <ul>
          {problems.map((problem) => (
            <li key={problem.code + problem.path}>{words.problem(problem)}</li>
          ))}
        </ul>
      )}
    </div>
  );
};

/** The part of an address; what speaks of a book waits until it is there. */
const partOf = (route: Route, isReady: boolean): ReactElement => {
  if (route.page === 'sheets' || route.page === 'sheet') return <SheetsDoor route={route} />;
  if (route.page === 'new') return <NewDoor form={route.form} />;
  if (route.page === 'hall') return <HallDoor />;
  if (!isReady) return <BookMessage />;
  switch (route.page) {
    case 'compare':
      return <CompareDoor left={route.left} right={route.right} />;
    case 'utilities':
      return <UtilitiesDoor />;
    case 'fill':
      return <FillDoor step={route.step} />;
    case 'cycle':
      return <CycleDoor step={route.step} />;
    case 'proof':
      return <ProofDoor step={route.step} check={route.check} />;
    case 'joins':
      return <JoinsDoor step={route.step} join={route.join} />;
    case 'papers':
      return <PapersDoor />;
    case 'write':
      return <BookPage at={route.at} />;
    default:
      return <FloorsPage />;
  }
};

/** Where each key works the book out anew. */
const keysSetFiguresGoing: ReadonlySet<Route['page']> = new Set(['book', 'utilities', 'write']);

const Shown = ({ route }: { readonly route: Route }): ReactElement => {
  const load = usePagePart((state) => state.load);
  const { words } = usePage();
  useWarmUp(load === 'ready' && keysSetFiguresGoing.has(route.page));
  if (route.page === 'nowhere') return <p className="message">{words.say('page.noSuchPage')}</p>;
  return (
    <Suspense fallback={<p className="message">{words.say('page.loading')}</p>}>
      {partOf(route, load === 'ready')}
    </Suspense>
  );
};

/** The questions about a book, in the order of the navigation. */
const ofBook = [
  { page: 'utilities', name: 'page.utilities', to: utilitiesAddress },
  { page: 'fill', name: 'page.fill', to: fillAddress },
  { page: 'cycle', name: 'page.cycle', to: cycleAddress },
  { page: 'proof', name: 'page.proof', to: proofAddress },
  { page: 'joins', name: 'page.joins', to: joinsAddress },
  { page: 'papers', name: 'page.papers', to: papersAddress },
  { page: 'write', name: 'write.nav', to: bookPageAddress },
] as const;

/** Ctrl+Z outside a field undoes an edit of the book; inside one it belongs to the text. */
const useUndoKeys = (away: boolean): void => {
  const page = usePage();
  useEffect(() => {
    // where the book is not shown nothing of it changes unseen
    if (away) return undefined;
    const press = (event: KeyboardEvent): void => {
      const inField =
        event.target instanceof HTMLInputElement ||
        event.target instanceof HTMLSelectElement ||
        event.target instanceof HTMLTextAreaElement;
      if (inField || !(event.ctrlKey || event.metaKey)) return;
      const key = event.key.toLowerCase();
      if (key !== 'z' && key !== 'y') return;
      event.preventDefault();
      if (key === 'y' || event.shiftKey) redoEdit(page);
      else undoEdit(page);
    };
    window.addEventListener('keydown', press);
    return () => window.removeEventListener('keydown', press);
  }, [page, away]);
};

export const App = (): ReactElement => {
  const page = usePage();
  const id = usePagePart((state) => state.id);
  const titled = usePagePart(({ shown }) => shown?.about?.title);
  const { say } = page.words;
  const [route, setRoute] = useState(() => routeOf(window.location.pathname, window.location.search));
  useUndoKeys(route.page === 'new');
  const go = useCallback((address: string, how?: 'instead') => {
    if (how === 'instead') window.history.replaceState(null, '', address);
    else window.history.pushState(null, '', address);
    setRoute(routeOf(window.location.pathname, window.location.search));
    window.scrollTo(0, 0);
  }, []);
  useEffect(() => {
    const back = () => setRoute(routeOf(window.location.pathname, window.location.search));
    window.addEventListener('popstate', back);
    return () => window.removeEventListener('popstate', back);
  }, []);
  const ofRoute = 'id' in route ? route.id : undefined;
  // the address of no book is that of the one that is open
  const wanted = route.page === 'book' ? (ofRoute ?? '') : ofRoute;
  useEffect(() => {
    const { id: open, load } = page.state.get();
    // an address without a book is content with the one that is open
    if (load === 'ready' && (wanted === undefined || wanted === '' || wanted === open)) return;
    void loadBook(page, wanted === undefined || wanted === '' ? undefined : wanted);
  }, [page, wanted]);
  useEffect(() => {
    const title = route.page === 'new' ? say('page.new') : (titled ?? say('page.untitled'));
    document.title = say('page.title', { title });
  }, [say, titled, route.page]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: another page, and what was open beside the last one is shut
  useEffect(() => closeWorking(page), [page, route.page]);
  const home = id === '' ? '/' : `/books/${id}`;
  return (
    <GoContext value={go}>
      <a className="skip" href="#figures">
        {say('page.skip')}
      </a>
      {route.page === 'new' ? <NewHead /> : <PageHead />}
      <Notices />
      <div className="frame">
        <nav className="nav" aria-label={say('page.nav')}>
          <GoLink to={home} current={route.page === 'book'}>
            {say('page.floors')}
          </GoLink>
          {id !== '' &&
            ofBook.map(({ page: own, name, to }) => (
              <GoLink key={own} to={to(id)} current={route.page === own}>
                {say(name)}
              </GoLink>
            ))}
          <GoLink to="/sheets" current={route.page === 'sheets' || route.page === 'sheet'}>
            {say('page.sheets')}
          </GoLink>
          <GoLink to="/new" current={route.page === 'new'}>
            {say('page.new')}
          </GoLink>
          <GoLink to="/hall" current={route.page === 'hall'}>
            {say('page.hall')}
          </GoLink>
          <LanguageSelect />
        </nav>
        <main>
          <Shown route={route} />
        </main>
      </div>
    </GoContext>
  );
};
