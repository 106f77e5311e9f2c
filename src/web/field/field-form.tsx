import type { FormEvent, ReactElement, ReactNode } from 'react';

const stay = (event: FormEvent): void => event.preventDefault();

/**
 * One field with what is said of it. It is a form of its own, since a browser that offers to fill in forms reads
 * all fields outside one again at each key, with the text around them.
 */
export const FieldForm = ({
  className = 'field',
  children,
}: {
  readonly className?: string;
  readonly children: ReactNode;
}): ReactElement => (
  <form className={className} noValidate onSubmit={stay}>
    {children}
  </form>
);
