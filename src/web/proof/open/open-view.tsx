import type { ReactElement } from 'react';
import { DaysPart } from './days-part.tsx';
import { LatePart } from './late-part.tsx';
import { ProgressPart } from './progress-part.tsx';
import { PunchPart } from './punch-part.tsx';
import { WaitsPart } from './waits-part.tsx';

/** What keeps the floor open: points, results and waits with who holds each, and the days that are left. */
export const OpenView = (): ReactElement => (
  <div className="open-view">
    <ProgressPart />
    <PunchPart />
    <WaitsPart />
    <LatePart />
    <DaysPart />
  </div>
);
