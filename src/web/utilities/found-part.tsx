import { type ReactElement, useEffect, useMemo, useState } from 'react';
import type { Book } from '../../book/index.ts';
import type { FloorAssessment } from '../../floor/assessment.ts';
import { bookAsFound } from '../../floor/found/index.ts';
import type { RecordedReading } from '../../record/readings.ts';
import { focusSoon } from '../book-page/write-context.ts';
import { floorClass } from '../floors/floor-class.ts';
import type { BesideAnswer } from '../state/page.ts';
import { usePage, usePagePart } from '../state/page-context.ts';
import { useFound } from './found-basis.tsx';
import { correctedBy, earlierOf } from './found-before.ts';
import { FoundForm } from './found-form.tsx';
import { FoundPlace } from './found-place.tsx';
import { FoundTakeBack } from './found-take-back.tsx';
import { typedText } from './found-text.ts';
import { ownPlace } from './own-place.ts';

/** What each reading does is worked out when the typing rests. */
const rest = 400;

const useBeside = (
  book: Book | undefined,
  readings: readonly RecordedReading[],
): BesideAnswer | undefined => {
  const { setBeside } = usePage();
  const [answer, setAnswer] = useState<BesideAnswer>();
  useEffect(() => {
    if (book === undefined || readings.length === 0) return undefined;
    let giveUp = (): void => undefined;
    const timer = setTimeout(() => {
      giveUp = setBeside({ book, readings }, setAnswer);
    }, rest);
    return () => {
      clearTimeout(timer);
      giveUp();
    };
  }, [setBeside, book, readings]);
  return answer;
};

interface FloorPartProps {
  readonly floor: FloorAssessment;
  readonly book: Book;
  readonly answer: BesideAnswer | undefined;
}

const FloorPart = ({ floor, book, answer }: FloorPartProps): ReactElement => {
  const page = usePage();
  const { say } = page.words;
  const { readings, records } = useFound();
  const [open, setOpen] = useState<'new' | RecordedReading>();
  const [told, setTold] = useState('');
  const own = useMemo(() => readings.filter((one) => one.floor === floor.floor), [readings, floor.floor]);
  const { laid, refused } = useMemo(() => bookAsFound(book, own), [book, own]);
  const places = answer === undefined || answer === 'failed' ? [] : answer.places;
  const floorPath = `/floors/${(book.floors ?? []).findIndex(({ tag }) => tag === floor.floor)}`;
  const close = (kept = ''): void => {
    setOpen(undefined);
    setTold(kept);
    focusSoon(`[data-read="${floor.floor}"]`);
  };
  // what differs most stands first, as soon as that is known
  const rank = (path: string): number => {
    const at = places.findIndex((place) => place.path === path);
    return at < 0 ? places.length : at;
  };
  return (
    <section className={floorClass(book, floor.floor)}>
      <h3>{say('found.floor', { floor: floor.name })}</h3>
      {open === undefined ? (
        <button
          type="button"
          data-read={floor.floor}
          aria-label={say('found.write.of', { floor: floor.name })}
          onClick={() => setOpen('new')}
        >
          {say('found.write')}
        </button>
      ) : (
        <FoundForm
          key={open === 'new' ? 'new' : open.id}
          floor={floor}
          corrects={open === 'new' ? undefined : open}
          close={close}
        />
      )}
      {open !== undefined && open !== 'new' && (
        <FoundTakeBack
          key={`back ${open.id}`}
          reading={open}
          place={ownPlace(page.words, book, `${floorPath}/${open.of}`)}
          value={typedText(open)}
          close={close}
        />
      )}
      <p role="status" className="small quiet">
        {told}
      </p>
      {own.length === 0 && <p className="quiet">{say('found.none')}</p>}
      <ul className="found-list">
        {[...laid]
          .sort((a, b) => rank(a.path) - rank(b.path))
          .map(({ path, reading }) => {
            const counted = reading as RecordedReading;
            const one = places.find((place) => place.path === path && sameReading(place.reading, counted));
            return (
              <FoundPlace
                key={path}
                path={path}
                reading={counted}
                one={one}
                before={[
                  ...correctedBy(records, counted.id).map((old) => ({ reading: old, corrected: true })),
                  ...earlierOf(own, counted).map((old) => ({ reading: old, corrected: false })),
                ]}
                correct={() => setOpen(counted)}
              />
            );
          })}
      </ul>
      {refused.map(({ reading, problems }) => (
        <div key={(reading as RecordedReading).id} className="found-refused">
          <p>
            <b>
              {reading.of}: {typedText(reading)}
            </b>{' '}
            <button
              type="button"
              className="link"
              aria-label={say('found.correct.of', { place: reading.of })}
              onClick={() => setOpen(reading as RecordedReading)}
            >
              {say('found.correct')}
            </button>
          </p>
          <p className="small">
            <span className="short">{say('found.refused')}</span>
            {': '}
            {[...new Set(problems.map(page.words.problem))].join(' ')}
          </p>
        </div>
      ))}
      {answer === 'failed' && <p className="problem">{say('found.failed')}</p>}
    </section>
  );
};

/** An answer of the worker is a copy: it belongs to a reading by its content. */
const sameReading = (a: object, b: RecordedReading): boolean => 'id' in a && a.id === b.id;

/** What was stated of each floor and what was read there, beside each other. */
export const FoundPart = ({
  floors,
}: {
  readonly floors: readonly FloorAssessment[];
}): ReactElement | null => {
  const { say } = usePage().words;
  const { readings } = useFound();
  const book = usePagePart((state) => state.book);
  const answer = useBeside(book, readings);
  if (book === undefined) return null;
  return (
    <section className="part found" id="found" aria-labelledby="found-title">
      <h2 id="found-title">{say('found.title')}</h2>
      <p className="small quiet">{say('found.about')}</p>
      <div className="found-floors">
        {floors.map((floor) => (
          <FloorPart key={floor.floor} floor={floor} book={book} answer={answer} />
        ))}
      </div>
    </section>
  );
};
