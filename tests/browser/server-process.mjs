/**
 * The built server in a process of its own, so that a test can kill it. It serves one data folder after the other: a
 * line `{ data, port }` begins, the next ends the one before; each is answered by a line with the address.
 */
import { createInterface } from 'node:readline';

const [root] = process.argv.slice(2);
const { serve } = await import(new URL('dist/node/server.mjs', `file://${root}/`).href);
let running;
for await (const line of createInterface({ input: process.stdin })) {
  const { data, port } = JSON.parse(line);
  await running?.close();
  running = undefined;
  if (data === undefined) {
    process.stdout.write('closed\n');
    continue;
  }
  const served = await serve({ host: '127.0.0.1', port, data, allowHosts: [], root });
  if (!served.ok) {
    process.stderr.write(`${JSON.stringify(served.problems)}\n`);
    process.exit(1);
  }
  running = served.value;
  process.stdout.write(`${running.address}\n`);
}
// whoever started it is gone
process.exit(0);
