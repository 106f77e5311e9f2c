import { mkdirSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { onBuiltPages } from './built-pages.mjs';
import { apart } from './guide/apart.mjs';
import { fill } from './guide/fill.mjs';
import { firstBook } from './guide/first-book.mjs';
import { papers } from './guide/papers.mjs';
import { questions } from './guide/questions.mjs';
import { rebuild } from './guide/rebuild.mjs';
import { runOff } from './guide/run-off.mjs';
import { shift } from './guide/shift.mjs';
import { signature } from './guide/signature.mjs';
import { siteChanges } from './guide/site-changes.mjs';
import { siteProof } from './guide/site-proof.mjs';
import { openStory } from './guide/story.mjs';
import { utilities } from './guide/utilities.mjs';
import { willItRun } from './guide/will-it-run.mjs';
import { withPalette } from './palette-png.mjs';
import { projectRoot } from './project-root.mjs';

/**
 * Takes the pictures of the user guide: walks the story of the demo book by clicks, as the guide tells it, so that
 * what the guide says has been done. A step that no longer works breaks off with its name.
 */
const tasks = {
  'first book': firstBook,
  'will it run': willItRun,
  questions,
  'site changes': siteChanges,
  utilities,
  fill,
  shift,
  'run off': runOff,
  apart,
  rebuild,
  'site proof': siteProof,
  papers,
  signature,
};

/** Enough for the few colours of a page and the edges of its letters. */
const colours = 96;

const folder = join(projectRoot, 'docs', 'guide', 'pictures');
mkdirSync(folder, { recursive: true });
const taken = new Set();
const keep = (name, png) => {
  const bytes = withPalette(png, colours);
  writeFileSync(join(folder, `${name}.png`), bytes);
  taken.add(`${name}.png`);
  process.stdout.write(`${name}.png, ${Math.round(bytes.length / 1024)} KB\n`);
};

await onBuiltPages(async ({ browser, address }) => {
  const story = await openStory({ browser, address, keep });
  for (const [name, walk] of Object.entries(tasks)) {
    try {
      await walk(story);
    } catch (cause) {
      for (const shown of ['page', 'phone']) {
        await story[shown].screenshot({ path: join(projectRoot, 'test-results', `guide-${shown}.png`) });
      }
      throw new Error(`${name}: ${cause.message}`, { cause });
    }
  }
});
for (const name of readdirSync(folder)) {
  if (!taken.has(name)) rmSync(join(folder, name));
}
