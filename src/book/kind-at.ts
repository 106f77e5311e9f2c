import type { Kind } from '../quantity/kinds.ts';
import { fieldAt } from './field-at.ts';
import { pointerOf, stepsOf } from './pointer.ts';

/** The kind of a spread: a difference, where the kind itself has a zero of its own. */
const spreadOf: Partial<Record<Kind, Kind>> = {
  temperature: 'temperatureDifference',
  gaugePressure: 'pressureDifference',
  absolutePressure: 'pressureDifference',
};

/**
 * The kind of the quantity that stands, or may stand, at a place of a book; undefined where none may.
 * The inside of a quantity that was written with its standing is a place too.
 *
 * Symbols  path  JSON Pointer by index, `/floors/1/supply/run/0/bore`
 * Cost     O(length of the path)
 */
export const kindAt = (path: string): Kind | undefined => {
  const steps = stepsOf(path);
  const field = fieldAt(path);
  if (field !== undefined) return field.is === 'quantity' ? field.quantity.kind : undefined;
  for (let up = 1; up <= 2 && up < steps.length; up += 1) {
    const whole = fieldAt(pointerOf(steps.slice(0, -up)));
    if (whole?.is !== 'quantity') continue;
    const [first, second] = steps.slice(-up);
    if (first === 'value' && (second === undefined || second === '0' || second === '1'))
      return whole.quantity.kind;
    if (first === 'spread' && second === undefined)
      return spreadOf[whole.quantity.kind] ?? whole.quantity.kind;
  }
  return undefined;
};
