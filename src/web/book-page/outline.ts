import { type Book, flowOrder, valueAt } from '../../book/index.ts';
import { isWithin } from './references.ts';

/** One line of the outline of a book. */
export interface OutlineNode {
  readonly path: string;
  /** Key of a word for what stands here. */
  readonly word?: string;
  /** What people call it. */
  readonly name?: string;
  readonly tag?: string;
  /** Its place in an order that matters. */
  readonly number?: number;
  /** How many stand in the list. */
  readonly count?: number;
  /** Nothing of it is written yet. */
  readonly empty?: boolean;
  readonly inside: readonly OutlineNode[];
}

type Member = { readonly name?: unknown; readonly tag?: unknown; readonly kind?: unknown };

const text = (value: unknown): string | undefined =>
  typeof value === 'string' && value !== '' ? value : undefined;

const memberNode = (member: unknown, path: string, more: Partial<OutlineNode> = {}): OutlineNode => {
  const { name, tag, kind } = (member ?? {}) as Member;
  const [said, known, of] = [text(name), text(tag), text(kind)];
  return {
    path,
    ...(said === undefined ? {} : { name: said }),
    ...(known === undefined ? {} : { tag: known }),
    ...(said === undefined && known === undefined && of !== undefined ? { word: `word.${of}` } : {}),
    inside: [],
    ...more,
  };
};

const listNode = (
  book: Book,
  path: string,
  word: string,
  nodeOf: (member: unknown, path: string, index: number) => OutlineNode = (member, at) =>
    memberNode(member, at),
): OutlineNode => {
  const list = valueAt(book, path);
  const members = Array.isArray(list) ? (list as readonly unknown[]) : [];
  return {
    path,
    word,
    count: members.length,
    inside: members.map((member, index) => nodeOf(member, `${path}/${index}`, index)),
  };
};

const stationNode = (book: Book, member: unknown, path: string): OutlineNode => {
  const lists = ['lanes', 'zones'].filter((key) => valueAt(member, `/${key}`) !== undefined);
  return memberNode(member, path, {
    inside: lists.flatMap((key) => listNode(book, `${path}/${key}`, `field.${key}`).inside),
  });
};

/** Stations as the bottles pass them, wherever they stand in the list. */
const stationsNode = (book: Book): OutlineNode => {
  const node = listNode(book, '/line/stations', 'field.stations', (member, path) =>
    stationNode(book, member, path),
  );
  const found = flowOrder(book.line?.stations ?? []);
  const order = 'order' in found ? found.order : [];
  const rank = ({ tag }: OutlineNode) => order.indexOf(tag ?? '');
  const inside = [...node.inside]
    .sort((a, b) => rank(a) - rank(b))
    .map((station, index) => ({ ...station, number: index + 1 }));
  return { ...node, inside };
};

const supplyNode = (book: Book, path: string, word: string): OutlineNode => {
  const source = valueAt(book, `${path}/source`);
  const run = listNode(book, `${path}/run`, 'field.run', (member, at, index) =>
    memberNode(member, at, { number: index + 1 }),
  );
  return {
    path,
    word,
    empty: valueAt(book, path) === undefined,
    inside: [
      { ...memberNode(source, `${path}/source`), word: 'field.source', empty: source === undefined },
      run,
    ],
  };
};

const floorNode = (book: Book, member: unknown, path: string): OutlineNode => {
  const part = (key: string): OutlineNode => ({
    path: `${path}/${key}`,
    word: `field.${key}`,
    empty: valueAt(member, `/${key}`) === undefined,
    inside: [],
  });
  return memberNode(member, path, {
    inside: [
      part('liquid'),
      supplyNode(book, `${path}/supply`, 'field.supply'),
      supplyNode(book, `${path}/temporarySupply`, 'field.temporarySupply'),
      { ...listNode(book, `${path}/settings`, 'field.settings'), inside: [] },
      { ...listNode(book, `${path}/stops`, 'field.stops'), inside: [] },
      ...['water', 'power', 'air', 'drains', 'heat', 'room', 'work', 'atHand'].map(part),
    ],
  });
};

/** The lists of the line in the order in which one writes a book. */
const lists = [
  'holdRules',
  'drives',
  'heaters',
  'loads',
  'cylinders',
  'airDrops',
  'blowOffs',
  'devices',
  'stopDevices',
  'interlocks',
  'tieIns',
  'sections',
  'splits',
  'boxes',
  'joins',
  'crates',
  'settings',
  'spares',
  'instruments',
  'checks',
] as const;

/**
 * The outline of a book in the order of the work.
 *
 * Cost     O(size of the book)
 */
export const outlineOf = (book: Book): readonly OutlineNode[] => [
  { path: '/about', word: 'group.about', inside: [] },
  { path: '/agreement', word: 'group.agreement', inside: [] },
  listNode(book, '/line/products', 'field.products'),
  listNode(book, '/line/formats', 'field.formats'),
  stationsNode(book),
  ...lists.map((key) => listNode(book, `/line/${key}`, `field.${key}`)),
  { path: '/line/transport', word: 'field.transport', empty: book.line?.transport === undefined, inside: [] },
  listNode(book, '/floors', 'field.floors', (member, path) => floorNode(book, member, path)),
  listNode(book, '/waits', 'field.waits'),
  listNode(book, '/afterwards', 'field.afterwards'),
];

/** The lines of the outline from the outermost to the one that shows a place. */
export const trailTo = (nodes: readonly OutlineNode[], path: string): readonly OutlineNode[] => {
  const node =
    nodes.find((each) => isWithin(path, each.path)) ??
    nodes.find((each) => trailTo(each.inside, path).length > 0);
  return node === undefined ? [] : [node, ...trailTo(node.inside, path)];
};
