/** One measured figure against what is wanted of it. */
export interface Row {
  readonly what: string;
  readonly unit: string;
  readonly median: number;
  /** 95th percentile, where many were measured. */
  readonly p95?: number;
  readonly runs: number;
  /** The figure that is held to the bound, and the bound. */
  readonly wanted?: {
    readonly figure: 'median' | 'p95';
    readonly sense: 'under' | 'over';
    readonly bound: number;
  };
  readonly remark?: string;
}

export const isMet = ({ wanted, median, p95 }: Row): boolean => {
  if (wanted === undefined) return true;
  const figure = wanted.figure === 'median' ? median : (p95 ?? Number.NaN);
  return wanted.sense === 'under' ? figure < wanted.bound : figure > wanted.bound;
};

const digits = (value: number): string => {
  const text = value >= 100 ? Math.round(value).toString() : value.toPrecision(3);
  return text.includes('.') ? text.replace(/\.?0+$/, '') : text;
};

const cells = (row: Row): readonly string[] => [
  row.what,
  `${digits(row.median)} ${row.unit}`,
  row.p95 === undefined ? '' : `${digits(row.p95)} ${row.unit}`,
  String(row.runs),
  row.wanted === undefined
    ? ''
    : `${row.wanted.figure === 'p95' ? '95 % ' : ''}${row.wanted.sense} ${row.wanted.bound} ${row.unit}`,
  row.wanted === undefined ? '' : isMet(row) ? 'met' : 'NOT MET',
  row.remark ?? '',
];

const head = ['what', 'median', '95 %', 'runs', 'wanted', '', 'remark'];

/** The rows as a table for people. */
export const table = (rows: readonly Row[]): string => {
  const all = [head, ...rows.map(cells)];
  const widths = head.map((_, column) => Math.max(...all.map((row) => (row[column] ?? '').length)));
  return all
    .map((row) =>
      row
        .map((cell, column) => cell.padEnd(widths[column] ?? 0))
        .join('  ')
        .trimEnd(),
    )
    .join('\n');
};
