import type * as z from 'zod';
import { type Failure, failureSchema, type RouteContract, type RouteName, routes } from './api.ts';

type Routes = typeof routes;
type Part<R, K extends string> = R extends { readonly [P in K]: infer S extends z.ZodType }
  ? z.input<S>
  : undefined;
type Answers<R> = R extends { readonly answers: infer A } ? A[keyof A] : never;

/** What a call gives: the answer, the server's refusal, or that the server could not be reached. */
export type Reply<N extends RouteName> =
  | {
      readonly ok: true;
      readonly status: number;
      readonly value: z.output<Extract<Answers<Routes[N]>, z.ZodType>>;
    }
  | { readonly ok: false; readonly reached: true; readonly status: number; readonly failure: Failure }
  | { readonly ok: false; readonly reached: false; readonly cause: unknown };

type Given<N extends RouteName> = (Part<Routes[N], 'params'> extends undefined
  ? object
  : { readonly params: Part<Routes[N], 'params'> }) &
  (Part<Routes[N], 'query'> extends undefined ? object : { readonly query?: Part<Routes[N], 'query'> }) &
  (Part<Routes[N], 'body'> extends undefined ? object : { readonly body: Part<Routes[N], 'body'> }) &
  (Routes[N] extends { readonly bytes: true } ? { readonly bytes: Blob } : object);

export interface ClientPorts {
  readonly fetch: (url: string, init: RequestInit) => Promise<Response>;
  /** Put before every path; empty in the page, which calls the server that it came from. */
  readonly base?: string;
}

export type Client = <N extends RouteName>(
  name: N,
  given: Given<N>,
  options?: { readonly signal?: AbortSignal },
) => Promise<Reply<N>>;

const pathWith = (path: string, params: Readonly<Record<string, unknown>>): string =>
  path.replace(/:([a-z0-9]+)/g, (_, name: string) => encodeURIComponent(String(params[name])));

const queryOf = (query: Readonly<Record<string, unknown>>): string => {
  const given = Object.entries(query).filter(([, value]) => value !== undefined);
  return given.length === 0
    ? ''
    : `?${new URLSearchParams(given.map(([name, value]) => [name, String(value)])).toString()}`;
};

/** Calls the routes of the contract by name. Never throws: a lost server is a reply too. */
export const makeClient =
  ({ fetch, base = '' }: ClientPorts): Client =>
  async (name, given, options) => {
    const route: RouteContract = routes[name];
    const { params, query, body, bytes } = given as {
      params?: Record<string, unknown>;
      query?: Record<string, unknown>;
      body?: unknown;
      bytes?: Blob;
    };
    try {
      const response = await fetch(`${base}${pathWith(route.path, params ?? {})}${queryOf(query ?? {})}`, {
        method: route.method,
        headers: {
          accept: 'application/json',
          ...(body === undefined ? {} : { 'content-type': 'application/json' }),
          ...(bytes === undefined ? {} : { 'content-type': bytes.type }),
        },
        ...(body === undefined ? {} : { body: JSON.stringify(body) }),
        ...(bytes === undefined ? {} : { body: bytes }),
        ...(options?.signal === undefined ? {} : { signal: options.signal }),
      });
      const answer: unknown = await response.json();
      const schema = route.answers[response.status];
      if (schema !== undefined) {
        return { ok: true, status: response.status, value: schema.parse(answer) as never };
      }
      return { ok: false, reached: true, status: response.status, failure: failureSchema.parse(answer) };
    } catch (cause) {
      // refused connection, an answer cut short, or something between that is not our server
      return { ok: false, reached: false, cause };
    }
  };
