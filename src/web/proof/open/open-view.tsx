import { type ReactElement, useEffect, useRef } from 'react';
import { useProof } from '../with-proof.tsx';
import { AfterPart } from './after-part.tsx';
import { DaysPart } from './days-part.tsx';
import { LatePart } from './late-part.tsx';
import { ProgressPart } from './progress-part.tsx';
import { PunchPart } from './punch-part.tsx';
import { WaitsPart } from './waits-part.tsx';

/** What keeps the floor open: points, results and waits with who holds each, and the days that are left. */
export const OpenView = (): ReactElement => {
  const { asked } = useProof();
  const view = useRef<HTMLDivElement>(null);
  useEffect(() => {
    if (asked === undefined) return;
    const name = CSS.escape(asked);
    // what the address names is what the person came for
    view.current?.querySelector<HTMLElement>(`[data-point="${name}"], [data-wait="${name}"]`)?.focus();
  }, [asked]);
  return (
    <div className="open-view" ref={view}>
      <ProgressPart />
      <PunchPart />
      <WaitsPart />
      <LatePart />
      <DaysPart />
      <AfterPart />
    </div>
  );
};
