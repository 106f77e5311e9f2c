import type { ReactElement } from 'react';
import { AskNext } from '../ask/ask-next.tsx';
import { closeWorking, followOrigin, goBackTo } from '../commands/open-working.ts';
import { floorClass } from '../floors/floor-class.ts';
import { figureName, findingQuantity, verdictText } from '../floors/verdict-text.ts';
import { useFindSheet } from '../sheets/sheet-context.ts';
import { WholeWords } from '../sheets/whole-words.tsx';
import { usePage, usePageState } from '../state/page-context.ts';
import type { Opened } from '../state/page-state.ts';
import { marginText } from '../utilities/margin-text.ts';
import { BookValue } from './book-value.tsx';
import type { OpenedFigure } from './opened-figure.ts';
import { Remedies } from './remedies.tsx';
import { UtilityWords } from './utility-words.tsx';
import { WidthCauses } from './width-causes.tsx';
import { WorkingBody } from './working-body.tsx';
import { OpenPlaces } from './working-inputs.tsx';

const useTitle = (): ((opened: Opened) => string) => {
  const { words } = usePage();
  const { assessment } = usePageState();
  return (opened) => {
    if (opened.working === undefined && opened.id !== undefined) return figureName(words, opened.id);
    const floor = assessment?.floors.find((one) => one.floor === opened.floor);
    return words.say(`sheet.${floor?.workingAt(opened.working ?? -1)?.sheet ?? ''}.title`);
  };
};

const Trail = (): ReactElement | null => {
  const page = usePage();
  const { trail } = usePageState();
  const title = useTitle();
  if (trail.length === 0) return null;
  return (
    <nav aria-label={page.words.say('working.trail')}>
      <ol className="trail">
        {trail.map((step, i) => (
          <li key={JSON.stringify(step)}>
            <button type="button" className="link" onClick={() => goBackTo(page, i)}>
              {title(step)}
            </button>
          </li>
        ))}
      </ol>
    </nav>
  );
};

/** Asked, has, margin and interval of the finding that is opened. */
const Measure = ({ at }: { readonly at: OpenedFigure }): ReactElement | null => {
  const page = usePage();
  const { units, shown } = usePageState();
  const { words } = page;
  const figure = at.finding?.have ?? at.figure;
  if (figure === undefined) return null;
  const text = (value: number | undefined, kind = figure.kind) =>
    value === undefined
      ? words.say('verdict.unknown')
      : findingQuantity(words, value, kind, { units, book: shown, bottles: true }).text;
  const demand = at.finding?.demand;
  const said = at.finding?.said ?? (at.drawn?.said === undefined ? undefined : { have: at.drawn.said });
  const asked =
    at.finding?.said?.demand ?? (demand?.value === undefined ? undefined : text(demand.value, demand.kind));
  const margin = at.finding === undefined ? undefined : marginText(words, at.finding, { units, book: shown });
  return (
    <p className="measure">
      <span>
        {words.say('working.has')}{' '}
        <b>{figure.value === undefined ? (said?.have ?? text(undefined)) : text(figure.value)}</b>
        {figure.value !== undefined && said?.have !== undefined && ` (${said.have})`}
      </span>
      {demand !== undefined && (said === undefined || asked !== undefined) && (
        <span>
          {words.say('working.asked')}{' '}
          {demand.working === undefined ? (
            <b>{asked ?? text(undefined)}</b>
          ) : (
            <button
              type="button"
              className="link"
              onClick={() => followOrigin(page, { floor: at.floor.floor, working: demand.working ?? 0 })}
            >
              {asked ?? text(undefined)}
            </button>
          )}
        </span>
      )}
      {at.finding !== undefined && (
        <span className={at.finding.ifSaid ? undefined : 'said'}>
          {at.finding.ifSaid && at.finding.verdict !== 'unknown'
            ? words.say('working.ifSaid', { verdict: words.say(`verdict.${at.finding.verdict}`) })
            : verdictText(words, at.finding, { units, book: shown })}
        </span>
      )}
      {margin !== undefined && <span className="quiet">{margin}</span>}
      {figure.low !== undefined && figure.high !== undefined && figure.high > figure.low && (
        <span className="quiet">
          {words.say('working.interval', { low: text(figure.low), high: text(figure.high) })}
        </span>
      )}
    </p>
  );
};

/** Findings about pressure parts carry the caution that their figures only advise. */
const cautioned = new Set(['surge', 'surgePressure', 'manifoldPressure']);

const Content = ({ at, opened }: { readonly at: OpenedFigure; readonly opened: Opened }): ReactElement => {
  const page = usePage();
  const { shown } = usePageState();
  const { say } = page.words;
  const title = useTitle();
  const findSheet = useFindSheet();
  const sheet = at.working === undefined ? undefined : findSheet(at.working.sheet);
  const figure = at.finding?.have ?? at.figure;
  const direct = opened.working === undefined;
  return (
    <>
      <Trail />
      <div className="panel-head">
        <h2 id="working-title">{title(opened)}</h2>
        <button type="button" onClick={() => closeWorking(page)}>
          {say('working.close')}
        </button>
      </div>
      <span className={`floor-tag ${shown === undefined ? '' : floorClass(shown, at.floor.floor)}`}>
        {at.floor.name}
      </span>
      {direct && <Measure at={at} />}
      {direct && figure?.path !== undefined && (
        <BookValue path={figure.path} worked={at.working !== undefined} />
      )}
      <div className="panel-columns">
        {at.working !== undefined && sheet !== undefined ? (
          <WorkingBody floor={at.floor} working={at.working} sheet={sheet} />
        ) : (
          <p className="quiet">
            {say(at.finding?.said === undefined ? 'working.noWorking' : 'working.words')}
          </p>
        )}
        <div>
          {direct && figure !== undefined && (
            <>
              {at.finding !== undefined && <AskNext key={at.finding.id} finding={at.finding} />}
              {at.finding === undefined && (
                <OpenPlaces paths={figure.missing} title={say('working.missing')} />
              )}
              <OpenPlaces paths={figure.assumed} title={say('spine.assumed')} />
            </>
          )}
          {direct &&
            (at.finding?.notes ?? []).map((note) => (
              <p className="small" key={note.code}>
                {page.words.note(note)}
              </p>
            ))}
          {direct && <UtilityWords at={at} />}
          {direct && at.id !== undefined && cautioned.has(at.id) && (
            <p className="small quiet">{say('caution.pressure')}</p>
          )}
          {direct && at.finding !== undefined && <Remedies floor={at.floor.floor} finding={at.finding} />}
          {direct && at.finding !== undefined && at.finding.verdict !== 'unknown' && (
            <WidthCauses finding={at.finding} />
          )}
        </div>
      </div>
    </>
  );
};

/** What the panel shows, with the sheets and the words of every discipline: fetched once the figures stand. */
export const PanelContent = (props: Parameters<typeof Content>[0]): ReactElement => (
  <WholeWords>
    <Content {...props} />
  </WholeWords>
);
