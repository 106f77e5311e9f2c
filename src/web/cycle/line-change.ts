import type { ShiftLine } from '../../line/shift/index.ts';

/** One change of the line, and what the line is with it. */
export interface LineChange {
  readonly kind: 'fill' | 'index' | 'room' | 'cause';
  /** Tag of the stop cause that is gone. */
  readonly cause?: string;
  /** Seconds or bottles that are changed. */
  readonly by?: number;
  readonly after: ShiftLine;
}

/** The same change on whatever floor. */
export const changeKey = ({ kind, cause }: Pick<LineChange, 'kind' | 'cause'>): string =>
  cause === undefined ? kind : `${kind} ${cause}`;
