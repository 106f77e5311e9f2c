import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
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

/** Pictures that a template names, by their name: letters and digits. */
export type Pictures = ReadonlyMap<string, Uint8Array>;

export interface Typesetter {
  /** Whether the fonts have a picture for a code point. */
  readonly has: (codePoint: number) => boolean;
  /** Height of a picture by its width, upright as it was taken; nothing where no paper can carry it. */
  readonly heightByWidth: (picture: Uint8Array) => number | undefined;
  /** Sets a template with its content; the content comes to it as data and is never part of the markup. */
  readonly typeset: (template: string, content: unknown, pictures?: Pictures) => Uint8Array;
}

/** Where the templates find a picture. */
const folder = 'pictures';

/** Long-lived: a paper that is kept for years. */
const standard = { pdfStandard: 'a-2a' } as const;

/** The typesetter measures as it draws: turned as the camera says. */
const measuring = `#context { let one = measure(image("/${folder}/measured", width: 100mm)); [#metadata(one.height / one.width)] }
#pdf.artifact(image("/${folder}/measured", width: 100mm))`;

const diagnosed = (of: { readonly shortDiagnostics: readonly unknown[] } | null): string =>
  JSON.stringify(of?.shortDiagnostics ?? []);

/**
 * The typesetter with its fonts. Nothing is read from the machine but the fonts of these packages, and the program's own
 * fonts are not fallen back on, so that the same content gives the same bytes everywhere; pictures are handed in.
 *
 * Method   PDF/A-2a: fonts embedded, tagged, every character mapped; a template that does not meet it is a mistake of
 *          ours and throws
 * Cost     about 50 ms once, then some tens of milliseconds a paper
 */
export const makeTypesetter = (): Typesetter => {
  const resolve = createRequire(import.meta.url).resolve;
  const fonts = fontFiles.map((file) => readFileSync(resolve(file)));
  const workspace = process.cwd();
  const compiler = NodeCompiler.create({ workspace, fontArgs: [{ fontBlobs: fonts }] });
  const known = new Set(fonts.flatMap((font) => [...codePointsOf(font)]));
  /** The pictures stand where the templates look for them, in memory, for as long as it takes. */
  const beside = <T>(pictures: Pictures, work: () => T): T => {
    for (const [name, bytes] of pictures)
      compiler.mapShadow(
        join(workspace, folder, name),
        Buffer.from(bytes.buffer, bytes.byteOffset, bytes.length),
      );
    try {
      return work();
    } finally {
      compiler.resetShadow();
    }
  };
  return {
    has: (codePoint) => known.has(codePoint),
    heightByWidth: (picture) =>
      beside(new Map([['measured', picture]]), () => {
        const made = compiler.compile({ mainFileContent: measuring });
        if (made.result === null) return undefined;
        try {
          // what can be looked at may still be of colours that a paper for years can't carry
          compiler.pdf(made.result, standard);
        } catch {
          return undefined;
        }
        const [{ value }] = compiler.query(made.result, { selector: 'metadata' }) as [{ value: number }];
        return value;
      }),
    typeset: (template, content, pictures = new Map()) =>
      beside(pictures, () => {
        const made = compiler.compile({
          mainFileContent: template,
          inputs: { data: JSON.stringify(content) },
        });
        if (made.result === null)
          throw new Error(`a paper was not set: ${diagnosed(made.takeDiagnostics())}`);
        const warned = made.takeWarnings();
        if (warned !== null && warned.shortDiagnostics.length > 0) {
          throw new Error(`a paper was set with doubts: ${diagnosed(warned)}`);
        }
        const bytes = compiler.pdf(made.result, standard);
        compiler.evictCache(10);
        return new Uint8Array(bytes);
      }),
  };
};
