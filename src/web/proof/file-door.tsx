import { type ReactElement, useId } from 'react';

/** A file that somebody chooses. */
export const FileDoor = ({
  name,
  label,
  accept,
  disabled = false,
  take,
}: {
  readonly name: string;
  readonly label: string;
  readonly accept: string;
  readonly disabled?: boolean;
  readonly take: (file: File) => void;
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
        disabled={disabled}
        onChange={({ target }) => {
          const file = target.files?.[0];
          if (file !== undefined) take(file);
          target.value = '';
        }}
      />
    </span>
  );
};
