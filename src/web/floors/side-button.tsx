import type { ReactElement, ReactNode } from 'react';
import type { Finding, Verdict } from '../../floor/assessment.ts';
import { openFigure } from '../commands/open-working.ts';
import { usePage } from '../state/page-context.ts';
import { SpineBar } from './spine-bar.tsx';

export interface SideButtonProps {
  readonly floor: string;
  readonly hue: string;
  /** What the bar shows. */
  readonly finding: Finding;
  readonly side: 'left' | 'right';
  readonly pressed: boolean;
  /** Told to who does not see on which side it stands. */
  readonly label: ReactNode;
  /** Written into the page for who looks for a row by it. */
  readonly verdict?: Verdict;
  readonly children: ReactNode;
}

/** One finding on one floor: its figures outside, its bar towards the spine. Pressed, it shows its working. */
export const SideButton = (props: SideButtonProps): ReactElement => {
  const { floor, hue, finding, side, pressed, label, verdict, children } = props;
  const page = usePage();
  const bar = <SpineBar finding={finding} side={side} floor={hue} />;
  return (
    <button
      type="button"
      className={`side ${side}`}
      aria-pressed={pressed}
      data-finding={finding.id}
      data-floor={floor}
      data-verdict={verdict}
      onClick={() => openFigure(page, { floor, id: finding.id })}
    >
      <span className="said">{label} </span>
      {side === 'right' && bar}
      {children}
      {side === 'left' && bar}
    </button>
  );
};
