import { byText } from '../../record/heads.ts';
import type { PicturePoint } from './box-pictures.ts';

/** A size in any unit; picture and label are given in the same. */
export interface Size {
  readonly width: number;
  readonly height: number;
}

/** A point that wants its code beside it; the key tells it from every other. */
export interface KeyedPoint extends PicturePoint {
  readonly key: string;
}

/** Steps from a point to the middle of its label, in labels: near ones first, above before below. */
const steps: readonly (readonly [number, number])[] = [0, 0.5, -0.5, 1, -1, 1.5, -1.5]
  .flatMap((across) =>
    [-1, 1, -2.1, 2.1, -3.2, 3.2, -4.3, 4.3, -5.4, 5.4, 0].map((down) => [across, down] as const),
  )
  // at its own height a label stands beside its point, never on it
  .filter(([across, down]) => down !== 0 || Math.abs(across) >= 0.75)
  .map((step, order) => ({ step, order }))
  // a row further is nearer to the eye than a label's length aside
  .sort(
    (a, b) =>
      Math.hypot(2 * a.step[0], a.step[1]) - Math.hypot(2 * b.step[0], b.step[1]) || a.order - b.order,
  )
  .map(({ step }) => step);

interface Box {
  readonly left: number;
  readonly top: number;
}

const covers = (box: Box, label: Size, x: number, y: number): boolean =>
  x > box.left && x < box.left + label.width && y > box.top && y < box.top + label.height;

const overlap = (one: Box, other: Box, label: Size): boolean =>
  Math.abs(one.left - other.left) < label.width && Math.abs(one.top - other.top) < label.height;

const clamp = (value: number, most: number): number => Math.max(0, Math.min(value, Math.max(0, most)));

/**
 * Where the codes of points are written on a picture, so that each can be read and its point is seen.
 *
 * Method   points from the upper left; each label takes the nearest place around its point that covers no point and no
 *          label before it, else one that covers no label, else the nearest
 * Returns  upper left corners by key, as shares of the picture; none outside of it where a label fits into it at all
 * Cost     O(points^2)
 */
export const codePlaces = (
  points: readonly KeyedPoint[],
  picture: Size,
  label: Size,
): ReadonlyMap<string, PicturePoint> => {
  const laid: Box[] = [];
  const places = new Map<string, PicturePoint>();
  for (const { key, x, y } of points.toSorted((a, b) => a.y - b.y || a.x - b.x || byText(a.key, b.key))) {
    const around = steps.map(([across, down]) => ({
      left: clamp(x * picture.width + (across - 0.5) * label.width, picture.width - label.width),
      top: clamp(y * picture.height + (down - 0.5) * label.height, picture.height - label.height),
    }));
    const free = around.filter((box) => !laid.some((other) => overlap(box, other, label)));
    const clear = free.find(
      (box) => !points.some((one) => covers(box, label, one.x * picture.width, one.y * picture.height)),
    );
    const box = clear ?? free[0] ?? around[0]!;
    laid.push(box);
    places.set(key, { x: box.left / picture.width, y: box.top / picture.height });
  }
  return places;
};
