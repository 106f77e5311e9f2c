import type { SayingOfChecks } from '../../proof/index.ts';
import { formatNumber } from '../../quantity/index.ts';
import type { PaperWords } from '../paper-words.ts';
import { words } from '../words.ts';

/** How a paper says what is said of checks. */
export const sayingOnPaper = (paper: PaperWords): SayingOfChecks => ({
  say: paper.say,
  has: (key) => words.has(key),
  quantity: (value, kind) => paper.quantity(value, kind, 3).text,
  number: (value) => formatNumber(value, 'en', 2),
});
