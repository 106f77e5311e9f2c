import type { FastifyInstance } from 'fastify';
import { makeServer } from '../make-server.ts';
import type { ServerPorts } from '../ports.ts';
import type { HallDoor, Listening } from './hall-ports.ts';

/** The most connections at a time: a hall has a handful of devices, and what fills the door must not fill the laptop. */
const mostConnections = 100;

/** The port that the system gave, where any would do. */
export const boundPort = (server: FastifyInstance, asked: number): number => {
  const bound = server.server.address();
  return typeof bound === 'object' && bound !== null ? bound.port : asked;
};

/** Opens a listener for the hall over the same store; `names` are those by which devices may call this machine. */
export const hallListener =
  (ports: ServerPorts, names: readonly string[]) =>
  async (hallDoor: HallDoor): Promise<Listening> => {
    const server = await makeServer({ ...ports, allowHosts: new Set(names), hallDoor });
    server.server.maxConnections = mostConnections;
    try {
      await server.listen({ host: hallDoor.address, port: hallDoor.port });
    } catch (cause) {
      await server.close();
      throw cause;
    }
    return { port: boundPort(server, hallDoor.port), close: () => server.close() };
  };
