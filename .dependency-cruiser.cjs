/**
 * The layer table of ARCHITECTURE.md as law. Each rule says why it stands and what to do instead.
 * `tests/house/import-rules.test.ts` runs it over src and feeds every rule a line that must make it fire.
 */

const computation = [
  'quantity',
  'statistics',
  'sheets',
  'hydraulics',
  'line',
  'fill',
  'floor',
  'proof',
  'joins',
  'packing',
];
const aboveStore = [
  'quantity',
  'text',
  'table',
  'statistics',
  'sheets',
  'book',
  'record',
  'hydraulics',
  'line',
  'fill',
  'floor',
];

/** Folder: what it may import besides itself and the catalogue of words. */
const layers = {
  quantity: [],
  text: [],
  table: ['quantity'],
  statistics: [],
  sheets: ['quantity', 'statistics'],
  book: ['quantity'],
  media: ['quantity'],
  record: ['quantity'],
  hydraulics: ['quantity', 'statistics', 'sheets'],
  line: ['quantity', 'statistics', 'sheets', 'hydraulics'],
  fill: ['quantity', 'statistics', 'sheets', 'hydraulics', 'line'],
  floor: ['quantity', 'table', 'statistics', 'sheets', 'book', 'hydraulics', 'line', 'fill'],
  proof: [...aboveStore, 'joins'],
  joins: aboveStore,
  packing: [...aboveStore, 'proof', 'joins'],
  archive: ['quantity', 'table', 'book', 'media', 'record'],
  witness: [...computation, 'book', 'media', 'record'],
  store: ['quantity', 'book', 'media', 'record'],
  papers: [...computation, 'table', 'book', 'media', 'record'],
  server: [...computation, 'table', 'book', 'media', 'record', 'archive', 'witness', 'store', 'papers'],
  cli: [...computation, 'table', 'book', 'media', 'record', 'archive', 'witness', 'store', 'papers'],
  web: [...computation, 'table', 'book', 'media', 'record', 'archive'],
};

const pure = [
  'quantity',
  'text',
  'table',
  'statistics',
  'sheets',
  'book',
  'media',
  'record',
  'archive',
  'hydraulics',
  'line',
  'fill',
  'floor',
  'proof',
  'joins',
  'packing',
  'witness',
];

/** Tests may look anywhere: they hold one layer against another. */
const tests = '(?:\\.(?:test|test-d|arbitrary|oracle)\\.tsx?$|^src/[^/]+/testing/)';
const contract = '^src/server/(?:api|hall-api|client)\\.ts$';

const mayImport = (name) => [...new Set([name, ...(name === 'text' ? [] : ['text']), ...layers[name]])];

const layerRules = Object.keys(layers).map((name) => ({
  name: `layer-${name}`,
  comment:
    `src/${name} may import only ${mayImport(name)
      .map((folder) => `src/${folder}`)
      .join(
        ', ',
      )}: imports go down, so that a figure's way has one direction and each layer can be tested alone. ` +
    'Move the shared part down into a layer that both may see, or hand the value in from above.',
  severity: 'error',
  from: { path: `^src/${name}/`, pathNot: tests },
  to: {
    path: '^src/',
    pathNot: [`^src/(?:${mayImport(name).join('|')})/`, ...(name === 'web' ? [contract] : [])],
  },
}));

