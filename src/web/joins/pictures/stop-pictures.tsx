import type { ReactElement } from 'react';
import { endKey, isSeen, type LaidJoin, printedCode } from '../../../joins/index.ts';
import { useWords } from '../../state/page-context.ts';
import { useJoins } from '../with-joins.tsx';
import { CodedPicture } from './coded-picture.tsx';

/** The photographs of a box with the codes of what is made at one stop, and the door to where they are placed. */
export const StopPictures = ({
  box,
  joins,
  open,
}: {
  readonly box: string;
  readonly joins: readonly LaidJoin[];
  readonly open: () => void;
}): ReactElement => {
  const { say } = useWords();
  const { pictures, byTag } = useJoins();
  const here = new Set(joins.map(({ tag }) => tag));
  const own = pictures.get(box) ?? [];
  const coded = own
    .map((picture) => ({ picture, ends: picture.ends.filter(isSeen).filter(({ join }) => here.has(join)) }))
    .filter(({ ends }) => ends.length > 0);
  return (
    <div className="stop-pictures">
      {coded.map(({ picture, ends }) => {
        const codes = ends.map((end) => ({
          key: endKey(end),
          code: printedCode(byTag.get(end.join)?.code ?? end.join),
          point: end.point,
          conflict: end.conflict,
        }));
        const name = say('joining.picture.codes', { box, codes: codes.map(({ code }) => code).join(', ') });
        return <CodedPicture key={picture.picture} sha256={picture.picture} name={name} codes={codes} />;
      })}
      <button type="button" className="link" data-act="open-desk" onClick={open}>
        {say(own.length === 0 ? 'joining.desk.take' : 'joining.desk.open', { box })}
      </button>
    </div>
  );
};
