import '@fontsource-variable/atkinson-hyperlegible-next/wght.css';
import './style/tokens.css';
import './style/base.css';
import './style/shell.css';
import './style/floors.css';
import './style/panel.css';
import './style/parts.css';
import './style/book.css';
import './style/ask.css';
import './style/new-book.css';
import './style/compare.css';
import './style/utilities.css';
import './style/found.css';
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { makeClient } from '../server/client.ts';
import type { Language } from '../text/index.ts';
import { App } from './app.tsx';
import { keepUnsaved } from './commands/keep-unsaved.ts';
import { openFirst } from './commands/open-first.ts';
import { saveEdits } from './commands/save-edits.ts';
import { followNewest } from './commands/settle-conflict.ts';
import { FaultDoor } from './shell/fault-door.tsx';
import { InLanguage, languageNote, speechOf } from './shell/in-language.tsx';
import { routeOf } from './shell/route.ts';
import { makeAhead } from './state/ahead.ts';
import { besideInWorker } from './state/beside-in-worker.ts';
import { compareInWorker } from './state/compare-in-worker.ts';
import { keepBlobs } from './state/kept-blobs.ts';
import { keepInBrowser } from './state/kept-edits.ts';
import { keepNotes } from './state/kept-notes.ts';
import { makeMediaQueue } from './state/media-queue.ts';
import { observe } from './state/observed.ts';
import type { Page } from './state/page.ts';
import { pageLocale } from './state/page-locale.ts';
import { emptyPage } from './state/page-state.ts';
import { randomId } from './state/random-id.ts';
import { solveInWorker } from './state/solve-in-worker.ts';
import { allWords } from './words/all-words.ts';
import { makeWords } from './words/words.ts';

const browser = window.navigator.language;
const localeOf = (chosen: Language): string => pageLocale({ asked: null, chosen, browser });

const start = async (): Promise<void> => {
  const notes = keepNotes({ local: window.localStorage, changes: window });
  const asked = new URLSearchParams(window.location.search).get('lang');
  const first = await speechOf(pageLocale({ asked, chosen: notes.read(languageNote), browser }));
  const catalogue = allWords();
  const words = makeWords(catalogue, first.locale, first.translation);
  document.documentElement.lang = first.translation?.language ?? 'en';
  const client = makeClient({
    fetch: (url, { headers, ...init }) => {
      // what the server refuses it refuses in the language that the page speaks now
      const language = { 'accept-language': document.documentElement.lang };
      return window.fetch(url, { ...init, headers: { ...(headers as Record<string, string>), ...language } });
    },
  });
  const later: Page['later'] = (run, milliseconds) => void setTimeout(run, milliseconds);
  const page: Page = {
    state: observe(emptyPage),
    client,
    keep: await keepInBrowser({
      local: window.localStorage,
      session: window.sessionStorage,
      locks: window.navigator.locks,
      newTab: () => randomId(crypto),
    }),
    notes,
    media: makeMediaQueue({ blobs: keepBlobs(window.indexedDB), client, later }),
    newId: () => randomId(crypto),
    random: (bytes) => crypto.getRandomValues(new Uint8Array(bytes)),
    subtle: crypto.subtle,
    words,
    solveRemedies: solveInWorker(
      () => new Worker(new URL('./remedy.worker.ts', import.meta.url), { type: 'module' }),
    ),
    compareBooks: compareInWorker(
      () => new Worker(new URL('./compare.worker.ts', import.meta.url), { type: 'module' }),
    ),
    setBeside: besideInWorker(
      () => new Worker(new URL('./found.worker.ts', import.meta.url), { type: 'module' }),
    ),
    now: () => new Date().toISOString(),
    later,
    ahead: makeAhead(later),
    author: words.say('page.author'),
    atLaptop: ['localhost', '127.0.0.1', '[::1]'].includes(window.location.hostname),
  };
  window.addEventListener('pagehide', () => keepUnsaved(page));
  window.addEventListener('online', () => void saveEdits(page));
  window.addEventListener('online', page.media.send);
  page.media.send();
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'visible') void followNewest(page);
  });
  openFirst(
    page,
    () =>
      routeOf(window.location.pathname, window.location.search).page === 'book' &&
      window.matchMedia('(min-width: 1081px)').matches,
  );
  const host = document.getElementById('page');
  if (host === null) return;
  createRoot(host).render(
    <StrictMode>
      <InLanguage page={page} catalogue={catalogue} first={first} localeOf={localeOf}>
        {(spoken) => (
          <FaultDoor words={spoken.words}>
            <App />
          </FaultDoor>
        )}
      </InLanguage>
    </StrictMode>,
  );
};

await start();
