import type { Book, Join } from '../book/index.ts';
import { carriesPower } from '../joins/colour/potential.ts';
import { isBeforeShipping } from '../joins/join-kinds.ts';
import type { Check, InstrumentSort } from '../proof/check.ts';

/** Tools that joins want, beside the instruments of checks. */
export const handTools = [
  'spanners',
  'torqueWrench',
  'terminalTools',
  'hoseTools',
  'leakSpray',
  'beltMeter',
  'level',
  'camera',
] as const;

export type HandTool = (typeof handTools)[number];

/** Something to be brought along, with what it is brought for. */
export interface VisitTool {
  readonly tool: InstrumentSort | HandTool;
  /** Tags of instruments of the book that are meant for it. */
  readonly own: readonly string[];
  readonly checks: readonly string[];
  readonly joins: readonly string[];
}

type Tool = VisitTool['tool'];

/** What a join is made and tested with, by its kind; nothing of what is done before the line leaves. */
const toolsOfJoin = ({ kind = 'other', torque, potential }: Join): readonly Tool[] => {
  if (isBeforeShipping(kind)) return [];
  const tightened: readonly Tool[] = [torque === undefined ? 'spanners' : 'torqueWrench'];
  switch (kind) {
    case 'conductor':
      return [
        'terminalTools',
        'multimeter',
        // one of which nobody says what it carries is read as one that carries power
        ...(carriesPower(potential) === 'no' ? [] : (['insulationMeter'] as const)),
      ];
    case 'bond':
      return [...tightened, 'lowOhmMeter'];
    case 'tube':
      return ['hoseTools', 'leakSpray'];
    case 'hose':
    case 'drain':
    case 'duct':
      return ['hoseTools'];
    case 'belt':
      return ['spanners', 'beltMeter'];
    case 'mechanical':
    case 'guard':
    case 'transport lock':
      return tightened;
    default:
      return [];
  }
};

const toolsOfCheck = ({ sort, instrument, conditions }: Check): readonly Tool[] => [
  ...(instrument === undefined ? [] : [instrument]),
  ...(sort === 'placed' ? (['level'] as const) : []),
  ...(conditions.includes('photographed') ? (['camera'] as const) : []),
];

/**
 * Tools and instruments of a visit, by what will need them.
 *
 * Symbols  checks  of the floor that is visited
 * Returns  each tool once, those that most hangs on first
 * Cost     O(joins + checks)
 */
export const visitTools = (book: Book, checks: readonly Check[]): readonly VisitTool[] => {
  const found = new Map<Tool, { own: Set<string>; checks: string[]; joins: string[] }>();
  const entry = (tool: Tool) => {
    const known = found.get(tool) ?? { own: new Set<string>(), checks: [], joins: [] };
    found.set(tool, known);
    return known;
  };
  for (const check of checks) {
    for (const tool of toolsOfCheck(check)) {
      const at = entry(tool);
      at.checks.push(check.id);
      if (check.ownInstrument !== undefined && tool === check.instrument) at.own.add(check.ownInstrument);
    }
  }
  for (const join of book.line?.joins ?? []) {
    for (const tool of new Set(toolsOfJoin(join))) entry(tool).joins.push(join.tag);
  }
  return [...found]
    .map(([tool, { own, checks: of, joins }]) => ({ tool, own: [...own], checks: of, joins }))
    .toSorted((a, b) => b.checks.length + b.joins.length - (a.checks.length + a.joins.length));
};
