import type { ReactElement } from 'react';
import type { DayRow } from './day-rows.ts';

const day = 86_400;
/** A bar of an hour must still be seen in a plan of weeks: at least this share of the width. */
const thinnest = 0.008;

/** One bar over the days: solid where it decides the end. What it shows stands beside it in words. */
export const DayBar = ({ row, days }: { readonly row: DayRow; readonly days: number }): ReactElement => {
  const start = row.start / day;
  const wide = Math.max((row.end - row.start) / day, days * thinnest);
  return (
    <svg className="day-bar" viewBox={`0 0 ${days} 1`} preserveAspectRatio="none" aria-hidden="true">
      {Array.from({ length: days + 1 }, (_, i) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a day is its number
        <line key={i} x1={i} x2={i} y1="0" y2="1" vectorEffect="non-scaling-stroke" />
      ))}
      <rect
        x={Math.min(start, days - wide)}
        y="0.2"
        width={wide}
        height="0.6"
        data-critical={row.critical}
        vectorEffect="non-scaling-stroke"
      />
    </svg>
  );
};
