import type { FastifyReply } from 'fastify';
import type { Problem } from '../quantity/problem.ts';
import { failureOf } from './failure.ts';
import { statusOf } from './status.ts';

/**
 * Answers with problems. Typed as `never` beside the answers of the contract: refusals have one form for all
 * routes and aren't listed with each.
 */
export const refuseWith = (reply: unknown, problems: readonly Problem[], newest?: number): never => {
  const status = statusOf(problems[0]?.code ?? 'SERVER_FAULT');
  const answer = reply as FastifyReply;
  if (status === 503) answer.header('retry-after', '2');
  return answer
    .code(status)
    .type('application/json; charset=utf-8')
    .serializer(JSON.stringify)
    .send(failureOf(problems, newest, answer.request.translation)) as never;
};
