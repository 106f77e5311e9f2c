import { memo, type ReactElement } from 'react';
import { LineDrawing } from '../line/line-drawing.tsx';
import { useFacing } from './use-facing.ts';

/** The line of the book with what holds it on the facing floors. */
export const FacingLine = memo((): ReactElement | null => {
  const facing = useFacing();
  return facing === undefined ? null : <LineDrawing book={facing.book} floors={facing.floors} />;
});

FacingLine.displayName = 'FacingLine';
