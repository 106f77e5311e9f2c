import type { KeyboardEvent } from 'react';
import type { PicturePoint } from '../../../joins/index.ts';

/** Shares of a photograph by which a key moves a code: across it in a hundred steps, finely with shift. */
const step = 0.01;
const fine = 0.002;

const ways: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};

const within = (share: number): number => Math.round(Math.max(0, Math.min(1, share)) * 1e4) / 1e4;

/** Where a key takes a code: nothing, where it takes it off; an arrow puts one that lies nowhere into the middle. */
export const movedBy = (
  { key, shiftKey }: Pick<KeyboardEvent, 'key' | 'shiftKey'>,
  point: PicturePoint | undefined,
): PicturePoint | undefined | 'elsewhere' => {
  if (key === 'Delete' || key === 'Backspace') return point === undefined ? 'elsewhere' : undefined;
  const way = ways[key];
  if (way === undefined) return 'elsewhere';
  if (point === undefined) return { x: 0.5, y: 0.5 };
  const by = shiftKey ? fine : step;
  return { x: within(point.x + way[0] * by), y: within(point.y + way[1] * by) };
};
