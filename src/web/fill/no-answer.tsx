import type { ReactElement } from 'react';
import { GoLink } from '../shell/go-link.tsx';
import { bookPageAddress, fillAddress } from '../shell/route.ts';
import { usePagePart, useWords } from '../state/page-context.ts';
import type { Words } from '../words/words.ts';
import type { FillAnswer } from './fill-answer.ts';
import { useAnswer } from './with-answer.tsx';

type None = FillAnswer['none'][number];

const partOf = (place: string): string => place.split('/').slice(0, 4).join('/');

const noneText = (words: Words, none: None, nameOf: (floor: string) => string): string => {
  const parts =
    'floor' in none ? { floor: nameOf(none.floor) } : 'lanes' in none ? { lanes: none.lanes.join(', ') } : {};
  return words.say(`answer.none.${none.code}`, parts);
};

/** Why there is no answer yet, each with the way to what would give it. */
export const NoAnswerLines = ({
  codes,
}: {
  readonly codes?: readonly None['code'][];
}): ReactElement | null => {
  const words = useWords();
  const { say } = words;
  const id = usePagePart((state) => state.id);
  const book = usePagePart((state) => state.book);
  const { answer, failed, working } = useAnswer();
  const nameOf = (tag: string): string => book?.floors?.find((floor) => floor.tag === tag)?.name ?? tag;
  if (failed) return <p className="problem">{say('answer.failed')}</p>;
  if (answer === undefined) return <p className="quiet">{say('answer.working')}</p>;
  const shown = answer.none.filter(({ code }) => codes === undefined || codes.includes(code));
  return (
    <>
      {working && (
        <p className="said" role="status">
          {say('answer.working')}
        </p>
      )}
      <ul className="answer-none">
        {shown.map((none) => (
          <li key={none.code + ('floor' in none ? none.floor : '')}>
            {noneText(words, none, nameOf)}{' '}
            {none.code === 'noTrials' && (
              <GoLink to={fillAddress(id, 'weigh')}>{say('answer.none.weigh')}</GoLink>
            )}
            {none.code === 'floorUnknown' &&
              none.places.slice(0, 4).map((place) => (
                <GoLink key={place} to={bookPageAddress(id, partOf(place))}>
                  {book === undefined ? place : words.placeName(book, place)}
                </GoLink>
              ))}
            {none.code === 'noPreset' && (
              <GoLink to={bookPageAddress(id, '/line/stations')}>{say('answer.none.presets')}</GoLink>
            )}
            {none.code === 'noOtherFloor' && (
              <GoLink to={bookPageAddress(id, '/floors')}>{say('answer.none.floors')}</GoLink>
            )}
          </li>
        ))}
        {answer.problems.length > 0 && answer.lanes === undefined && (
          <li>
            {say('answer.refused')}{' '}
            {[...new Set(answer.problems.map(({ code }) => say(`trialProblem.${code}`)))].join(' ')}{' '}
            {[...new Set(answer.apart.map(({ why }) => why))]
              .map((why) =>
                say(`trialNote.${why}`, { n: answer.apart.filter((one) => one.why === why).length }),
              )
              .join(' ')}
          </li>
        )}
      </ul>
    </>
  );
};
