import { lazy, memo, type ReactElement, Suspense, useEffect, useRef } from 'react';
import { closeWorking } from '../commands/open-working.ts';
import { untilFetched } from '../shell/until-fetched.ts';
import { usePage, usePageState } from '../state/page-context.ts';
import { openedFigure } from './opened-figure.ts';

// with the sheets and their words it weighs more than the rest of the page
const PanelContent = lazy(() =>
  untilFetched(() => import('./panel-content.tsx').then((m) => ({ default: m.PanelContent }))),
);

/** The working of the figure that was pressed; Escape closes it and gives the focus back. */
export const WorkingPanel = memo((): ReactElement => {
  const page = usePage();
  const { opened, assessment } = usePageState();
  const at = openedFigure(assessment?.floors ?? [], opened);
  const ref = useRef<HTMLElement>(null);
  const opener = useRef<Element | null>(null);
  useEffect(() => {
    if (opened?.unasked === true) return;
    if (opened === undefined) {
      if (opener.current instanceof HTMLElement) opener.current.focus();
      opener.current = null;
      return;
    }
    const active = document.activeElement;
    if (ref.current?.contains(active) !== true && active !== document.body) opener.current = active;
    ref.current?.focus({ preventScroll: true });
    if (ref.current !== null) ref.current.scrollTop = 0;
  }, [opened]);
  return (
    <aside
      className={at === undefined ? 'panel empty' : 'panel'}
      ref={ref}
      tabIndex={-1}
      aria-label={page.words.say('working.title')}
      onKeyDown={(event) => {
        if (event.key === 'Escape') closeWorking(page);
      }}
    >
      <div className="panel-inner">
        {at === undefined || opened === undefined ? (
          <p className="quiet">{page.words.say('working.none')}</p>
        ) : (
          <Suspense fallback={<p className="quiet">{page.words.say('working.loading')}</p>}>
            <PanelContent at={at} opened={opened} />
          </Suspense>
        )}
      </div>
    </aside>
  );
});

WorkingPanel.displayName = 'WorkingPanel';
