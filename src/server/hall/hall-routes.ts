import type { FastifyInstance, FastifyReply, FastifyRequest } from 'fastify';
import type { ZodTypeProvider } from 'fastify-type-provider-zod';
import { accept, type Result } from '../../quantity/problem.ts';
import { routes } from '../api.ts';
import type { HallOfLaptop } from '../hall-api.ts';
import { isFromHere } from '../host-name.ts';
import type { ServerPorts } from '../ports.ts';
import { serverProblem } from '../problems.ts';
import { refuseWith } from '../refuse-with.ts';
import { routeOptions } from '../route-options.ts';
import type { Hall, HallState } from './hall.ts';

const iso = (milliseconds: number): string => new Date(milliseconds).toISOString();

/** As the page of the laptop gets it; what a device's token comes to stays here. */
const travelling = ({ code, devices, networks, ...rest }: HallState): HallOfLaptop => ({
  here: 'laptop',
  ...rest,
  networks: [...networks],
  ...(code === undefined ? {} : { code: { ...code, until: iso(code.until) } }),
  devices: devices.map(({ id, name, way, joined, seen }) => ({
    id,
    name,
    way,
    joined: iso(joined),
    ...(seen === undefined ? {} : { seen: iso(seen) }),
  })),
});

/** The hall is looked after by a page on the laptop; a joined device is told its own name and nothing else. */
export const hallRoutes = (server: FastifyInstance, { hall }: ServerPorts): void => {
  const typed = server.withTypeProvider<ZodTypeProvider>();

  /** What the page on the laptop asks for; whoever asks from elsewhere is refused, whatever the listener. */
  const atLaptop = async (
    request: FastifyRequest,
    reply: FastifyReply,
    act: (hall: Hall) => Promise<Result<HallState>> | Result<HallState>,
  ): Promise<HallOfLaptop> => {
    if (hall === undefined || !isFromHere(request.ip)) {
      return refuseWith(reply, [serverProblem('HALL_LAPTOP_ONLY', '')]);
    }
    const answer = await act(hall);
    return answer.ok ? travelling(answer.value) : refuseWith(reply, answer.problems);
  };

  typed.route({
    ...routeOptions(routes.readHall),
    handler: async (request, reply) => {
      const { visitor } = request;
      return visitor === null || visitor === undefined
        ? atLaptop(request, reply, (own) => accept(own.state()))
        : { here: 'device' as const, name: visitor.name, way: visitor.way };
    },
  });
  typed.route({
    ...routeOptions(routes.openHall),
    handler: async (request, reply) => atLaptop(request, reply, (own) => own.open(request.body)),
  });
  typed.route({
    ...routeOptions(routes.closeHall),
    handler: async (request, reply) => atLaptop(request, reply, async (own) => accept(await own.close())),
  });
  typed.route({
    ...routeOptions(routes.renewHallCode),
    handler: async (request, reply) => atLaptop(request, reply, (own) => own.renewCode()),
  });
  typed.route({
    ...routeOptions(routes.removeHallDevice),
    handler: async (request, reply) => atLaptop(request, reply, (own) => own.remove(request.body.device)),
  });
};
