import type { LiftDrawing } from '../../packing/lifts.ts';
import type { PaperWords } from '../paper-words.ts';
import { drawingScale } from '../plan/drawing-scale.ts';

type Point = readonly [number, number];

/** A section in its sling to scale, seen from its side; mm from the upper left corner of the drawing. */
export interface DrawnLift {
  readonly alt: string;
  readonly width: number;
  readonly height: number;
  readonly scale: string;
  readonly bar: { readonly length: number; readonly text: string };
  readonly section: { readonly at: Point; readonly size: Point };
  readonly hook: Point;
  readonly points: readonly Point[];
  readonly centre: Point;
  /** Whether the book says how high the centre lies. */
  readonly raised: boolean;
  /** What stands beside each leg. */
  readonly legs: readonly string[];
}

/** Room for the drawing, mm. */
const frame = { width: 84, height: 62 } as const;

/** Above the hook, beside the section and under it, mm: what is written stands there. */
const room = { above: 3, side: 14, below: 9 } as const;

/** A section as it hangs, at the largest scale at which it fits beside its figures. */
export const drawnLift = (
  { length, height, points, level, centre, up, hook }: LiftDrawing,
  name: string,
  legs: readonly string[],
  { say, utility, number }: PaperWords,
): DrawnLift => {
  const inner = {
    width: frame.width - 2 * room.side,
    height: frame.height - room.above - room.below,
  };
  const top = Math.max(hook, height);
  const { to, perMetre, bar } = drawingScale({ width: length, height: top }, inner);
  const at = (along: number, above: number): Point => [
    0.5 * frame.width + (along - 0.5 * length) * perMetre,
    room.above + (top - above) * perMetre,
  ];
  const scale = say('packing.scale', { n: number(to, 4) });
  return {
    alt: say('packing.alt', { name, scale, legs: legs.join('; ') }),
    width: frame.width,
    height: top * perMetre + room.above + room.below,
    scale,
    bar: { length: bar * perMetre, text: utility(bar, 'length') },
    section: { at: at(0, height), size: [length * perMetre, height * perMetre] },
    hook: at(centre, hook),
    points: points.map((along) => at(along, level)),
    centre: at(centre, up ?? height / 2),
    raised: up !== undefined,
    legs,
  };
};
