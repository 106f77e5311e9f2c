const day = 86_400;
/** Work begins at eight where it ends before midnight; a longer day begins earlier. */
const usualBegin = 8 * 3600;
/** 1 January 1970 was a Thursday: Saturday is the third day from it. */
const saturdayOffset = 2;

/** When work goes on, as moments in seconds from midnight before the first day. */
export interface WorkingCalendar {
  /** The first moment at which something that takes so much working time can be over, begun at `start` or later. */
  readonly over: (start: number, working: number) => number;
  /** The last moment at which it can begin so that it is over at `end` or earlier. */
  readonly begun: (end: number, working: number) => number;
  /** The first moment of work at `moment` or later. */
  readonly next: (moment: number) => number;
}

export interface WorkingTimes {
  /** s of work in a day, above 0 and at most 86400 */
  readonly hours: number;
  /** First day, as days since 1 January 1970; without it no day is known to be free. */
  readonly from?: number;
  readonly weekends: boolean;
}

/**
 * A calendar of days with the same working time, whose Saturdays and Sundays are free or not.
 *
 * Returns  `over` and `begun` belong together: begun(end) is the greatest start with over(start) <= end
 * Assumes  no holidays: what a site is closed for is a wait of the book
 * Cost     O(days)
 */
export const workingCalendar = ({ hours, from, weekends }: WorkingTimes): WorkingCalendar => {
  const begin = Math.min(usualBegin, day - hours);
  const free = (index: number): boolean => {
    if (weekends || from === undefined) return false;
    const weekday = (((from + index - saturdayOffset) % 7) + 7) % 7;
    return weekday < 2;
  };
  const next = (moment: number): number => {
    let index = Math.floor(moment / day);
    for (let at = moment; ; ) {
      const first = index * day + begin;
      if (!free(index) && at < first + hours) return Math.max(at, first);
      index += 1;
      at = index * day;
    }
  };
  const over = (start: number, working: number): number => {
    if (working <= 0) return start;
    let left = working;
    for (let at = next(start); ; at = next(at)) {
      const until = Math.floor(at / day) * day + begin + hours;
      if (left <= until - at) return at + left;
      left -= until - at;
      at = until;
    }
  };
  const begun = (end: number, working: number): number => {
    if (working <= 0) return end;
    let left = working;
    for (let index = Math.floor(end / day); ; index -= 1) {
      const first = index * day + begin;
      const until = Math.min(end, first + hours);
      if (free(index) || until <= first) continue;
      if (left <= until - first) return until - left;
      left -= until - first;
    }
  };
  return { over, begun, next };
};
