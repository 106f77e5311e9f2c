import fastifyHelmet from '@fastify/helmet';
import Fastify, { type FastifyInstance } from 'fastify';
import { serializerCompiler, validatorCompiler, type ZodTypeProvider } from 'fastify-type-provider-zod';
import { bodyLimit, routes } from './api.ts';
import { archiveRoutes } from './archive-routes.ts';
import { bookRoutes } from './book-routes.ts';
import { hallGate } from './hall/hall-gate.ts';
import { hallRoutes } from './hall/hall-routes.ts';
import { mediaRoutes } from './media-routes.ts';
import { servePages } from './page-files.ts';
import { paperRoutes } from './paper-routes.ts';
import type { ServerPorts } from './ports.ts';
import { serverProblem } from './problems.ts';
import { recordRoutes } from './record-routes.ts';
import { refuseWith } from './refuse-with.ts';
import { problemsOfError } from './reply-error.ts';
import { type Answering, requestProblem } from './request-guard.ts';
import { routeOptions } from './route-options.ts';
import { securityHeaders } from './security-headers.ts';
import { speakToReaders } from './speak-to-readers.ts';
import { witnessRoutes } from './witness-routes.ts';

/** Longest wait for a request to arrive whole, in milliseconds: a film of a minute over the radio of a hall. */
const requestTimeout = 600_000;

/** Longest silence of a connection, in milliseconds: a half-sent request must not hold the server. */
const connectionTimeout = 30_000;

/** The server, ready to listen or to be called by a test. */
export const makeServer = async (ports: ServerPorts): Promise<FastifyInstance> => {
  // no log: what people do here is nobody's business, and a fault is told to `onFault`
  const { hallDoor } = ports;
  const tls = hallDoor?.keyAndCertificate;
  const server = Fastify({
    bodyLimit,
    requestTimeout,
    connectionTimeout,
    logger: false,
    forceCloseConnections: true,
    https: tls === undefined ? null : { key: tls.key, cert: tls.certificate, minVersion: 'TLSv1.2' },
  }) as unknown as FastifyInstance;
  // JSON alone is read: a form of a foreign page may send text without being asked, JSON only after a question
  server.removeContentTypeParser('text/plain');
  server.setValidatorCompiler(validatorCompiler);
  server.setSerializerCompiler(serializerCompiler);

  // the hall's listener answers to its own address and names, and never to those of the laptop's own page
  const answering: Answering = {
    scheme: tls === undefined ? 'http' : 'https',
    loopback: hallDoor === undefined,
    names: hallDoor === undefined ? ports.allowHosts : new Set([hallDoor.address, ...ports.allowHosts]),
  };
  speakToReaders(server);
  await server.register(fastifyHelmet, securityHeaders);
  server.addHook('onRequest', async (request, reply) => {
    const { host, origin } = request.headers;
    const site = request.headers['sec-fetch-site'];
    const problem = requestProblem(
      { method: request.method, host, origin, site: typeof site === 'string' ? site : undefined },
      answering,
    );
    if (problem !== undefined) return refuseWith(reply, [problem]);
    if (request.url.startsWith('/api/')) reply.header('cache-control', 'no-store');
  });
  if (hallDoor !== undefined) await hallGate(server, hallDoor.gate);
  server.setErrorHandler((error, request, reply) => {
    const problems = problemsOfError(error);
    // a sender who went away in the middle is no mistake of ours, and hears no answer
    if (problems === undefined && !request.raw.readableAborted) ports.onFault(error);
    return refuseWith(reply, problems ?? [serverProblem('SERVER_FAULT', '')]);
  });

  const { version, kept } = ports;
  server.withTypeProvider<ZodTypeProvider>().route({
    ...routeOptions(routes.readHealth),
    handler: async () => ({ ok: true as const, version, kept }),
  });
  bookRoutes(server, ports);
  recordRoutes(server, ports);
  await mediaRoutes(server, ports);
  await archiveRoutes(server, ports);
  paperRoutes(server, ports);
  witnessRoutes(server, ports);
  hallRoutes(server, ports);
  await servePages(server, ports.pages);
  return server;
};
