import { type ReactElement, useState } from 'react';
import type { MovedFinding } from '../../../proof/settings/index.ts';
import { figureName } from '../../floors/verdict-text.ts';
import { useWords } from '../../state/page-context.ts';
import { useProof } from '../with-proof.tsx';

/** The findings that some settings move, worked out when they are asked for. */
export const MovedList = ({
  label,
  find,
}: {
  readonly label: string;
  readonly find: () => readonly MovedFinding[];
}): ReactElement => {
  const words = useWords();
  const { say } = words;
  const { floor } = useProof();
  const [moved, setMoved] = useState<readonly MovedFinding[]>();
  if (moved === undefined) {
    return (
      <button type="button" className="link" data-act="moves" onClick={() => setMoved(find())}>
        {label}
      </button>
    );
  }
  const side = (said: MovedFinding['from']): string => {
    if (said === undefined) return say('verdict.unknown');
    const verdict = say(`verdict.${said.verdict}`);
    if (said.margin === undefined) return verdict;
    return say('settings.compare.margin', { verdict, margin: words.percent(said.margin) });
  };
  if (moved.length === 0)
    return <p className="small quiet">{say('settings.compare.still', { floor: floor.name })}</p>;
  return (
    <ul className="settings-moved" data-moved={moved.length}>
      {moved.map(({ finding, from, to }) => (
        <li
          key={finding}
          className={to?.verdict === 'short' && from?.verdict !== 'short' ? 'short' : undefined}
        >
          {say('settings.compare.moved', {
            name: figureName(words, finding),
            from: side(from),
            to: side(to),
          })}
        </li>
      ))}
    </ul>
  );
};
