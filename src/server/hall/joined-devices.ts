import { createHash } from 'node:crypto';
import * as z from 'zod';
import { accept, type Result, refuse } from '../../quantity/problem.ts';
import { serverProblem } from '../problems.ts';
import type { HallPorts, Visitor, Way } from './hall-ports.ts';
import { worldCode } from './world-code.ts';

/** A joined device stays so for a month: longer than a hand-over at the site, short enough to be forgotten. */
const joinedFor = 30 * 24 * 3600_000;

const deviceFile = 'devices.json';

const deviceSchema = z.object({
  id: z.string(),
  name: z.string(),
  way: z.enum(['tls', 'plain']),
  /** Moments, in milliseconds since 1970. */
  joined: z.number(),
  until: z.number(),
  /** SHA-256 of the token that the device's cookie holds: the token itself is kept by the device alone. */
  token: z.string(),
});
const fileSchema = z.object({ twinfloorDevices: z.literal(1), devices: z.array(deviceSchema).readonly() });

export type JoinedDevice = z.infer<typeof deviceSchema> & { readonly seen?: number };

export interface JoinedDevices {
  readonly list: () => readonly JoinedDevice[];
  /** Joins a device and gives the token that its cookie is to hold. */
  readonly join: (name: string, way: Way) => Promise<Result<string>>;
  /** The device that holds this token and came by this way: what was sent unencrypted opens nothing else. */
  readonly holder: (token: string, way: Way) => Visitor | undefined;
  readonly remove: (id: string) => Promise<Result<true>>;
}

const digest = (token: string): string => createHash('sha256').update(token).digest('hex');

/** One line to be shown: no control characters, and no more than a name needs. */
export const deviceName = (name: string): string =>
  name
    .replace(/[\p{C}\s]+/gu, ' ')
    .trim()
    .slice(0, 60);

const readKept = async (files: HallPorts['files']): Promise<readonly JoinedDevice[]> => {
  try {
    const text = await files.read(deviceFile);
    if (text === undefined) return [];
    return fileSchema.parse(JSON.parse(text)).devices;
  } catch {
    // a file that can't be read joins nobody, and keeps nobody from the books: each device types a new code
    return [];
  }
};

/** The devices that joined, kept over a restart of the program. */
export const openJoinedDevices = async ({ files, clock, random }: HallPorts): Promise<JoinedDevices> => {
  let devices = await readKept(files);
  const seen = new Map<string, number>();
  const keep = async (): Promise<Result<true>> => {
    const kept: z.input<typeof fileSchema> = { twinfloorDevices: 1, devices };
    try {
      await files.write(deviceFile, `${JSON.stringify(kept, null, 2)}\n`);
      return accept(true);
    } catch (cause) {
      return refuse(serverProblem('HALL_CANNOT_KEEP', 'devices', { allowed: worldCode(cause) }));
    }
  };
  const living = () => devices.filter(({ until }) => clock() < until);
  return {
    list: () =>
      living().map((device) => {
        const last = seen.get(device.id);
        return last === undefined ? device : { ...device, seen: last };
      }),
    join: async (name, way) => {
      const token = Buffer.from(random(32)).toString('base64url');
      const id = Buffer.from(random(9)).toString('base64url');
      const joined = clock();
      devices = [...living(), { id, name, way, joined, until: joined + joinedFor, token: digest(token) }];
      const kept = await keep();
      if (kept.ok) return accept(token);
      devices = devices.filter((device) => device.id !== id);
      return kept;
    },
    holder: (token, way) => {
      const sought = digest(token);
      const found = living().find((device) => device.token === sought && device.way === way);
      if (found === undefined) return undefined;
      seen.set(found.id, clock());
      return { id: found.id, name: found.name, way: found.way };
    },
    remove: async (id) => {
      // shut out at once, whatever the disk says
      devices = devices.filter((device) => device.id !== id);
      seen.delete(id);
      return keep();
    },
  };
};