module.exports = {
  forbidden: [
    ...layerRules,
    {
      name: 'known-layer',
      comment:
        'Code stands in a folder of the layer table. Put the file into the layer whose work it does; a new layer is a decision for ARCHITECTURE.md first.',
      severity: 'error',
      from: { path: '^src/', pathNot: `^src/(?:${Object.keys(layers).join('|')})/` },
      to: {},
    },
    {
      name: 'pure-core',
      comment:
        'The pure layers have no clock, disk or network: the same code runs in the browser, the server and the command line. Take the value as an argument and let src/server or src/cli hand it in.',
      severity: 'error',
      from: { path: `^src/(?:${pure.join('|')})/`, pathNot: tests },
      to: { dependencyTypes: ['core'] },
    },
    {
      name: 'pure-core-packages',
      comment:
        'Computation imports no package: what decides a figure is read in this repository. The schema library in src/book and the packing of files in src/table are the exceptions. Write the small function, or move the use of the package up to a door.',
      severity: 'error',
      from: { path: `^src/(?:${pure.join('|')})/`, pathNot: [tests] },
      to: {
        dependencyTypes: [
          'npm',
          'npm-dev',
          'npm-optional',
          'npm-peer',
          'npm-bundled',
          'npm-no-pkg',
          'npm-unknown',
        ],
        pathNot: '(?:^|/)node_modules/(?:zod|fflate|@noble)/',
      },
    },
    {
      name: 'page-needs-no-node',
      comment:
        'The pages run in a browser, which has no node modules. Ask the server through src/server/client.ts.',
      severity: 'error',
      from: { path: '^src/web/', pathNot: tests },
      to: { dependencyTypes: ['core'] },
    },
    {
      name: 'contract-stays-light',
      comment:
        'src/server/api.ts, hall-api.ts and client.ts are loaded by the pages: they may import each other and the schema library, nothing else. Keep routes as data there and the work in the other files of src/server.',
      severity: 'error',
      from: { path: contract },
      to: { pathNot: [contract, '(?:^|/)node_modules/zod/'] },
    },
    {
      name: 'one-database-driver',
      comment:
        'The database driver is imported by src/store/sqlite-driver.ts alone, so that it can be exchanged in one place. Use the driver through that file.',
      severity: 'error',
      from: { path: '^src/', pathNot: '^src/store/sqlite-driver\\.ts$' },
      to: { path: '(?:^|/)node_modules/(?:libsql|@libsql|better-sqlite3)/' },
    },
    {
      name: 'one-zip-library',
      comment:
        'The zip library is imported by src/table/xlsx/packing.ts alone: what is unpacked has passed the limits there. Read and write packed files through that file.',
      severity: 'error',
      from: { path: '^src/', pathNot: [tests, '^src/table/xlsx/packing\\.ts$'] },
      to: { path: '(?:^|/)node_modules/fflate/' },
    },
    {
      name: 'one-signature-library',
      comment:
        'The library of signatures is imported by src/record/ed25519.ts alone, so that it can be exchanged in one place. Sign and check through that file.',
      severity: 'error',
      from: { path: '^src/', pathNot: [tests, '^src/record/ed25519\\.ts$'] },
      to: { path: '(?:^|/)node_modules/@noble/' },
    },
    {
      name: 'one-certificate-library',
      comment:
        'The library that writes certificates is imported by src/server/hall/certificate.ts alone, so that it can be exchanged in one place. Ask that file for a certificate.',
      severity: 'error',
      from: { path: '^src/', pathNot: [tests, '^src/server/hall/certificate\\.ts$'] },
      to: { path: '(?:^|/)node_modules/@peculiar/' },
    },
    {
      name: 'one-typesetter',
      comment:
        'The typesetter and its fonts are known to src/papers/frame/typst-compiler.ts alone, so that they can be exchanged in one place and the rest of a paper is made and tested as plain data. Hand the content to that file.',
      severity: 'error',
      from: { path: '^src/', pathNot: '^src/papers/frame/typst-compiler\\.ts$' },
      to: { path: '(?:^|/)node_modules/(?:@myriaddreamin|@expo-google-fonts)/' },
    },
    {
      name: 'cases-are-evidence',
      comment:
        'Published cases hold the code against the outside world; code that reads them could be made to fit them. Only tests, the registry, which shows what was verified, and the list of a discipline that stands in it (entries.ts) may import *.cases.ts.',
      severity: 'error',
      from: {
        path: '^src/',
        pathNot: [tests, '\\.cases\\.ts$', '^src/[^/]+/registry\\.ts$', '^src/sheets/[^/]+/entries\\.ts$'],
      },
      to: { path: '\\.cases\\.ts$' },
    },
    {
      name: 'tests-are-leaves',
      comment:
        'Nothing imports a test: what two tests share stands in a file of its own that says what it is.',
      severity: 'error',
      from: {},
      to: { path: '\\.test\\.tsx?$' },
    },
    {
      name: 'oracles-are-for-tests',
      comment:
        'Generators of odd inputs (*.arbitrary.ts, testing/) and independent solutions (*.oracle.ts) hold the code to account: only tests may import them. What the code needs itself stands in a file of its own.',
      severity: 'error',
      from: { path: '^src/', pathNot: [tests] },
      to: { path: '(?:\\.(?:arbitrary|oracle)\\.ts$|^src/[^/]+/testing/)' },
    },
    {
      name: 'no-cycles',
      comment:
        'Two files that need each other are one thought in two places, or a third one is missing. Move what both need into a file below them.',
      severity: 'error',
      from: { path: '^src/' },
      to: { circular: true },
    },
    {
      name: 'resolvable',
      comment: 'An import that leads nowhere. Mend the path, or add the package to package.json.',
      severity: 'error',
      from: { path: '^src/' },
      to: { couldNotResolve: true },
    },
  ],
  options: {
    doNotFollow: { path: 'node_modules' },
    tsPreCompilationDeps: true,
    enhancedResolveOptions: {
      exportsFields: ['exports'],
      conditionNames: ['import', 'node', 'default', 'types'],
      extensions: ['.ts', '.tsx', '.js', '.mjs', '.cjs', '.json', '.css'],
    },
  },
};
