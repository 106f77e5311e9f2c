import { Fragment, type ReactElement } from 'react';

/** Things in a sentence, each kept on one line with the comma behind it. */
export const CommaList = ({ children }: { readonly children: readonly ReactElement[] }): ReactElement => (
  <>
    {children.map((child, i) => (
      <Fragment key={child.key}>
        {i > 0 && ' '}
        <span className="listed">
          {child}
          {i < children.length - 1 && ','}
        </span>
      </Fragment>
    ))}
  </>
);
