import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { NodeCompiler } from '@myriaddreamin/typst-ts-node-compiler';
import { codePointsOf } from './code-points.ts';

const family = '@expo-google-fonts';
const latin = `${family}/atkinson-hyperlegible-next`;
const wide = `${family}/inter`;

/** The second family has what the first lacks: Greek, Cyrillic, raised figures, arrows. */
const fontFiles = [
  `${latin}/400Regular/AtkinsonHyperlegibleNext_400Regular.ttf`,
  `${latin}/700Bold/AtkinsonHyperlegibleNext_700Bold.ttf`,
  `${wide}/400Regular/Inter_400Regular.ttf`,
  `${wide}/700Bold/Inter_700Bold.ttf`,
];

export interface Typesetter {
  /** Whether the fonts have a picture for a code point. */
  readonly has: (codePoint: number) => boolean;
  /** Sets a template with its content; the content comes to it as data and is never part of the markup. */
  readonly typeset: (template: string, content: unknown) => Uint8Array;
}

const diagnosed = (of: { readonly shortDiagnostics: readonly unknown[] } | null): string =>
  JSON.stringify(of?.shortDiagnostics ?? []);

/**
 * The typesetter with its fonts. Nothing is read from the machine but the fonts of these packages, and the program's own
 * fonts are not fallen back on, so that the same content gives the same bytes everywhere.
 *
 * Method   PDF/A-2a: fonts embedded, tagged, every character mapped; a template that does not meet it is a mistake of
 *          ours and throws
 * Cost     about 50 ms once, then some tens of milliseconds a paper
 */
export const makeTypesetter = (): Typesetter => {
  const resolve = createRequire(import.meta.url).resolve;
  const fonts = fontFiles.map((file) => readFileSync(resolve(file)));
  const compiler = NodeCompiler.create({ fontArgs: [{ fontBlobs: fonts }] });
  const known = new Set(fonts.flatMap((font) => [...codePointsOf(font)]));
  return {
    has: (codePoint) => known.has(codePoint),
    typeset: (template, content) => {
      const made = compiler.compile({
        mainFileContent: template,
        inputs: { data: JSON.stringify(content) },
      });
      if (made.result === null) throw new Error(`a paper was not set: ${diagnosed(made.takeDiagnostics())}`);
      const warned = made.takeWarnings();
      if (warned !== null && warned.shortDiagnostics.length > 0) {
        throw new Error(`a paper was set with doubts: ${diagnosed(warned)}`);
      }
      const bytes = compiler.pdf(made.result, { pdfStandard: 'a-2a' });
      compiler.evictCache(10);
      return new Uint8Array(bytes);
    },
  };
};
