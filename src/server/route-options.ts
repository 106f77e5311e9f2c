import type * as z from 'zod';
import type { RouteContract } from './api.ts';

type Schemas<R> = (R extends { readonly params: infer P extends z.ZodType } ? { params: P } : object) &
  (R extends { readonly query: infer Q extends z.ZodType } ? { querystring: Q } : object) &
  (R extends { readonly body: infer B extends z.ZodType } ? { body: B } : object) &
  (R extends { readonly answers: infer A } ? { response: A } : object);

/** A route of the contract in the words of the framework. */
export const routeOptions = <R extends RouteContract>(
  route: R,
): { method: R['method']; url: R['path']; schema: Schemas<R> } => ({
  method: route.method,
  url: route.path,
  schema: {
    ...(route.params === undefined ? {} : { params: route.params }),
    ...(route.query === undefined ? {} : { querystring: route.query }),
    ...(route.body === undefined ? {} : { body: route.body }),
    response: route.answers,
  } as unknown as Schemas<R>,
});
