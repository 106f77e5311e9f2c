import type { ReactElement } from 'react';
import type { PromisedAndFound } from '../../floor/found/index.ts';
import type { RecordedReading } from '../../record/readings.ts';
import { usePage, usePagePart } from '../state/page-context.ts';
import {
  circumstances,
  foundValue,
  momentText,
  promisedValue,
  promiseText,
  rateMoved,
  shiftLines,
  typedText,
} from './found-text.ts';
import { ownPlace } from './own-place.ts';

export interface FoundPlaceProps {
  readonly path: string;
  readonly reading: RecordedReading;
  /** What it does; absent while that is worked out. */
  readonly one: PromisedAndFound | undefined;
  /** Readings of the place that no longer count. */
  readonly before: readonly { readonly reading: RecordedReading; readonly corrected: boolean }[];
  readonly correct: () => void;
}

const Moved = ({ one }: { readonly one: PromisedAndFound }): ReactElement => {
  const page = usePage();
  const { words } = page;
  const { say } = words;
  const units = usePagePart((state) => state.units);
  const book = page.state.get().book;
  const owner = say(`found.owner.${one.owner}`);
  const part = (touches: 'washing' | 'margin') => {
    const lines = shiftLines(words, one, touches);
    return (
      <>
        <dt>{say(`found.touches.${touches}`)}</dt>
        <dd>
          {lines.length === 0 && <span className="quiet">{say('found.still')}</span>}
          {lines.map(({ id, name, change, turns }) => (
            <span key={id} className={turns ? 'line turns' : 'line'}>
              {name} {change !== undefined && <span>{change}</span>}
            </span>
          ))}
        </dd>
      </>
    );
  };
  return (
    <dl>
      <dt>{say('found.touches.rate')}</dt>
      <dd>{rateMoved(words, one, { units, book })}</dd>
      {part('washing')}
      {part('margin')}
      <dt>{say('found.owner')}</dt>
      <dd>{one.who === undefined ? owner : say('found.owner.who', { owner, who: one.who })}</dd>
    </dl>
  );
};

/** One place: what was promised, what was read there, what the difference does and whose it is. */
export const FoundPlace = ({ path, reading, one, before, correct }: FoundPlaceProps): ReactElement | null => {
  const page = usePage();
  const { words } = page;
  const { say } = words;
  const units = usePagePart((state) => state.units);
  const book = usePagePart((state) => state.book);
  if (book === undefined) return null;
  const place = ownPlace(words, book, path);
  const promise = promiseText(words, book, path);
  const typed = typedText(reading);
  // both in one unit, so that they can be compared
  const told = (one && promisedValue(words, one, { units, book })) ?? promise;
  const found = one === undefined ? typed : foundValue(words, one, { units, book });
  const judged =
    one === undefined ? undefined : promise === undefined ? 'new' : one.differs ? 'differs' : 'agrees';
  return (
    <li className="found-place" data-found-place={path} data-judged={judged}>
      <div className="found-head">
        <h4>{place}</h4>
        {judged !== undefined && <span className={judged}>{say(`found.${judged}`)}</span>}
        <button
          type="button"
          className="link"
          data-correct={reading.id}
          aria-label={say('found.correct.of', { place })}
          onClick={correct}
        >
          {say('found.correct')}
        </button>
      </div>
      <dl>
        <dt>{say('found.promised')}</dt>
        <dd>{told ?? <span className="quiet">{say('found.unsaid')}</span>}</dd>
        <dt>{say('found.found')}</dt>
        <dd>
          <b>{found}</b>
          <span className="line small quiet">
            {found === typed ? '' : `${typed}; `}
            {circumstances(words, reading)}
          </span>
          {before.map(({ reading: old, corrected }) => (
            <span key={old.id} className="line small quiet">
              {say(corrected ? 'found.before.corrected' : 'found.before.earlier', {
                value: typedText(old),
                at: momentText(words, old.at),
              })}
            </span>
          ))}
        </dd>
      </dl>
      {one === undefined ? <p className="quiet">{say('found.working')}</p> : <Moved one={one} />}
    </li>
  );
};
