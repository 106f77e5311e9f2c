import type { ReactElement } from 'react';
import { ShownQuantity } from '../field/shown-quantity.tsx';
import { useBottleUnits } from './bottle-units.ts';

/** A volume of the size of a bottle or of what runs over. */
export const BottleVolume = ({
  value,
  digits,
}: {
  readonly value: number;
  readonly digits: number;
}): ReactElement => (
  <ShownQuantity value={value} kind="volume" unit={useBottleUnits().volume} digits={digits} />
);
