import type { MediaProblemCode } from './problems.ts';

/** What happened and what to do, by language. */
export const mediaProblemText: { readonly en: Readonly<Record<MediaProblemCode, string>> } = {
  en: {
    MEDIA_EMPTY: 'The file is empty. Nothing was kept. Take it again.',
    MEDIA_TOO_LARGE:
      'The file has {given}; at most {allowed} are kept. Make a shorter film, or a smaller picture.',
    MEDIA_UNKNOWN:
      'What the file holds is none of what can be attached. Nothing was kept. Allowed: {allowed}.',
    MEDIA_NOT_AS_SAID:
      'The file is said to be {given}, but its first bytes are those of {allowed}. Nothing was kept. Take it again, or attach the original.',
    MEDIA_DIGEST:
      'The file does not give its digest: {given} instead of {allowed}. It was cut on the way, or it is another file. Nothing was kept. Send it again.',
  },
};
