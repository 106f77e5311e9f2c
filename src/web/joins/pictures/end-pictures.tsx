import type { ReactElement } from 'react';
import { endKey, endText, type JoinEnd, type LaidJoin, printedCode } from '../../../joins/index.ts';
import { useWords } from '../../state/page-context.ts';
import { useJoins } from '../with-joins.tsx';
import { CodedPicture } from './coded-picture.tsx';

/** The photographs on which one end of a join is seen, with its code alone. */
export const EndPictures = ({
  join: { tag, code },
  end,
}: {
  readonly join: LaidJoin;
  readonly end: JoinEnd;
}): ReactElement | null => {
  const { say } = useWords();
  const { seen } = useJoins();
  const own = seen.get(endKey({ join: tag, side: end.side })) ?? [];
  if (own.length === 0) return null;
  const name = say('joining.picture.end', { end: endText(end, say), code: printedCode(code) });
  return (
    <>
      {own.map(({ picture, end: { point, conflict } }) => (
        <CodedPicture
          key={`${picture.picture} ${picture.box}`}
          sha256={picture.picture}
          name={name}
          codes={[{ key: tag, code: printedCode(code), point, conflict }]}
        />
      ))}
    </>
  );
};
