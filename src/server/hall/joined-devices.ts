import { createHash } from 'node:crypto';
import * as z from 'zod';
import type { HallPorts, Visitor, Way } from './hall-ports.ts';

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
  readonly join: (name: string, way: Way) => Promise<string>;
  /** The device that holds this token and came by this way: what was sent unencrypted opens nothing else. */
  readonly holder: (token: string, way: Way) => Visitor | undefined;
  readonly remove: (id: string) => Promise<boolean>;
}

const digest = (token: string): string => createHash('sha256').update(token).digest('hex');

/** One line to be shown: no control characters, and no more than a name needs. */
export const deviceName = (name: string): string =>
  name
    .replace(/[\p{C}\s]+/gu, ' ')
    .trim()
    .slice(0, 60);

const readKept = (text: string | undefined): readonly JoinedDevice[] => {
  if (text === undefined) return [];
  try {
    return fileSchema.parse(JSON.parse(text)).devices;
  } catch {
    // a file that can't be read joins nobody: each device types a new code
    return [];
  }
};

/** The devices that joined, kept over a restart of the program. */
export const openJoinedDevices = async ({ files, clock, random }: HallPorts): Promise<JoinedDevices> => {
  let devices = readKept(await files.read(deviceFile));
  const seen = new Map<string, number>();
  const keep = (): Promise<void> =>
    files.write(
      deviceFile,
      `${JSON.stringify({ twinfloorDevices: 1, devices } satisfies z.input<typeof fileSchema>, null, 2)}\n`,
    );
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
      await keep();
      return token;
    },
    holder: (token, way) => {
      const sought = digest(token);
      const found = living().find((device) => device.token === sought && device.way === way);
      if (found === undefined) return undefined;
      seen.set(found.id, clock());
      return { id: found.id, name: found.name, way: found.way };
    },
    remove: async (id) => {
      const left = devices.filter((device) => device.id !== id);
      if (left.length === devices.length) return false;
      // shut out at once, whatever the disk says
      devices = left;
      seen.delete(id);
      await keep();
      return true;
    },
  };
};
