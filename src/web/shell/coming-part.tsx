import { type ReactElement, startTransition, useEffect, useReducer, useState } from 'react';
import { useWords } from '../state/page-context.ts';
import type { Coming } from './coming.ts';

/**
 * A part of the page as soon as its code is there. React's own `lazy` would hold it back: what follows its fallback waits
 * until that has stood for 0.3 s, and a page in which a part comes after a part would wait for each.
 */
export const ComingPart = <P extends object>({
  of,
  give,
  look = 'message',
}: {
  readonly of: Coming<P>;
  readonly give: P;
  /** How the word looks that stands there until then. */
  readonly look?: 'message' | 'quiet';
}): ReactElement => {
  const { say } = useWords();
  const [, come] = useReducer((times: number) => times + 1, 0);
  const [failed, setFailed] = useState<{ readonly of: unknown; readonly cause: unknown }>();
  const Part = of.here();
  // as it was drawn: it may have come since
  const isHere = Part !== undefined;
  useEffect(() => {
    if (isHere) return undefined;
    let over = false;
    of.ask().then(
      () => over || startTransition(come),
      (cause: unknown) => over || setFailed({ of, cause }),
    );
    return () => {
      over = true;
    };
  }, [of, isHere]);
  if (failed?.of === of) throw failed.cause;
  return Part === undefined ? <p className={look}>{say('page.loading')}</p> : <Part {...give} />;
};
