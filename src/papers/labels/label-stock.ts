import type { PageSize } from '../paper-head.ts';
import type { StockName } from './stock-names.ts';

/** A sheet of labels, in mm. Whose it is does not matter: its measures do. */
export interface LabelStock {
  readonly id: StockName;
  readonly page: PageSize;
  readonly columns: number;
  readonly rows: number;
  /** Corner of the first label. */
  readonly left: number;
  readonly top: number;
  /** From one label to the next. */
  readonly across: number;
  readonly down: number;
  readonly width: number;
  /** Printed height: of a label that wraps a wire the clear tail below it is left free. */
  readonly height: number;
}

const inch = 25.4;

/** Stock as it is sold everywhere, by its measures (common practice); the first is taken where none is named. */
export const labelStocks: readonly LabelStock[] = [
  {
    id: 'a4-24',
    page: 'a4',
    columns: 3,
    rows: 8,
    left: 0,
    top: 0.5,
    across: 70,
    down: 37,
    width: 70,
    height: 37,
  },
  {
    id: 'a4-65',
    page: 'a4',
    columns: 5,
    rows: 13,
    left: 4.75,
    top: 10.7,
    across: 40.6,
    down: 21.2,
    width: 38.1,
    height: 21.2,
  },
  {
    id: 'letter-30',
    page: 'letter',
    columns: 3,
    rows: 10,
    left: 0.1875 * inch,
    top: 0.5 * inch,
    across: 2.75 * inch,
    down: inch,
    width: 2.625 * inch,
    height: inch,
  },
  {
    id: 'wrap-a4',
    page: 'a4',
    columns: 7,
    rows: 7,
    left: 8.1,
    top: 15,
    across: 28,
    down: 38.1,
    width: 25.4,
    height: 12.7,
  },
  {
    id: 'wrap-letter',
    page: 'letter',
    columns: 7,
    rows: 7,
    left: 10.15,
    top: 6.35,
    across: 28.3,
    down: 38.1,
    width: 25.4,
    height: 12.7,
  },
];

/** The stock of that name; of the book's paper where none is named. */
export const labelStock = (id: string | undefined, page: PageSize): LabelStock =>
  labelStocks.find((stock) => stock.id === id) ?? labelStocks.find((stock) => stock.page === page)!;
