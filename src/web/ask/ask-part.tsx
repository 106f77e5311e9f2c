import type { ReactElement } from 'react';
import type { Book } from '../../book/index.ts';
import type { FloorAssessment } from '../../floor/assessment.ts';
import { openFigure } from '../commands/open-working.ts';
import { floorClass } from '../floors/floor-class.ts';
import { figureName } from '../floors/verdict-text.ts';
import { CommaList } from '../shell/comma-list.tsx';
import { usePage } from '../state/page-context.ts';
import { assumedReadings, type FloorReading, floorReadings } from './next-readings.ts';
import { findingNames, readingPlace, readingSentence } from './reading-text.ts';

interface FloorProps {
  readonly book: Book;
  readonly floor: FloorAssessment;
}

/** One reading with what waits for it; each row that waits is a door to its working, where the answer is written. */
const Reading = ({ book, floor, reading }: FloorProps & { readonly reading: FloorReading }): ReactElement => {
  const page = usePage();
  const { words } = page;
  return (
    <li>
      <span>
        <b>{readingPlace(words, book, reading)}</b>
      </span>
      <span>{readingSentence(words, reading)}</span>
      <span className="small quiet">
        {words.say(reading.share === undefined ? 'ask.waits' : 'ask.narrows', {
          percent: words.percent(reading.share ?? 0),
          findings: '',
        })}
        <CommaList>
          {reading.findings.map((id) => (
            <button
              key={id}
              type="button"
              className="link"
              onClick={() => openFigure(page, { floor: floor.floor, id })}
            >
              {figureName(words, id)}
            </button>
          ))}
        </CommaList>
      </span>
    </li>
  );
};

const OfFloor = ({ book, floor }: FloorProps): ReactElement => {
  const { words } = usePage();
  const readings = floorReadings(book, floor);
  const assumed = assumedReadings(book, floor);
  return (
    <div>
      <h3 className={floorClass(book, floor.floor)}>{words.say('ask.of', { floor: floor.name })}</h3>
      {readings.length === 0 && <p className="quiet">{words.say('ask.none')}</p>}
      <ol className="asks">
        {readings.map((reading) => (
          <Reading key={reading.id + reading.paths[0]} book={book} floor={floor} reading={reading} />
        ))}
      </ol>
      <details className="assumed">
        <summary>{words.say('ask.assumed', { floor: floor.name })}</summary>
        {assumed.length === 0 ? (
          <p className="quiet">{words.say('ask.assumed.none')}</p>
        ) : (
          <table>
            <tbody>
              {assumed.map((reading) => (
                <tr key={reading.id + reading.paths[0]}>
                  <th scope="row">{readingPlace(words, book, reading)}</th>
                  <td>
                    {reading.share === undefined
                      ? words.say('ask.little')
                      : words.say('ask.widens', {
                          percent: words.percent(reading.share),
                          findings: findingNames(words, reading),
                        })}
                  </td>
                </tr>
              ))}
            </tbody>
          </table>
        )}
      </details>
    </div>
  );
};

/** Under the spine: for each floor which reading to ask for next, and what stands there on an assumption. */
export const AskPart = ({
  book,
  floors,
}: {
  readonly book: Book;
  readonly floors: readonly FloorAssessment[];
}): ReactElement => {
  const { words } = usePage();
  return (
    <section className="part" aria-label={words.say('ask.title')}>
      <h2>{words.say('ask.title')}</h2>
      <div className="pair">
        {floors.map((floor) => (
          <OfFloor key={floor.floor} book={book} floor={floor} />
        ))}
      </div>
    </section>
  );
};
