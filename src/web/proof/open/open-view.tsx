import type { ReactElement } from 'react';
import { LatePart } from './late-part.tsx';
import { ProgressPart } from './progress-part.tsx';
import { PunchPart } from './punch-part.tsx';

/** What keeps the floor open: points, results and waits with who holds each, and what is next. */
export const OpenView = (): ReactElement => (
  <div className="open-view">
    <ProgressPart />
    <PunchPart />
    <LatePart />
  </div>
);
