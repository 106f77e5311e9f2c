import { memo, type ReactElement, useDeferredValue, useId, useRef, useState } from 'react';
import type { FloorAssessment } from '../../floor/assessment.ts';
import { type OpenQuestion, openQuestions } from '../../floor/questions/index.ts';
import { LeafField } from '../book-page/leaf-field.tsx';
import { isLeaf, placeAt } from '../book-page/place-at.ts';
import { floorClass } from '../floors/floor-class.ts';
import { GoLink } from '../shell/go-link.tsx';
import { bookPageAddress } from '../shell/route.ts';
import { usePage, usePagePart } from '../state/page-context.ts';
import { AnswersPart } from './answers-part.tsx';
import { ownPlace } from './own-place.ts';
import { settledText } from './settled-rows.ts';

/** Questions that stand there before one asks for all: an engineer sends or answers a few at a time. */
const few = 4;

/** The part of the book in which a place stands. */
const partOf = (path: string): string => path.replace(/\/[^/]+$/, '');

const Question = ({ question }: { readonly question: OpenQuestion }): ReactElement => {
  const page = usePage();
  const { words } = page;
  const id = usePagePart((state) => state.id);
  const book = usePagePart((state) => state.book);
  const place = placeAt(book, question.path);
  const name = book === undefined ? question.path : ownPlace(words, book, question.path);
  const label = book === undefined ? name : words.placeName(book, question.path);
  return (
    <li className="asked-one" data-question={question.path}>
      <span className="asked">
        <GoLink to={bookPageAddress(id, partOf(question.path))}>{name}</GoLink>
      </span>
      <span className="written">
        {place !== undefined && isLeaf(place.form) && place.form.is !== 'row' ? (
          <LeafField path={question.path} place={place} label={label} small />
        ) : (
          <GoLink to={bookPageAddress(id, question.path)}>{words.say('utilities.ask.part')}</GoLink>
        )}
      </span>
      <span className="small quiet">
        {settledText(words, question)}
        {question.who === 'builder' && `; ${words.say('utilities.ask.builder')}`}
      </span>
    </li>
  );
};

/** The questions as they stood when the person began to answer one: its field must not vanish meanwhile. */
const useStanding = (now: readonly OpenQuestion[]): readonly OpenQuestion[] => {
  const typing = usePagePart((state) => state.typing?.path);
  const before = useRef(now);
  const held = typing !== undefined && before.current.some(({ path }) => path === typing);
  if (!held) before.current = now;
  return before.current;
};

export interface AskSiteProps {
  readonly floor: FloorAssessment;
}

/** What to ask a floor next: the answers that settle most first, each to be written where it is asked. */
export const AskSite = memo(({ floor }: AskSiteProps): ReactElement => {
  const page = usePage();
  const { say } = page.words;
  const id = useId();
  const [all, setAll] = useState(false);
  const { shown, assessment } = page.state.get();
  const open =
    shown === undefined || assessment === undefined ? [] : openQuestions(shown, assessment, floor.floor);
  const standing = useStanding(open);
  const told = all ? standing : standing.slice(0, few);
  return (
    <section className="ask-site" aria-labelledby={id}>
      <h3 id={id} className={shown === undefined ? undefined : floorClass(shown, floor.floor)}>
        {say('utilities.ask', { floor: floor.name })}
      </h3>
      {standing.length === 0 && <p className="quiet small">{say('utilities.ask.none')}</p>}
      <ol>
        {told.map((question) => (
          <Question key={question.path} question={question} />
        ))}
      </ol>
      {standing.length > few && (
        <button type="button" className="link" aria-expanded={all} onClick={() => setAll(!all)}>
          {say(all ? 'utilities.ask.few' : 'utilities.ask.all', { n: all ? few : standing.length })}
        </button>
      )}
      <AnswersPart floor={floor} />
    </section>
  );
});

AskSite.displayName = 'AskSite';

/** The questions of the facing floors; they follow a key when the browser has time for it. */
export const AskSites = ({ floors }: { readonly floors: readonly FloorAssessment[] }): ReactElement => {
  const later = useDeferredValue(floors);
  return (
    <div className="pair asks-sites">
      {later.map((floor) => (
        <AskSite key={floor.floor} floor={floor} />
      ))}
    </div>
  );
};
