import { join, resolve } from 'node:path';
import type { Command } from './command.ts';
import type { OpenedDocument } from './open-document.ts';
import { cliProblem } from './problems.ts';
import { words } from './words.ts';

const portOf = (text: string): number | undefined => {
  const port = /^\d{1,5}$/.test(text) ? Number(text) : Number.NaN;
  return port <= 65535 ? port : undefined;
};

const bytesOf = (gigabytes: string): number | undefined =>
  /^\d{1,5}(?:\.\d+)?$/.test(gigabytes) ? Number(gigabytes) * 1e9 : undefined;

/** Opens the pages and stays until the person stops it. */
export const openCommand: Command = {
  name: 'open',
  usage: '[--port N] [--host ADDRESS] [--data FOLDER]',
  options: [
    { name: 'port', value: 'N' },
    { name: 'host', value: 'ADDRESS' },
    { name: 'data', value: 'FOLDER' },
    { name: 'allow-host', value: 'NAMES' },
    { name: 'largest-archive', value: 'GB' },
  ],
  operands: [0, 0],
  examples: ['twinfloor open --port 4780'],
  run: async ({ values, flags }, world) => {
    const given = values.port ?? '4780';
    const port = portOf(given);
    if (port === undefined) {
      return { problems: [cliProblem('CLI_OPTION_VALUE', '--port', { given, allowed: '0 to 65535' })] };
    }
    const { 'largest-archive': gigabytes } = values;
    const largestArchive = gigabytes === undefined ? undefined : bytesOf(gigabytes);
    if (gigabytes !== undefined && largestArchive === undefined) {
      const rest = { given: gigabytes, allowed: words.say('cli.gigabytes') };
      return { problems: [cliProblem('CLI_OPTION_VALUE', '--largest-archive', rest)] };
    }
    const host = values.host ?? '127.0.0.1';
    const data = values.data === undefined ? join(world.root, '.twinfloor') : resolve(world.cwd, values.data);
    const allowHosts = (values['allow-host'] ?? '').split(',').map((name) => name.trim().toLowerCase());
    // listened for from now on: a signal that comes while the server starts must close it cleanly too
    const stopped = world.untilStopped();
    const opened = await world.serve({
      host,
      port,
      data,
      allowHosts: allowHosts.filter((name) => name !== ''),
      ...(largestArchive === undefined ? {} : { largestArchive }),
    });
    if (!opened.ok) return { problems: opened.problems, sentences: [opened.message] };
    const { address, kept, loopback, close } = opened.value;
    if (flags.has('json')) {
      const document: OpenedDocument = {
        document: 'twinfloor open',
        version: 1,
        address,
        kept,
      };
      world.out(`${JSON.stringify(document)}\n`);
    } else {
      world.out(`${words.say('open.running', { address })}\n${words.say('open.kept', { kept })}\n`);
      if (!loopback) world.err(`${words.say('open.wide', { host })}\n`);
    }
    await stopped;
    await close();
    if (!flags.has('json')) world.out(`${words.say('open.stopped')}\n`);
    return 0;
  },
};
