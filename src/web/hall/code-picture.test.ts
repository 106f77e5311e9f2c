import jsQR from 'jsqr';
import { describe, expect, it } from 'vitest';
import { codePicture } from './code-picture.ts';

/** Paints the squares of the outline, each `scale` points wide, as a camera would see them. */
const painted = (text: string, scale: number) => {
  const { size, path } = codePicture(text);
  const width = size * scale;
  const pixels = new Uint8ClampedArray(width * width * 4).fill(255);
  for (const [, x, y] of path.matchAll(/M(\d+) (\d+)h1v1h-1z/g)) {
    for (let down = 0; down < scale; down += 1) {
      for (let right = 0; right < scale; right += 1) {
        const at = 4 * ((Number(y) * scale + down) * width + Number(x) * scale + right);
        pixels.fill(0, at, at + 3);
      }
    }
  }
  return { pixels, width };
};

describe('the picture of an address', () => {
  it.each([
    'https://192.0.2.20:4781/join?code=ACDE-FGHJ',
    'https://[fd00::20]:4781/join?code=ACDE-FGHJ&book=flagon-line',
    `http://192.0.2.20:4781/join?code=ACDE-FGHJ&book=${'b'.repeat(128)}`,
  ])('is read by another program (jsQR) as %s', (text) => {
    const { pixels, width } = painted(text, 3);
    expect(jsQR(pixels, width, width)?.data).toBe(text);
  });
});
