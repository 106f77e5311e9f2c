import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { cruise, type ICruiseResult } from 'dependency-cruiser';
import extractDepcruiseOptions from 'dependency-cruiser/config-utl/extract-depcruise-options';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';

const root = join(import.meta.dirname, '../..');
const config = join(root, '.dependency-cruiser.cjs');
const rules = (
  createRequire(import.meta.url)(config) as {
    forbidden: { name: string; comment: string; severity: string }[];
  }
).forbidden;

const cruiseUnder = async (baseDir: string): Promise<ICruiseResult> => {
  const options = await extractDepcruiseOptions(config);
  const { output } = await cruise(['src'], { ...options, baseDir, validate: true });
  if (typeof output === 'string') throw new Error(output);
  return output;
};

/** What the layer table of ARCHITECTURE.md says, written out a second time and by hand: a slip in one shows. */
const table: Record<string, string> = {
  quantity: 'text',
  text: '',
  table: 'quantity text',
  statistics: 'text',
  sheets: 'quantity text statistics',
  book: 'quantity text',
  media: 'quantity text',
  record: 'quantity text',
  archive: 'quantity text table book media record',
  hydraulics: 'quantity text statistics sheets',
  line: 'quantity text statistics sheets hydraulics',
  fill: 'quantity text statistics sheets hydraulics line',
  floor: 'quantity text table statistics sheets book hydraulics line fill',
  proof: 'quantity text table statistics sheets book record hydraulics line fill floor joins',
  joins: 'quantity text table statistics sheets book record hydraulics line fill floor',
  packing: 'quantity text table statistics sheets book record hydraulics line fill floor proof joins',
  witness: 'quantity text statistics sheets book media record hydraulics line fill floor proof joins packing',
  store: 'quantity text book media record',
  papers:
    'quantity text table statistics sheets book media record hydraulics line fill floor proof joins packing',
  server:
    'quantity text table statistics sheets book media record hydraulics line fill floor proof joins packing archive witness store papers',
  cli: 'quantity text table statistics sheets book media record hydraulics line fill floor proof joins packing archive witness store papers',
  web: 'quantity text table statistics sheets book media record hydraulics line fill floor proof joins packing archive',
};
const layers = Object.keys(table);
const allowed = (from: string, to: string): boolean =>
  from === to || (table[from] ?? '').split(' ').includes(to);

describe('the sources', () => {
  it('keep every import rule, and were really looked at', async () => {
    const { summary, modules } = await cruiseUnder(root);
    expect(modules.filter(({ source }) => source.startsWith('src/')).length).toBeGreaterThan(20);
    expect(summary.totalDependenciesCruised).toBeGreaterThan(20);
    expect(summary.violations.map(({ rule, from, to }) => `${rule.name}: ${from} -> ${to}`)).toEqual([]);
  });
});

