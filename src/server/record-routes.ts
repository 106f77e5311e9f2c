import type { FastifyInstance } from 'fastify';
import type { ZodTypeProvider } from 'fastify-type-provider-zod';
import { bodyProblems } from '../record/append-record.ts';
import { type Envelope, envelopeProblems } from '../record/envelope.ts';
import { recordKinds } from '../record/kinds.ts';
import { routes } from './api.ts';
import type { ServerPorts } from './ports.ts';
import { refuseWith } from './refuse-with.ts';
import { routeOptions } from './route-options.ts';

/** Most records in one answer; the page asks on from `position`. */
const mostAtOnce = 1000;

/** Records: read from a position, added and never changed. */
export const recordRoutes = (server: FastifyInstance, { store }: ServerPorts): void => {
  const typed = server.withTypeProvider<ZodTypeProvider>();

  typed.route({
    ...routeOptions(routes.listRecords),
    handler: async (request, reply) => {
      const { since } = request.query;
      const page = await store.readRecords(request.params.id, {
        most: mostAtOnce,
        ...(since === undefined ? {} : { since }),
      });
      if (!page.ok) return refuseWith(reply, page.problems);
      const { records, position, more } = page.value;
      return { records: [...records], position, more };
    },
  });

  typed.route({
    ...routeOptions(routes.appendRecords),
    handler: async (request, reply) => {
      const { records } = request.body;
      const problems = records.flatMap((record, i) => {
        const path = `/records/${i}`;
        const malformed = envelopeProblems(record, path);
        return malformed.length > 0 ? malformed : bodyProblems(record as Envelope, recordKinds, path);
      });
      if (problems.length > 0) return refuseWith(reply, problems);
      const appended = await store.appendRecords(request.params.id, records as Envelope[]);
      if (!appended.ok) return refuseWith(reply, appended.problems);
      return { added: [...appended.value.added], known: [...appended.value.known] };
    },
  });
};
