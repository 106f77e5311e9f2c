import type { Source } from '../frame.ts';

/** Sources of what two floors are expected to change of a lane. */
export const guideRectangular: Source = {
  title: 'JCGM 100, Guide to the expression of uncertainty in measurement',
  edition: '2008',
  place: '4.3.7, not read',
  mark: 'memory',
};
export const guideStated: Source = {
  title: 'JCGM 100, Guide to the expression of uncertainty in measurement',
  edition: '2008',
  place: '4.3.4, an interval that is stated with 95 %, not read',
  mark: 'memory',
};
export const allowanceHabit: Source = {
  title: 'trade knowledge of meters, air valves and thin syrups',
  place: 'a figure to begin with; nobody measured this valve or this meter',
  mark: 'common practice',
};
export const allowanceScript: Source = {
  title:
    'the same put to numpy 2 and scipy 1.17 in another way (uniform distribution, root search, straight line)',
  place: 'independent script',
  mark: 'computed',
};
