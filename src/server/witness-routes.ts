import type { FastifyInstance } from 'fastify';
import type { ZodTypeProvider } from 'fastify-type-provider-zod';
import { readBook } from '../book/index.ts';
import { loadTranslation } from '../text/index.ts';
import { routes } from './api.ts';
import type { ServerPorts } from './ports.ts';
import { refuseWith } from './refuse-with.ts';
import { routeOptions } from './route-options.ts';

/** The file for a witness, of the book as it was saved last and of what is recorded here. */
export const witnessRoutes = (server: FastifyInstance, { store, now }: ServerPorts): void => {
  server.withTypeProvider<ZodTypeProvider>().route({
    ...routeOptions(routes.makeWitness),
    handler: async (request, reply) => {
      const { id } = request.params;
      const { units, language = 'en' } = request.query;
      const latest = await store.latestRevision(id);
      if (!latest.ok) return refuseWith(reply, latest.problems);
      const read = readBook(latest.value.text);
      if (!read.ok) return refuseWith(reply, read.problems);
      const page = await store.standing(id);
      if (!page.ok) return refuseWith(reply, page.problems);
      // the calculation comes with the first file, so that the server starts without it
      const { witnessOfStore } = await import('./witness-of-store.ts');
      const { html, digest, included, leftOut } = await witnessOfStore(store, {
        book: read.value,
        revision: latest.value,
        page: page.value,
        date: now().slice(0, 10),
        translation: await loadTranslation(language),
        units,
      });
      return {
        html,
        digest,
        included: included.length,
        leftOut: [...leftOut].map(([sha256, why]) => ({ sha256, why })),
      };
    },
  });
};
