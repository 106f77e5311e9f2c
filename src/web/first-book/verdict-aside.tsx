import { type ReactElement, type ReactNode, useEffect, useState } from 'react';
import type { Finding } from '../../floor/assessment.ts';
import { narrowingReadings } from '../ask/next-readings.ts';
import { readingPlace, readingSentence } from '../ask/reading-text.ts';
import { figureName, verdictText } from '../floors/verdict-text.ts';
import { holdText } from '../line/hold-sentence.tsx';
import { CommaList } from '../shell/comma-list.tsx';
import { usePagePart, useWords } from '../state/page-context.ts';
import type { FirstVerdict } from './answers-verdict.ts';

/** Long enough that a reader hears the verdict once the typing rests, not at every key. */
const rest = 700;
/** Readings that are told: what comes after them hardly narrows. */
const told = 3;

const useRested = (text: string): string => {
  const [said, setSaid] = useState('');
  useEffect(() => {
    const timer = setTimeout(() => setSaid(text), rest);
    return () => clearTimeout(timer);
  }, [text]);
  return said;
};

const useVerdictText = (verdict: FirstVerdict) => {
  const words = useWords();
  const units = usePagePart((state) => state.units);
  const show = { units, book: verdict.book, bottles: true };
  return (finding: Finding): string => {
    const text = verdictText(words, finding, show);
    return finding.ifSaid && finding.verdict !== 'unknown'
      ? words.say('working.ifSaid', { verdict: text })
      : text;
  };
};

const Rate = ({
  verdict,
  rate,
}: {
  readonly verdict: FirstVerdict;
  readonly rate: Finding;
}): ReactElement => {
  const words = useWords();
  const units = usePagePart((state) => state.units);
  const show = { units, book: verdict.book, bottles: true };
  const { have } = rate;
  const text = useVerdictText(verdict);
  const quantity = (value: number) => words.quantity(value, have.kind, { ...show, digits: 3 });
  const shown = have.value === undefined ? undefined : quantity(have.value);
  return (
    <>
      <p className="big" data-verdict={rate.verdict}>
        {shown === undefined ? (
          words.say('heads.unknown')
        ) : (
          <>
            {shown.number} <span className="unit">{shown.unit}</span>
          </>
        )}
      </p>
      {have.low !== undefined && have.high !== undefined && have.high > have.low && (
        <p className="quiet">
          {words.say('working.interval', { low: quantity(have.low).text, high: quantity(have.high).text })}
        </p>
      )}
      <p className={rate.verdict === 'short' ? 'verdict short' : 'verdict'}>{text(rate)}</p>
    </>
  );
};

/** Readings that narrow the rate most, each with how to take it. */
const Narrowing = ({ verdict, rate }: { readonly verdict: FirstVerdict; readonly rate: Finding }) => {
  const words = useWords();
  const { book } = verdict;
  const readings = book === undefined ? [] : narrowingReadings(book, rate).slice(0, told);
  if (book === undefined || readings.length === 0) return null;
  return (
    <section className="narrowing" aria-label={words.say('first.narrow')}>
      <h3>{words.say('first.narrow')}</h3>
      <ol className="asks">
        {readings.map((reading) => (
          <li key={reading.id + reading.paths[0]}>
            <span>
              <b>{readingPlace(words, book, reading)}</b>{' '}
              <span className="quiet small">
                {words.say(reading.assumed ? 'first.share.assumed' : 'ask.share', {
                  percent: words.percent(reading.share ?? 0),
                })}
              </span>
            </span>
            <span className="small">{readingSentence(words, reading)}</span>
          </li>
        ))}
      </ol>
    </section>
  );
};

export interface VerdictAsideProps {
  readonly verdict: FirstVerdict;
  /** The button that makes the book, and what came of it. */
  readonly children: ReactNode;
}

/** What the answers so far say of the site, beside the form and always in sight. */
export const VerdictAside = ({ verdict, children }: VerdictAsideProps): ReactElement => {
  const words = useWords();
  const units = usePagePart((state) => state.units);
  const { say } = words;
  const { rate, open, floor, book } = verdict;
  const text = useVerdictText(verdict);
  const known = rate?.have.value !== undefined;
  const sentence = rate === undefined ? say('first.noVerdict') : text(rate);
  const said = useRested(sentence);
  const alsoShort = known
    ? (floor?.findings ?? []).filter((each) => each.verdict === 'short' && each.id !== rate.id)
    : [];
  const goTo = (id: string): void => document.querySelector<HTMLElement>(`[data-question="${id}"]`)?.focus();
  return (
    <aside className="first-verdict" aria-label={say('first.verdict')}>
      <div className="first-inner">
        <h2>{say('first.verdict')}</h2>
        {rate === undefined || !known ? (
          <p className="big">{say('heads.unknown')}</p>
        ) : (
          <Rate verdict={verdict} rate={rate} />
        )}
        <p className="said" aria-live="polite">
          {said}
        </p>
        {known && floor?.hold !== undefined && book !== undefined && (
          <p className="quiet">{holdText(words, floor.hold, units, book)}</p>
        )}
        {open.length === 0 ? (
          <p className="stands">{say(known ? 'first.stands' : 'first.allTwelve')}</p>
        ) : (
          <p className="open">
            {say('first.open', { n: open.length })}{' '}
            <CommaList>
              {open.map((id) => (
                <button key={id} type="button" className="link" onClick={() => goTo(id)}>
                  {words.fieldName(id)}
                </button>
              ))}
            </CommaList>
          </p>
        )}
        {alsoShort.length > 0 && (
          <p className="short">
            {say('first.alsoShort', {
              findings: alsoShort.map(({ id }) => figureName(words, id)).join(', '),
            })}
          </p>
        )}
        {rate !== undefined && known && <Narrowing verdict={verdict} rate={rate} />}
        <p className="count">
          {say('first.count', { answered: verdict.answered.length, asked: verdict.questions.length })}
        </p>
        {children}
      </div>
    </aside>
  );
};
