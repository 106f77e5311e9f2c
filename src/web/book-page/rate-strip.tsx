import type { ReactElement } from 'react';
import { floorClass } from '../floors/floor-class.ts';
import { usePage, usePagePart } from '../state/page-context.ts';

/** What the line runs on each floor while one writes: every value shows at once what it does. */
export const RateStrip = (): ReactElement | null => {
  const { words } = usePage();
  const shown = usePagePart((state) => state.shown);
  const units = usePagePart((state) => state.units);
  const assessment = usePagePart((state) => state.assessment);
  if (shown === undefined || assessment === undefined || assessment.floors.length === 0) return null;
  return (
    <p className="rates">
      {assessment.floors.map(({ floor, name, figures: { runningRate } }) => (
        <span key={floor} className={floorClass(shown, floor)}>
          {name}{' '}
          <b>
            {runningRate?.value === undefined
              ? words.say('heads.unknown')
              : words.quantity(runningRate.value, runningRate.kind, {
                  units,
                  book: shown,
                  bottles: true,
                  digits: runningRate.value * 3600 < 999.5 ? 3 : 4,
                }).text}
          </b>
        </span>
      ))}
    </p>
  );
};
