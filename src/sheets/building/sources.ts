import type { Source } from '../frame.ts';

/** Sources that more than one sheet of building cites. */
export const arithmetic: Source = {
  title: 'hand calculation from the definition',
  place: 'worked apart from this program',
  mark: 'computed',
};
export const statics: Source = { title: 'statics of a rigid body', place: 'derived', mark: 'computed' };
export const fitting: Source = {
  title: 'reference cases of lifting and fitting',
  place: '2400 kg on four feet of 80 mm; independent script',
  mark: 'computed',
};
export const plainGeometry: Source = { title: 'plane geometry', place: 'derived', mark: 'computed' };
export const fineSearch: Source = {
  title: 'search over places and angles of the rectangle itself',
  place: 'independent script',
  mark: 'computed',
};
