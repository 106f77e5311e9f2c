import type { ReactElement } from 'react';
import { type ProvedCheck, roundTrip } from '../../../proof/index.ts';
import { useWords } from '../../state/page-context.ts';
import { useCheckSays } from '../check-says.ts';
import { useProof } from '../with-proof.tsx';

/** Whether a check is on a thing, or done at a place that is written `at +FILL`. */
export const isAt = (chosen: string, at: string | undefined, { check }: ProvedCheck): boolean =>
  chosen === '' || chosen === `at ${at ?? ''}` || check.on.includes(chosen);

/** A place of the line or one of its things, to leave only its checks. */
export const PlaceChoice = ({
  chosen,
  choose,
}: {
  readonly chosen: string;
  readonly choose: (place: string) => void;
}): ReactElement => {
  const { say } = useWords();
  const { book, floor } = useProof();
  const says = useCheckSays();
  return (
    <label className="place-choice">
      {say('proving.place')}{' '}
      <select value={chosen} data-choice="place" onChange={(event) => choose(event.target.value)}>
        <option value="">{say('proving.place.all')}</option>
        {roundTrip(book, floor.checks).map(({ at, checks }) => {
          const name = at === undefined ? say('proving.order.whole') : says.thing(at);
          const things = [...new Set(checks.flatMap(({ check }) => check.on.slice(0, 1)))].filter(
            (tag) => tag !== at,
          );
          return (
            <optgroup key={at ?? ''} label={name}>
              <option value={`at ${at ?? ''}`}>{say('proving.place.whole', { place: name })}</option>
              {things.map((tag) => (
                <option key={tag} value={tag}>
                  {says.thing(tag)}
                </option>
              ))}
            </optgroup>
          );
        })}
      </select>
    </label>
  );
};
