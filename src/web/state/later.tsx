import { type ReactElement, type ReactNode, startTransition, useEffect, useState } from 'react';
import { LaterContext, usePageState } from './page-context.ts';
import type { PageState } from './page-state.ts';

/** The state as of the last frame: one that comes now is taken over when the frame that shows it has been painted. */
const usePaintedState = (): PageState => {
  const now = usePageState();
  const [painted, setPainted] = useState(now);
  useEffect(() => {
    let task: ReturnType<typeof setTimeout>;
    const frame = requestAnimationFrame(() => {
      task = setTimeout(() => startTransition(() => setPainted(now)));
    });
    return () => {
      cancelAnimationFrame(frame);
      clearTimeout(task);
    };
  }, [now]);
  return painted;
};

export interface LaterProps {
  readonly children: ReactNode;
  /** Draws the state of this moment after all, for as long as somebody writes in it. */
  readonly atOnce?: boolean;
}

/**
 * What may follow the figures: its content draws the state of this moment once the figures of it are on the screen. A field
 * in it shows what is typed at once.
 *
 * Assumes  the content takes nothing of the state by its properties, or it would be drawn with every key
 */
export const Later = ({ children, atOnce = false }: LaterProps): ReactElement => {
  const painted = usePaintedState();
  return <LaterContext value={atOnce ? undefined : painted}>{children}</LaterContext>;
};
