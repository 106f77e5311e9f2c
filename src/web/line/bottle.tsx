import type { ReactElement } from 'react';

/** A bottle as it stands, its foot at (x, y). */
export const Bottle = ({ x, y }: { readonly x: number; readonly y: number }): ReactElement => (
  <path className="bottle" d={`M${x - 5} ${y}v-17q0-5 3-7v-7h4v7q3 2 3 7v17z`} />
);
