import type { ReactElement } from 'react';
import { FileDoor } from './file-door.tsx';

/** The largest text file that is taken: what is larger is another file. */
const mostBytes = 5_000_000;

/** A text file that somebody chooses; one that is too large is taken as empty. */
export const TextFileDoor = ({
  take,
  ...door
}: {
  readonly name: string;
  readonly label: string;
  readonly accept: string;
  readonly take: (text: string) => void;
}): ReactElement => (
  <FileDoor
    {...door}
    take={(file) => {
      if (file.size > mostBytes) take('');
      else void file.text().then(take);
    }}
  />
);
