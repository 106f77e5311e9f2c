import fastifyHelmet from '@fastify/helmet';
import Fastify, { type FastifyInstance } from 'fastify';
import { serializerCompiler, validatorCompiler, type ZodTypeProvider } from 'fastify-type-provider-zod';
import { bodyLimit, routes } from './api.ts';
import { bookRoutes } from './book-routes.ts';
import { servePages } from './page-files.ts';
import type { ServerPorts } from './ports.ts';
import { serverProblem } from './problems.ts';
import { recordRoutes } from './record-routes.ts';
import { refuseWith } from './refuse-with.ts';
import { problemsOfError } from './reply-error.ts';
import { requestProblem } from './request-guard.ts';
import { routeOptions } from './route-options.ts';
import { securityHeaders } from './security-headers.ts';

/** Longest wait for a request to arrive whole, in milliseconds: a half-sent one must not hold the server. */
const requestTimeout = 30_000;

/** The server, ready to listen or to be called by a test. */
export const makeServer = async (ports: ServerPorts): Promise<FastifyInstance> => {
  // no log: what people do here is nobody's business, and a fault is told to `onFault`
  const server = Fastify({ bodyLimit, requestTimeout, logger: false, forceCloseConnections: true });
  // JSON alone is read: a form of a foreign page may send text without being asked, JSON only after a question
  server.removeContentTypeParser('text/plain');
  server.setValidatorCompiler(validatorCompiler);
  server.setSerializerCompiler(serializerCompiler);

  await server.register(fastifyHelmet, securityHeaders);
  server.addHook('onRequest', async (request, reply) => {
    const { host, origin } = request.headers;
    const site = request.headers['sec-fetch-site'];
    const problem = requestProblem(
      { method: request.method, host, origin, site: typeof site === 'string' ? site : undefined },
      ports.allowHosts,
    );
    if (problem !== undefined) return refuseWith(reply, [problem]);
    if (request.url.startsWith('/api/')) reply.header('cache-control', 'no-store');
  });
  server.setErrorHandler((error, _request, reply) => {
    const problems = problemsOfError(error);
    if (problems === undefined) ports.onFault(error);
    return refuseWith(reply, problems ?? [serverProblem('SERVER_FAULT', '')]);
  });

  const { version, kept } = ports;
  server.withTypeProvider<ZodTypeProvider>().route({
    ...routeOptions(routes.readHealth),
    handler: async () => ({ ok: true as const, version, kept }),
  });
  bookRoutes(server, ports);
  recordRoutes(server, ports);
  await servePages(server, ports.pages);
  return server;
};
