import { type ReactElement, useId } from 'react';

/** The largest text file that is taken: what is larger is another file. */
const mostBytes = 5_000_000;

/** A text file that somebody chooses; one that is too large is taken as empty. */
export const FileDoor = ({
  name,
  label,
  accept,
  take,
}: {
  readonly name: string;
  readonly label: string;
  readonly accept: string;
  readonly take: (text: string) => void;
}): ReactElement => {
  const id = useId();
  return (
    <span className="file-door">
      <label className="link" htmlFor={id}>
        {label}
      </label>
      <input
        id={id}
        type="file"
        className="said"
        data-field={name}
        accept={accept}
        onChange={({ target }) => {
          const file = target.files?.[0];
          target.value = '';
          if (file === undefined) return;
          if (file.size > mostBytes) take('');
          else void file.text().then(take);
        }}
      />
    </span>
  );
};
