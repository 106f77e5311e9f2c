export { checkMedia, digestProblem, largestMedia, plainType, type SaidMedia } from './check-media.ts';
export { headSize, typesOf } from './media-forms.ts';
export { momentOf } from './moment-of.ts';
export { mediaProblemText } from './problems.text.ts';
export { type MediaProblemCode, mediaProblem, mediaProblems } from './problems.ts';
