/** The built server in a process of its own, so that a test can kill it. Arguments: root, data folder, port. */
const [root, data, port] = process.argv.slice(2);
const { serve } = await import(new URL('dist/node/server.mjs', `file://${root}/`).href);
const served = await serve({ host: '127.0.0.1', port: Number(port), data, allowHosts: [], root });
if (!served.ok) {
  process.stderr.write(`${JSON.stringify(served.problems)}\n`);
  process.exit(1);
}
process.stdout.write(`${served.value.address}\n`);
