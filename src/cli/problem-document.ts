import * as z from 'zod';
import type { Problem } from '../quantity/problem.ts';
import { sentenceOf } from './sentence.ts';

export const problemSchema = z.strictObject({
  code: z.string(),
  path: z.string().describe('Where: a place in the book, an input, an option or a file'),
  given: z.unknown().optional().describe('What was read there'),
  allowed: z
    .union([z.string(), z.array(z.string())])
    .optional()
    .describe('What is accepted'),
  parts: z.record(z.string(), z.union([z.string(), z.number()])).optional(),
  text: z.string().describe('The problem as a sentence'),
});

export const problemsSchema = z
  .strictObject({
    document: z.literal('twinfloor problems'),
    version: z.literal(1),
    problems: z.array(problemSchema),
    answer: z
      .unknown()
      .optional()
      .describe('What the command answers without what is wrong, where something is left'),
  })
  .describe(
    'Answer of every command with `--json` that ended with status 2: all that is wrong with what was given',
  );

export const problemDocument = (
  problem: Problem,
  text = sentenceOf(problem),
): z.infer<typeof problemSchema> => {
  const { allowed, parts, ...rest } = problem;
  return {
    ...rest,
    ...(allowed === undefined ? {} : { allowed: typeof allowed === 'string' ? allowed : [...allowed] }),
    ...(parts === undefined ? {} : { parts: { ...parts } }),
    text,
  };
};

export const problemsDocument = (
  problems: readonly Problem[],
  sentences: readonly string[],
  answer?: unknown,
): z.infer<typeof problemsSchema> => ({
  document: 'twinfloor problems',
  version: 1,
  problems: problems.map((problem, i) => problemDocument(problem, sentences[i])),
  ...(answer === undefined ? {} : { answer }),
});
