import { existsSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { runnerImport } from 'vite';
import { requireNode } from './node-version.mjs';
import { projectRoot } from './project-root.mjs';

const usage = `How a translation gets in, see CONTRIBUTING.md:
  node scripts/translations.mjs missing LANGUAGE FILE.json   writes the English that has no words there yet
  node scripts/translations.mjs take LANGUAGE FILE.json      puts a filled file into the tables of the language
`;

const read = (file) => JSON.parse(readFileSync(file, 'utf8'));
const write = (file, table) => writeFileSync(file, `${JSON.stringify(table, null, 2)}\n`);

const load = async (path) =>
  (
    await runnerImport(join(projectRoot, path), {
      configFile: false,
      root: projectRoot,
      logLevel: 'error',
    })
  ).module;

/** What the tables of a language hold, whatever folder it stands under. */
const heldIn = (folder) =>
  Object.assign(
    {},
    ...readdirSync(folder)
      .filter((name) => name.endsWith('.json'))
      .map((name) => read(join(folder, name))),
  );

const sorted = (entries) =>
  Object.fromEntries(entries.toSorted(([one], [other]) => (one < other ? -1 : one > other ? 1 : 0)));

/** The module that puts the tables of a language together. */
const indexOf = (
  language,
  areas,
) => `${areas.map((area) => `import ${area} from './${area}.json';`).join('\n')}

/** The tables of the language, one for each folder that says something. */
export const ${language}: readonly Readonly<Record<string, string>>[] = [
${areas.map((area) => `  ${area},`).join('\n')}
];
`;

/** Writes the tables anew, each text once under the folder that says it; what nobody says any more goes. */
const writeTables = (folder, language, messages, held) => {
  const areas = new Map([...messages.values()].map((area) => [area, []]));
  for (const [text, area] of messages) {
    if (Object.hasOwn(held, text)) areas.get(area).push([text, held[text]]);
  }
  for (const name of readdirSync(folder)) if (name.endsWith('.json')) rmSync(join(folder, name));
  for (const [area, entries] of areas) write(join(folder, `${area}.json`), sorted(entries));
  writeFileSync(join(folder, 'index.ts'), indexOf(language, [...areas.keys()].toSorted()));
};

const told = ({ is, parts = [] }) => `${is} ${parts.join(', ')}`.trim();

const [what, language = '', file] = process.argv.slice(2);
const folder = join(projectRoot, 'src/text/languages', language);
requireNode();
if (!['missing', 'take'].includes(what) || language === '' || !existsSync(folder) || file === undefined) {
  process.stderr.write(usage);
  process.exitCode = 2;
} else {
  const { englishMessages, isWorded } = await load('src/text/testing/english-messages.ts');
  const { misfits } = await load('src/text/misfits.ts');
  const messages = englishMessages();
  const held = heldIn(folder);
  const missing = [...messages.keys()].filter((text) => isWorded(text) && !Object.hasOwn(held, text));
  if (what === 'missing') {
    write(file, Object.fromEntries(missing.map((text) => [text, ''])));
    process.stdout.write(`${missing.length} texts have no words in ${language} yet: ${file}\n`);
  } else {
    const given = Object.entries(read(file)).filter(([, text]) => text !== '');
    const wrong = given.flatMap(([english, text]) =>
      messages.has(english)
        ? misfits(english, text, language).map((one) => `${english}\n  ${text}\n  ${told(one)}`)
        : [],
    );
    if (wrong.length > 0) {
      process.stderr.write(`Nothing was taken.\n${wrong.join('\n')}\n`);
      process.exitCode = 1;
    } else {
      writeTables(folder, language, messages, { ...held, ...Object.fromEntries(given) });
      process.stdout.write(`${given.length} texts taken into src/text/languages/${language}\n`);
    }
  }
}
