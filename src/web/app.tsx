import { lazy, type ReactElement, Suspense, useCallback, useEffect, useState } from 'react';
import { loadBook } from './commands/load-book.ts';
import { closeWorking } from './commands/open-working.ts';
import { redoEdit, undoEdit } from './commands/undo-edit.ts';
import { NewHead } from './first-book/new-head.tsx';
import { FloorsPage } from './floors/floors-page.tsx';
import { GoContext, GoLink } from './shell/go-link.tsx';
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

const Shown = ({ route }: { readonly route: Route }): ReactElement => {
  const load = usePagePart((state) => state.load);
  const { words } = usePage();
  if (route.page === 'sheets' || route.page === 'sheet') {
    return (
      <Suspense fallback={<p className="message">{words.say('page.loading')}</p>}>
        <SheetsDoor route={route} />
      </Suspense>
    );
  }
  if (route.page === 'nowhere') return <p className="message">{words.say('page.noSuchPage')}</p>;
  if (route.page === 'new') {
    return (
      <Suspense fallback={<p className="message">{words.say('page.loading')}</p>}>
        <NewDoor form={route.form} />
      </Suspense>
    );
  }
  if (route.page === 'hall') {
    return (
      <Suspense fallback={<p className="message">{words.say('page.loading')}</p>}>
        <HallDoor />
      </Suspense>
    );
  }
  if (load === 'ready' && route.page === 'compare') {
    return (
      <Suspense fallback={<p className="message">{words.say('page.loading')}</p>}>
        <CompareDoor left={route.left} right={route.right} />
      </Suspense>
    );
  }
  if (load === 'ready' && route.page === 'utilities') {
    return (
      <Suspense fallback={<p className="message">{words.say('page.loading')}</p>}>
        <UtilitiesDoor />
      </Suspense>
    );
  }
  if (load === 'ready' && route.page === 'fill') {
    return (
      <Suspense fallback={<p className="message">{words.say('page.loading')}</p>}>
        <FillDoor step={route.step} />
      </Suspense>
    );
  }
  if (load === 'ready' && route.page === 'cycle') {
    return (
      <Suspense fallback={<p className="message">{words.say('page.loading')}</p>}>
        <CycleDoor step={route.step} />
      </Suspense>
    );
  }
  if (load === 'ready' && route.page === 'proof') {
    return (
      <Suspense fallback={<p className="message">{words.say('page.loading')}</p>}>
        <ProofDoor step={route.step} check={route.check} />
      </Suspense>
    );
  }
  if (load === 'ready' && route.page === 'joins') {
    return (
      <Suspense fallback={<p className="message">{words.say('page.loading')}</p>}>
        <JoinsDoor step={route.step} join={route.join} />
      </Suspense>
    );
  }
  if (load === 'ready' && route.page === 'papers') {
    return (
      <Suspense fallback={<p className="message">{words.say('page.loading')}</p>}>
        <PapersDoor />
      </Suspense>
    );
  }
  if (load === 'ready' && route.page === 'write') {
    return (
      <Suspense fallback={<p className="message">{words.say('page.loading')}</p>}>
        <BookPage at={route.at} />
      </Suspense>
    );
  }
  return load === 'ready' ? <FloorsPage /> : <BookMessage />;
};

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
  const wanted =
    route.page === 'book'
      ? (route.id ?? '')
      : route.page === 'write' ||
          route.page === 'utilities' ||
          route.page === 'fill' ||
          route.page === 'cycle' ||
          route.page === 'proof' ||
          route.page === 'papers' ||
          route.page === 'joins' ||
          route.page === 'compare'
        ? route.id
        : undefined;
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
          {id !== '' && (
            <GoLink to={utilitiesAddress(id)} current={route.page === 'utilities'}>
              {say('page.utilities')}
            </GoLink>
          )}
          {id !== '' && (
            <GoLink to={fillAddress(id)} current={route.page === 'fill'}>
              {say('page.fill')}
            </GoLink>
          )}
          {id !== '' && (
            <GoLink to={cycleAddress(id)} current={route.page === 'cycle'}>
              {say('page.cycle')}
            </GoLink>
          )}
          {id !== '' && (
            <GoLink to={proofAddress(id)} current={route.page === 'proof'}>
              {say('page.proof')}
            </GoLink>
          )}
          {id !== '' && (
            <GoLink to={joinsAddress(id)} current={route.page === 'joins'}>
              {say('page.joins')}
            </GoLink>
          )}
          {id !== '' && (
            <GoLink to={papersAddress(id)} current={route.page === 'papers'}>
              {say('page.papers')}
            </GoLink>
          )}
          {id !== '' && (
            <GoLink to={bookPageAddress(id)} current={route.page === 'write'}>
              {say('write.nav')}
            </GoLink>
          )}
          <GoLink to="/sheets" current={route.page === 'sheets' || route.page === 'sheet'}>
            {say('page.sheets')}
          </GoLink>
          <GoLink to="/new" current={route.page === 'new'}>
            {say('page.new')}
          </GoLink>
          <GoLink to="/hall" current={route.page === 'hall'}>
            {say('page.hall')}
          </GoLink>
        </nav>
        <main>
          <Shown route={route} />
        </main>
      </div>
    </GoContext>
  );
};
