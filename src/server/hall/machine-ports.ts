import { randomBytes } from 'node:crypto';
import { mkdir, open, readFile, rename } from 'node:fs/promises';
import { hostname, networkInterfaces } from 'node:os';
import { join } from 'node:path';
import { isLinkLocal } from '../host-name.ts';
import type { HallFiles, HallPorts, Network } from './hall-ports.ts';

/** Addresses of this machine that others in its networks can reach, IPv4 first: those are the ones that people type. */
export const machineNetworks = (): readonly Network[] =>
  Object.entries(networkInterfaces())
    .flatMap(([name, addresses]) =>
      (addresses ?? [])
        // a link-local address of IPv6 wants the name of the caller's interface behind it, which no link can know
        .filter(({ internal, address }) => !internal && !isLinkLocal(address))
        .map(({ address, family }) => ({ name, address, family })),
    )
    .sort((a, b) => a.family.localeCompare(b.family))
    .map(({ name, address }) => ({ name, address }));

/** Files that this account alone may read, in a folder that it alone may enter. */
export const machineFiles = (folder: string): HallFiles => ({
  read: async (name) => {
    try {
      return await readFile(join(folder, name), 'utf8');
    } catch (cause) {
      if ((cause as NodeJS.ErrnoException).code === 'ENOENT') return undefined;
      throw cause;
    }
  },
  write: async (name, text) => {
    await mkdir(folder, { recursive: true, mode: 0o700 });
    const making = join(folder, `${name}.making`);
    const file = await open(making, 'w', 0o600);
    try {
      // a file that was left half made may have been made with other rights
      await file.chmod(0o600);
      await file.writeFile(text);
      await file.sync();
    } finally {
      await file.close();
    }
    await rename(making, join(folder, name));
  },
});

/** The hall's world as this machine is. */
export const machinePorts = (data: string, names: readonly string[]): Omit<HallPorts, 'listen'> => ({
  clock: Date.now,
  random: (bytes) => randomBytes(bytes),
  networks: machineNetworks,
  names: [...new Set([hostname().toLowerCase(), ...names])].filter((name) => /^[a-z0-9.-]+$/.test(name)),
  files: machineFiles(join(data, 'hall')),
});
