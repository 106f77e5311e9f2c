import type { ReactElement, ReactNode } from 'react';

/** A table or formula that may be wider than its room: it scrolls, and can be reached and scrolled by key. */
export const ScrollRegion = ({
  label,
  className = 'scroll',
  children,
}: {
  readonly label: string;
  readonly className?: string;
  readonly children: ReactNode;
}): ReactElement => (
  // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reachable by key (WCAG 2.1.1)
  <section className={className} aria-label={label} tabIndex={0}>
    {children}
  </section>
);