/** File, the line it holds, and the rule that must fire on it; no rule: the line is allowed. */
const lines: { file: string; line: string; fires?: string }[] = [
  ...layers.flatMap((from) =>
    layers.map((to) => ({
      file: `src/${from}/imports-${to}.ts`,
      line: `import '../${to}/place.ts';`,
      ...(allowed(from, to) ? {} : { fires: `layer-${from}` }),
    })),
  ),
  { file: 'src/stray/thing.ts', line: "import '../quantity/place.ts';", fires: 'known-layer' },
  { file: 'src/floor/disk.ts', line: "import 'node:fs';", fires: 'pure-core' },
  { file: 'src/book/clock.ts', line: "import 'node:timers';", fires: 'pure-core' },
  { file: 'src/store/disk.ts', line: "import 'node:fs';" },
  { file: 'src/line/package.ts', line: "import 'fastify';", fires: 'pure-core-packages' },
  { file: 'src/book/schema.ts', line: "import 'zod';" },
  { file: 'src/web/disk.ts', line: "import 'node:fs';", fires: 'page-needs-no-node' },
  { file: 'src/web/contract.ts', line: "import '../server/api.ts';" },
  { file: 'src/web/client.ts', line: "import '../server/client.ts';" },
  { file: 'src/web/inside.ts', line: "import '../server/place.ts';", fires: 'layer-web' },
  { file: 'src/server/api.ts', line: "import './place.ts';", fires: 'contract-stays-light' },
  { file: 'src/server/client.ts', line: "import './api.ts';" },
  { file: 'src/server/driver.ts', line: "import 'libsql';", fires: 'one-database-driver' },
  { file: 'src/store/sqlite-driver.ts', line: "import 'libsql';" },
  { file: 'src/web/packed.ts', line: "import 'fflate';", fires: 'one-zip-library' },
  { file: 'src/table/xlsx/packing.ts', line: "import 'fflate';" },
  { file: 'src/proof/signed.ts', line: "import '@noble/curves';", fires: 'one-signature-library' },
  { file: 'src/record/ed25519.ts', line: "import '@noble/curves';" },
  {
    file: 'src/server/tls.ts',
    line: "import '@peculiar/asn1-x509';",
    fires: 'one-certificate-library',
  },
  { file: 'src/server/hall/certificate.ts', line: "import '@peculiar/asn1-x509';" },
  { file: 'src/server/hall-api.ts', line: "import 'zod';" },
  {
    file: 'src/papers/second.ts',
    line: "import '@myriaddreamin/typst-ts-node-compiler';",
    fires: 'one-typesetter',
  },
  { file: 'src/papers/frame/typst-compiler.ts', line: "import '@myriaddreamin/typst-ts-node-compiler';" },
  { file: 'src/floor/fitted.ts', line: "import '../sheets/one.cases.ts';", fires: 'cases-are-evidence' },
  { file: 'src/sheets/registry.ts', line: "import './one.cases.ts';" },
  { file: 'src/line/leaf.ts', line: "import '../sheets/one.test.ts';", fires: 'tests-are-leaves' },
  {
    file: 'src/line/odd.ts',
    line: "import '../sheets/one.arbitrary.ts';",
    fires: 'oracles-are-for-tests',
  },
  { file: 'src/book/even.ts', line: "import './testing/any.ts';", fires: 'oracles-are-for-tests' },
  { file: 'src/book/testing/any.ts', line: "import 'fastify';" },
  { file: 'src/line/other.ts', line: "import './second.oracle.ts';", fires: 'oracles-are-for-tests' },
  { file: 'src/line/second.oracle.ts', line: "import 'fastify';" },
  { file: 'src/line/odd.test.ts', line: "import '../sheets/one.arbitrary.ts';" },
  { file: 'src/sheets/one.arbitrary.ts', line: "import 'fastify';" },
  // a cycle is reported once, at the first of its files
  { file: 'src/line/about.ts', line: "import './round.ts';", fires: 'no-cycles' },
  { file: 'src/line/nowhere.ts', line: "import './not-there.ts';", fires: 'resolvable' },
  // a type alone is an import too: what a layer knows of another is what binds them
  {
    file: 'src/quantity/type-only.ts',
    line: "import type { A } from '../book/place.ts';",
    fires: 'layer-quantity',
  },
  { file: 'src/quantity/law.test.ts', line: "import '../book/place.ts';" },
];

const ground: Record<string, string> = {
  'package.json':
    '{"name":"fixture","type":"module","dependencies":{"zod":"1","libsql":"1","fastify":"1","fflate":"1","@noble/curves":"1","@peculiar/asn1-x509":"1"}}',
  'src/sheets/one.cases.ts': 'export const a = 1;',
  'src/sheets/one.test.ts': 'export const a = 1;',
  'src/line/round.ts': "import './about.ts';",
};

describe('each rule', () => {
  let folder = '';
  let result: ICruiseResult;

  beforeAll(async () => {
    folder = mkdtempSync(join(tmpdir(), 'import-rules-'));
    const files: Record<string, string> = { ...ground };
    for (const layer of layers) files[`src/${layer}/place.ts`] = 'export type A = 1;\nexport const a = 1;';
    for (const name of [
      'zod',
      'libsql',
      'fastify',
      'fflate',
      '@noble/curves',
      '@peculiar/asn1-x509',
      '@myriaddreamin/typst-ts-node-compiler',
    ]) {
      files[`node_modules/${name}/package.json`] = `{"name":"${name}","version":"1.0.0","main":"index.js"}`;
      files[`node_modules/${name}/index.js`] = 'module.exports = 1;';
    }
    for (const { file, line } of lines) files[file] = line;
    for (const [name, text] of Object.entries(files)) {
      mkdirSync(dirname(join(folder, name)), { recursive: true });
      writeFileSync(join(folder, name), `${text}\n`);
    }
    result = await cruiseUnder(folder);
  });
  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  const fired = (file: string): string[] =>
    result.summary.violations.filter(({ from }) => from === file).map(({ rule }) => rule.name);

  it('fires on a line that it forbids, alone, and lets through what is allowed', () => {
    const seen = lines.map(({ file }) => `${file}: ${[...new Set(fired(file))].join(', ') || 'allowed'}`);
    const due = lines.map(({ file, fires }) => `${file}: ${fires ?? 'allowed'}`);
    expect(seen).toEqual(due);
  });

  it('is among those that a forbidden line was fed to', () => {
    const fed = new Set(lines.map(({ fires }) => fires));
    // the catalogue of words is the one layer that all may import and that may import none
    expect(rules.map(({ name }) => name).filter((name) => !fed.has(name))).toEqual([]);
  });

  it('says why it stands and what to do, and stops the tests', () => {
    for (const { comment, severity, name } of rules) {
      expect(severity, name).toBe('error');
      expect(comment.split(/[.:] /).length, name).toBeGreaterThan(1);
      expect(comment.length, name).toBeGreaterThan(60);
    }
  });
});
