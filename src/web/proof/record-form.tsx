import type { FormEvent, ReactElement, ReactNode, RefObject } from 'react';

export interface RecordFormProps {
  readonly className: string;
  readonly label: string;
  readonly form: RefObject<HTMLFormElement | null>;
  readonly send: (event: FormEvent) => void;
  readonly leave: () => void;
  readonly children: ReactNode;
}

/** A form whose answer becomes a record; Escape leaves it and nothing behind it. */
export const RecordForm = ({
  className,
  label,
  form,
  send,
  leave,
  children,
}: RecordFormProps): ReactElement => (
  <form
    className={className}
    ref={form}
    noValidate
    onSubmit={send}
    aria-label={label}
    onKeyDown={(event) => {
      if (event.key !== 'Escape') return;
      event.stopPropagation();
      leave();
    }}
  >
    {children}
  </form>
);
