import { type ReactElement, useCallback, useEffect, useState } from 'react';
import { loadBook } from './commands/load-book.ts';
import { closeWorking } from './commands/open-working.ts';
import { redoEdit, undoEdit } from './commands/undo-edit.ts';
import { NewHead } from './first-book/new-head.tsx';
import { FloorsPage } from './floors/floors-page.tsx';
import { coming } from './shell/coming.ts';
import { ComingPart } from './shell/coming-part.tsx';
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
import { usePage, usePagePart, usePageState } from './state/page-context.ts';
import { useBegun } from './state/use-begun.ts';
import { useWarmUp } from './state/use-warm-up.ts';

// one writes a book now and then: the figures stand without waiting for it
const BookPage = coming(() => import('./book-page/book-page.tsx').then((m) => m.BookPage));

const UtilitiesDoor = coming(() => import('./utilities/utilities-door.tsx').then((m) => m.UtilitiesDoor));
const FillDoor = coming(() => import('./fill/fill-door.tsx').then((m) => m.FillDoor));
const CycleDoor = coming(() => import('./cycle/cycle-door.tsx').then((m) => m.CycleDoor));
const ProofDoor = coming(() => import('./proof/proof-door.tsx').then((m) => m.ProofDoor));
const JoinsDoor = coming(() => import('./joins/joins-door.tsx').then((m) => m.JoinsDoor));
const HallDoor = coming(() => import('./hall/hall-door.tsx').then((m) => m.HallDoor));
const PapersDoor = coming(() => import('./papers/papers-door.tsx').then((m) => m.PapersDoor));
const NewDoor = coming(() => import('./first-book/new-door.tsx').then((m) => m.NewDoor));
const CompareDoor = coming(() => import('./compare/compare-door.tsx').then((m) => m.CompareDoor));

// a hundred sheets and their words, of which a floor opens two dozen
const SheetsDoor = coming(() => import('./sheets/sheets-door.tsx').then((m) => m.SheetsDoor));

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
  if (route.page === 'sheets' || route.page === 'sheet')
    return <ComingPart of={SheetsDoor} give={{ route }} />;
  if (route.page === 'new') return <ComingPart of={NewDoor} give={{ form: route.form }} />;
  if (route.page === 'hall') return <ComingPart of={HallDoor} give={{}} />;
  if (!isReady) return <BookMessage />;
  switch (route.page) {
    case 'compare':
      return <ComingPart of={CompareDoor} give={{ left: route.left, right: route.right }} />;
    case 'utilities':
      return <ComingPart of={UtilitiesDoor} give={{}} />;
    case 'fill':
      return <ComingPart of={FillDoor} give={{ step: route.step }} />;
    case 'cycle':
      return <ComingPart of={CycleDoor} give={{ step: route.step }} />;
    case 'proof':
      return <ComingPart of={ProofDoor} give={{ step: route.step, check: route.check }} />;
    case 'joins':
      return <ComingPart of={JoinsDoor} give={{ step: route.step, join: route.join }} />;
    case 'papers':
      return <ComingPart of={PapersDoor} give={{}} />;
    case 'write':
      return <ComingPart of={BookPage} give={{ at: route.at }} />;
    default:
      return <FloorsPage />;
  }
};

/** Where each key works the book out anew. */
const keysSetFiguresGoing: ReadonlySet<Route['page']> = new Set(['book', 'utilities', 'write']);

const Shown = ({ route }: { readonly route: Route }): ReactElement => {
  const load = usePagePart((state) => state.load);
  const { words } = usePage();
  useBegun(route.page, load === 'ready');
  useWarmUp(load === 'ready' && keysSetFiguresGoing.has(route.page));
  if (route.page === 'nowhere') return <p className="message">{words.say('page.noSuchPage')}</p>;
  return partOf(route, load === 'ready');
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
