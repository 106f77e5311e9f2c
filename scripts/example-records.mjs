/**
 * Makes examples/records/protocol.records and the reply to its witness file anew from the demonstration book and the story in
 * scripts/examples: a book that has changed leaves results stale which an example means to show as proved.
 */
import { mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { bundled } from './bundled.mjs';
import { projectRoot } from './project-root.mjs';

const place = join(projectRoot, 'node_modules', '.cache', `examples-${process.pid}`);
const at = (path) => join(projectRoot, path);
mkdirSync(place, { recursive: true });
try {
  const { protocolFiles } = await bundled(place, 'scripts/examples/protocol-files.ts');
  const { records, reply } = protocolFiles(
    readFileSync(at('src/book/demo/flagon-line.json'), 'utf8'),
    JSON.parse(readFileSync(at('scripts/examples/protocol-story.json'), 'utf8')),
  );
  writeFileSync(at('examples/records/protocol.records'), records);
  writeFileSync(at('examples/records/protocol.reply'), reply);
} finally {
  rmSync(place, { recursive: true, force: true });
}
