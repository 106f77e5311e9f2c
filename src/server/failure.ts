import { archiveProblemText } from '../archive/problems.text.ts';
import { bookProblemText } from '../book/problems.text.ts';
import { mediaProblemText } from '../media/problems.text.ts';
import { kindText } from '../quantity/kinds.text.ts';
import type { Problem } from '../quantity/problem.ts';
import { quantityProblemText } from '../quantity/problems.text.ts';
import { recordProblemText } from '../record/problems.text.ts';
import { storeProblemText } from '../store/problems.text.ts';
import { makeCatalogue, prefixed, type Translation } from '../text/index.ts';
import { problemSentence } from '../text/problem-sentence.ts';
import type { Failure } from './api.ts';
import { serverProblemText } from './problems.text.ts';

const words = makeCatalogue([
  quantityProblemText,
  prefixed('kind.', kindText),
  bookProblemText,
  mediaProblemText,
  archiveProblemText,
  recordProblemText,
  storeProblemText,
  serverProblemText,
]);

export const sentenceOf = (problem: Problem, translation: Translation | null = null): string =>
  translation === null
    ? problemSentence(words, problem)
    : problemSentence(words.translated(translation), problem, translation.language);

/** The body of a refusal: the sentences of all problems for a reader, and the problems as data. */
export const failureOf = (
  problems: readonly Problem[],
  newest?: number,
  translation: Translation | null = null,
): Failure => ({
  message: problems.map((problem) => sentenceOf(problem, translation)).join('\n'),
  problems: problems.map(({ allowed, parts, ...rest }) => ({
    ...rest,
    ...(allowed === undefined ? {} : { allowed: typeof allowed === 'string' ? allowed : [...allowed] }),
    ...(parts === undefined ? {} : { parts: { ...parts } }),
  })),
  ...(newest === undefined ? {} : { newest }),
});
