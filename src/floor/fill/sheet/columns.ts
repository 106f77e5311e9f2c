import type { Kind } from '../../../quantity/kinds.ts';

/** What a cell of a column holds. */
export type CellForm =
  | { readonly is: 'text' }
  | { readonly is: 'count' }
  | { readonly is: 'flag' }
  | { readonly is: 'moment' }
  | { readonly is: 'choice'; readonly of: readonly string[] }
  | { readonly is: 'quantity'; readonly kind: Kind; readonly units: readonly [metric: string, us: string] };

/** One column of a sheet, by the name of the field that it fills. */
export interface FillColumn {
  readonly field: string;
  readonly form: CellForm;
  /** In characters. */
  readonly width: number;
}

const text: CellForm = { is: 'text' };
const count: CellForm = { is: 'count' };
const flag: CellForm = { is: 'flag' };
const moment: CellForm = { is: 'moment' };
const quantity = (kind: Kind, metric: string, us: string): CellForm => ({
  is: 'quantity',
  kind,
  units: [metric, us],
});
const mass = quantity('mass', 'kg', 'lb');
const smallMass = quantity('mass', 'g', 'oz');
const temperature = quantity('temperature', 'degC', 'degF');
const span = quantity('length', 'mm', 'in');

const column = (field: string, form: CellForm, width: number): FillColumn => ({ field, form, width });

/** Who weighed, with what, and what there is to say. */
const about = [
  column('instrument', text, 22),
  column('resolution', smallMass, 11),
  column('calibrated', text, 12),
  column('conditions', text, 22),
  column('by', text, 16),
  column('at', moment, 22),
  column('remark', text, 26),
] as const;

/** Columns of trials, in the order in which they are written: what is typed at the machine comes first. */
export const trialColumns: readonly FillColumn[] = [
  column('floor', text, 12),
  column('format', text, 14),
  column('row', text, 6),
  column('lane', text, 8),
  column('preset', count, 8),
  column('time', quantity('time', 's', 's'), 9),
  column('gross', mass, 11),
  column('tare', mass, 11),
  column('overflow', { is: 'choice', of: ['none', 'trace', 'stream'] }, 10),
  column('volume', quantity('volume', 'mL', 'fl oz'), 11),
  column('level', span, 9),
  column('temperature', temperature, 11),
  column('pressure', quantity('gaugePressure', 'bar(g)', 'psig'), 11),
  column('lanesOpen', count, 8),
  column('throttled', flag, 9),
  column('afterStop', flag, 9),
  column('product', text, 12),
  ...about,
];

export const sampleColumns: readonly FillColumn[] = [
  column('format', text, 14),
  column('bottle', text, 8),
  column('mould', text, 8),
  column('mass', smallMass, 10),
  column('brimfulMass', smallMass, 12),
  column('levelMass', smallMass, 12),
  column('temperature', temperature, 11),
  column('height', span, 10),
  column('bore', span, 10),
  column('finish', span, 10),
  column('body', span, 10),
  column('lean', span, 10),
  column('closureMass', smallMass, 12),
  column('closureHeight', span, 12),
  ...about.filter(({ field }) => !['calibrated', 'conditions'].includes(field)),
];

/** Of each bottle of a lot. */
export const packageColumns: readonly FillColumn[] = [
  column('bottle', text, 8),
  column('lane', text, 8),
  column('gross', mass, 11),
  column('tare', mass, 11),
  column('at', moment, 22),
];

/** Of the lot as a whole: written in its first row. */
export const lotColumns: readonly FillColumn[] = [
  column('floor', text, 12),
  column('format', text, 14),
  column('size', count, 9),
  column('product', text, 12),
  column('temperature', temperature, 11),
  column('density', quantity('density', 'kg/L', 'lb/ft3'), 11),
  ...about.filter(({ field }) => !['calibrated', 'at'].includes(field)),
];
