import { createContext, type MouseEvent, type ReactElement, type ReactNode, useContext } from 'react';

/** Goes to an address of this page without fetching it anew; `instead` leaves no step back to the one before. */
export type Go = (address: string, how?: 'instead') => void;

export const GoContext = createContext<Go>(() => undefined);

export interface GoLinkProps {
  readonly to: string;
  readonly current?: boolean;
  readonly className?: string;
  readonly children: ReactNode;
}

export const GoLink = ({ to, current, className, children }: GoLinkProps): ReactElement => {
  const go = useContext(GoContext);
  const press = (event: MouseEvent): void => {
    // a new tab or window is the browser's own business
    if (event.ctrlKey || event.metaKey || event.shiftKey || event.button !== 0) return;
    event.preventDefault();
    go(to);
  };
  return (
    <a href={to} className={className} aria-current={current === true ? 'page' : undefined} onClick={press}>
      {children}
    </a>
  );
};
