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
      const { id } = request.params;
      const { since, before } = request.query;
      const page = await store.readRecords(id, {
        most: mostAtOnce,
        ...(since === undefined ? {} : { since }),
        ...(before === undefined ? {} : { before }),
      });
      if (!page.ok) return refuseWith(reply, page.problems);
      const heads = await store.heads(id);
      if (!heads.ok) return refuseWith(reply, heads.problems);
      const { records, ...ends } = page.value;
      // each writer's records count from 0 without gaps
      const total = heads.value.reduce((sum, { sequence }) => sum + sequence + 1, 0);
      return { records: [...records], ...ends, total };
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
