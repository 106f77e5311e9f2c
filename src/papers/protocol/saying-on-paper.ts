import type { SayingOfChecks } from '../../proof/index.ts';
import type { PaperWords } from '../paper-words.ts';

/** How a paper says what is said of checks. */
export const sayingOnPaper = (paper: PaperWords): SayingOfChecks => ({
  say: paper.say,
  has: paper.has,
  quantity: (value, kind) => paper.quantity(value, kind, 3).text,
  number: (value) => paper.number(value, 2),
});
