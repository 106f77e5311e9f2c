import type { FastifyError } from 'fastify';
import { hasZodFastifySchemaValidationErrors } from 'fastify-type-provider-zod';
import type { Problem } from '../quantity/problem.ts';
import { StoreFailure } from '../store/problems.ts';
import { bodyLimit } from './api.ts';
import { serverProblem } from './problems.ts';

const isFastifyError = (error: unknown): error is FastifyError =>
  error instanceof Error && typeof (error as { code?: unknown }).code === 'string';

/** Codes of the framework that mean a body which is no JSON. */
const notJson = new Set([
  'FST_ERR_CTP_INVALID_JSON_BODY',
  'FST_ERR_CTP_EMPTY_JSON_BODY',
  'FST_ERR_CTP_INVALID_CONTENT_LENGTH',
]);

/** What went wrong, as problems; nothing where it is a mistake of the program. */
export const problemsOfError = (error: unknown): readonly Problem[] | undefined => {
  if (error instanceof StoreFailure) return [error.problem];
  if (hasZodFastifySchemaValidationErrors(error)) {
    const part = error.validationContext ?? 'body';
    return error.validation.map(({ instancePath, message }) =>
      serverProblem('SERVER_REQUEST', `${part}${instancePath}`, { allowed: message ?? '' }),
    );
  }
  if (error instanceof SyntaxError) return [serverProblem('SERVER_BODY_NOT_JSON', 'body')];
  if (!isFastifyError(error)) return undefined;
  if (error.code === 'FST_ERR_CTP_BODY_TOO_LARGE') {
    return [serverProblem('SERVER_BODY_TOO_LARGE', 'body', { allowed: `${bodyLimit / 1024 / 1024} MB` })];
  }
  if (notJson.has(error.code)) return [serverProblem('SERVER_BODY_NOT_JSON', 'body')];
  if (error.code === 'FST_ERR_CTP_INVALID_MEDIA_TYPE') {
    return [serverProblem('SERVER_BODY_NOT_UNDERSTOOD', 'body', { allowed: 'application/json' })];
  }
  return undefined;
};
