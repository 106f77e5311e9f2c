import type { AttachedMedia } from './kept-media.ts';
import { keptFields } from './kept-texts.ts';

/** Whether what this browser kept names a file that was attached. */
export const isAttached = (kept: unknown): kept is AttachedMedia => {
  const { sha256, mediaType, bytes } = keptFields(kept);
  return typeof sha256 === 'string' && typeof mediaType === 'string' && typeof bytes === 'number';
};
