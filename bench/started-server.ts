import { spawn } from 'node:child_process';
import { join } from 'node:path';

/** A server in a process of its own, as whoever uses it has it. */
export interface StartedServer {
  readonly address: string;
  readonly end: () => Promise<void>;
}

/** Starts the server over a folder of books and waits until it says where it is. */
export const startedServer = (root: string, data: string): Promise<StartedServer> =>
  new Promise((resolve, reject) => {
    const child = spawn(process.execPath, [join(root, 'scripts/start.mjs'), '--port', '0', '--data', data]);
    let said = '';
    const ended = new Promise<void>((well, badly) => {
      child.once('close', (status) => (status === 0 ? well() : badly(new Error(said))));
    });
    // one that ends before it is ready is told here, and to nobody twice
    ended.catch(reject);
    child.stdout.on('data', (chunk) => {
      said += String(chunk);
      const address = /http:\/\/\S+/.exec(said)?.[0];
      if (address === undefined || !said.includes('Ctrl+C')) return;
      resolve({
        address,
        end: () => {
          child.kill('SIGTERM');
          return ended;
        },
      });
    });
  });
