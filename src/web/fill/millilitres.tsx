import type { ReactElement } from 'react';
import { ShownQuantity } from '../field/shown-quantity.tsx';

/** What runs over or is given away: three digits are all that is known of it. */
export const Millilitres = ({ value }: { readonly value: number }): ReactElement => (
  <ShownQuantity value={value} kind="volume" unit="mL" digits={3} />
);
