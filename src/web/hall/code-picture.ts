import { encode } from 'uqr';

export interface CodePicture {
  /** Dark and light squares along a side, with the light edge that a reader wants. */
  readonly size: number;
  /** Outline of the dark squares, in units of one square. */
  readonly path: string;
}

/** Light squares round the picture: ISO/IEC 18004, 6.3.8 wants four. */
const edge = 4;

/** A text as a QR code: medium correction, since a screen is clean but a camera at arm's length is not. */
export const codePicture = (text: string): CodePicture => {
  const { size, data } = encode(text, { ecc: 'M', border: edge });
  const path = data.flatMap((row, y) => row.map((dark, x) => (dark ? `M${x} ${y}h1v1h-1z` : ''))).join('');
  return { size, path };
};
