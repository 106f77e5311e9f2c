import { type ReactElement, useRef } from 'react';
import { valueAt } from '../../book/index.ts';
import type { Finding } from '../../floor/assessment.ts';
import { QuantityField } from '../field/quantity-field.tsx';
import { usePagePart, useWords } from '../state/page-context.ts';
import { isEditable } from '../working/is-editable.ts';
import { type NextReading, nextReadings } from './next-readings.ts';
import { readingPlace, readingSentence } from './reading-text.ts';

/** More than these and one reads on instead of asking. */
const told = 3;
/** Fields of one reading that are offered at once; the lanes of a long row stand in their own table. */
const fields = 4;

/** The readings as they were when the person began to write the answer to one: its field must not vanish meanwhile. */
const useStanding = (finding: Finding, now: readonly NextReading[]): readonly NextReading[] => {
  const typing = usePagePart((state) => state.typing?.path);
  const before = useRef({ finding: finding.id, readings: now });
  const held =
    before.current.finding === finding.id &&
    typing !== undefined &&
    before.current.readings.some(({ paths }) => paths.includes(typing));
  if (!held) before.current = { finding: finding.id, readings: now };
  return before.current.readings;
};

/** For a finding that is not decided: which single reading settles most, how to take it, and where to write it. */
export const AskNext = ({ finding }: { readonly finding: Finding }): ReactElement | null => {
  const words = useWords();
  const shown = usePagePart((state) => state.shown);
  const readings = useStanding(
    finding,
    shown === undefined ? [] : nextReadings(shown, finding).slice(0, told),
  );
  if (readings.length === 0 || shown === undefined) return null;
  return (
    <section className="ask" aria-label={words.say('ask.title')}>
      {readings.map((reading, i) => (
        <div className="ask-one" key={reading.id + reading.paths[0]}>
          {i < 2 && <h3>{words.say(i === 0 ? 'ask.first' : 'ask.then')}</h3>}
          <p>{readingSentence(words, reading)}</p>
          <p className="small quiet">
            {reading.share === undefined
              ? words.say(i === 0 ? 'ask.needed' : 'ask.missing')
              : words.say('ask.share', { percent: words.percent(reading.share) })}
          </p>
          <dl className="inputs">
            {reading.paths
              .filter((path) => isEditable(valueAt(shown, path)))
              .slice(0, fields)
              .map((path) => (
                <div key={path}>
                  <dt>{words.placeName(shown, path)}</dt>
                  <dd>
                    <QuantityField path={path} label={words.placeName(shown, path)} />
                  </dd>
                </div>
              ))}
          </dl>
          {reading.paths.every((path) => !isEditable(valueAt(shown, path))) && (
            <p className="small">{readingPlace(words, shown, reading)}</p>
          )}
        </div>
      ))}
    </section>
  );
};
