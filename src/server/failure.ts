import { archiveProblemText } from '../archive/problems.text.ts';
import { bookProblemText } from '../book/problems.text.ts';
import { mediaProblemText } from '../media/problems.text.ts';
import { kindText } from '../quantity/kinds.text.ts';
import type { Problem } from '../quantity/problem.ts';
import { quantityProblemText } from '../quantity/problems.text.ts';
import { recordProblemText } from '../record/problems.text.ts';
import { storeProblemText } from '../store/problems.text.ts';
import { makeCatalogue, prefixed } from '../text/index.ts';
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

export const sentenceOf = (problem: Problem): string => problemSentence(words, problem);

/** The body of a refusal: the sentences of all problems for a reader, and the problems as data. */
export const failureOf = (problems: readonly Problem[], newest?: number): Failure => ({
  message: problems.map(sentenceOf).join('\n'),
  problems: problems.map(({ allowed, parts, ...rest }) => ({
    ...rest,
    ...(allowed === undefined ? {} : { allowed: typeof allowed === 'string' ? allowed : [...allowed] }),
    ...(parts === undefined ? {} : { parts: { ...parts } }),
  })),
  ...(newest === undefined ? {} : { newest }),
});
