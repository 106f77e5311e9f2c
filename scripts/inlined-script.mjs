import { readFile } from 'node:fs/promises';
import { build } from 'vite';

const mark = '?inlined';
const start = '\0inlined/';

/** One script with everything that it imports, as text. No word of it may end the element in which it stands. */
const bundled = async (file) => {
  const made = await build({
    configFile: false,
    logLevel: 'warn',
    publicDir: false,
    build: {
      write: false,
      target: 'es2022',
      modulePreload: false,
      rolldownOptions: {
        input: file,
        output: { format: 'iife' },
        // no module of ours but the script itself does anything by being imported
        treeshake: {
          moduleSideEffects: (id) => id === file || !/\/src\/.*\.ts$/.test(id),
        },
      },
    },
  });
  const [chunk] = made.output;
  const text = chunk.code.trim().replaceAll('</script', '<\\/script').replaceAll('<!--', '<\\!--');
  return { text, from: Object.keys(chunk.modules) };
};

const styled = async (file) => ({ text: await readFile(file, 'utf8'), from: [file] });

/**
 * `import text from './page.ts?inlined'` is the text of that script, bundled, and of `./page.css?inlined` of that style: a
 * page that is one file holds them within itself.
 */
export const inlinedScript = () => ({
  name: 'inlined-script',
  enforce: 'pre',
  async resolveId(source, importer) {
    if (!source.endsWith(mark)) return undefined;
    const found = await this.resolve(source.slice(0, -mark.length), importer, { skipSelf: true });
    // the name no longer ends as that of a script or a style: nothing else takes it for one
    return found === null ? undefined : `${start}${encodeURIComponent(found.id)}/text`;
  },
  async load(id) {
    if (!id.startsWith(start)) return undefined;
    const file = decodeURIComponent(id.slice(start.length, -'/text'.length));
    const { text, from } = await (file.endsWith('.css') ? styled(file) : bundled(file));
    for (const one of from) if (!one.startsWith('\0')) this.addWatchFile(one);
    return { code: `export default ${JSON.stringify(text)};`, map: null, moduleType: 'js' };
  },
});
