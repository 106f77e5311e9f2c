import { existsSync } from 'node:fs';
import { join } from 'node:path';
import fastifyStatic from '@fastify/static';
import type { FastifyInstance } from 'fastify';
import { serverProblem } from './problems.ts';
import { refuseWith } from './refuse-with.ts';

const year = 365 * 24 * 3600;

/** The build puts a digest of the content into the names under assets: those files never change. */
const isHashed = (path: string): boolean => /[\\/]assets[\\/]/.test(path);

/**
 * Serves the built pages: compressed as the build left them, files with a digest in their name for a year, the
 * rest asked for again each time. An address that is no file is a place inside the page and gets the page.
 */
export const servePages = async (server: FastifyInstance, folder: string): Promise<void> => {
  const built = existsSync(join(folder, 'index.html'));
  if (built) {
    await server.register(fastifyStatic, {
      root: folder,
      preCompressed: true,
      cacheControl: false,
      index: 'index.html',
      setHeaders: (reply, path) => {
        reply.header('cache-control', isHashed(path) ? `public, max-age=${year}, immutable` : 'no-cache');
      },
    });
  }
  server.setNotFoundHandler((request, reply) => {
    const place = request.url.split('?')[0] ?? '';
    const wantsPage =
      request.method === 'GET' && !/^\/(?:api|assets)(?:\/|$)/.test(place) && !/\.[a-z0-9]+$/i.test(place);
    if (wantsPage && built) return reply.sendFile('index.html');
    const problem = wantsPage
      ? serverProblem('SERVER_PAGES_ABSENT', place, { given: join(folder, 'index.html') })
      : serverProblem('SERVER_NO_SUCH_PLACE', place, { given: place.slice(0, 200) });
    return refuseWith(reply, [problem]);
  });
};
