import type { Problem } from '../quantity/problem.ts';
import { problemSentence } from '../text/problem-sentence.ts';
import { words } from './words.ts';

/** The sentence of any problem that may reach the command line. */
export const sentenceOf = (problem: Problem): string => problemSentence(words, problem);
