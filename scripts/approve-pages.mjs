import { spawnSync } from 'node:child_process';
import { readdirSync, renameSync } from 'node:fs';
import { join } from 'node:path';
import { projectRoot } from './project-root.mjs';

/** Sets the pages anew and takes those that look otherwise as approved: all of them, or those that are named. */
const folder = join(projectRoot, 'src', 'papers', 'pages');
const named = process.argv.slice(2);
spawnSync(process.execPath, [join(projectRoot, 'node_modules', 'vitest', 'vitest.mjs'), 'run', folder], {
  cwd: projectRoot,
  stdio: 'ignore',
});
const ending = '.new.png';
for (const file of readdirSync(folder).filter((one) => one.endsWith(ending))) {
  const name = file.slice(0, -ending.length);
  if (named.length > 0 && !named.includes(name)) continue;
  renameSync(join(folder, file), join(folder, `${name}.png`));
  console.log(`${name} is approved`);
}
