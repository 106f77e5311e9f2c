import type { ReactElement } from 'react';
import type { GoalPresets } from '../../floor/fill/index.ts';
import { GoLink } from '../shell/go-link.tsx';
import { bookPageAddress, fillAddress } from '../shell/route.ts';
import { usePagePart, useWords } from '../state/page-context.ts';
import { useBottleUnits } from './bottle-units.ts';

/** What the counts aim at, and where the capacity of the bottles comes from. */
export const GoalSentence = ({ goal }: { readonly goal: GoalPresets }): ReactElement => {
  const words = useWords();
  const { say, number } = words;
  const id = usePagePart((state) => state.id);
  const units = usePagePart((state) => state.units);
  const book = usePagePart((state) => state.book);
  const { volume: unit } = useBottleUnits();
  const told = (value: number, digits: number): string =>
    words.quantity(value, 'volume', { units, book, unit, digits }).text;
  if ('none' in goal) {
    return (
      <p className="answer-none">
        {say(`presets.none.${goal.none}`)}{' '}
        <GoLink to={bookPageAddress(id, goal.none === 'deficiencyMissing' ? '/agreement' : '/line/formats')}>
          {say('presets.none.write')}
        </GoLink>
      </p>
    );
  }
  if (goal.goal === 'volume') {
    return (
      <p>
        {say('presets.volume.sentence', {
          label: told(goal.label, 5),
          here: told(goal.labelHere, 5),
          deficiency: told(goal.deficiency, 3),
        })}
      </p>
    );
  }
  const { mean, deviation } = goal.capacity.capacity;
  return (
    <p>
      {say('presets.level.sentence', {
        share: words.number(goal.share * 100, 4),
        level: told(mean, 5),
        spread: told(deviation, 2),
      })}{' '}
      <span className={goal.capacity.from === 'assumed' ? 'assumed' : 'quiet'}>
        {say(`presets.capacity.${goal.capacity.from}`, { n: number(goal.capacity.capacity.dof + 1, 4) })}
      </span>{' '}
      {goal.capacity.from === 'assumed' && (
        <GoLink to={fillAddress(id, 'samples')}>{say('presets.capacity.measure')}</GoLink>
      )}
    </p>
  );
};
