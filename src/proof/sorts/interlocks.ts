import type { Check } from '../check.ts';
import { makeCheck } from '../make-check.ts';
import { placeFigure } from '../place-figure.ts';
import type { ProofContext } from '../proof-context.ts';

/** Each effect of each other row of the cause-and-effect table: all causes brought about together. */
export const interlockChecks = ({ book }: ProofContext): readonly Check[] =>
  (book.line?.interlocks ?? []).flatMap(({ tag, causes = [], effects = [] }, i) => {
    const path = `/line/interlocks/${i}`;
    return effects.map(({ on, effect, within }, k) => {
      const at = `${path}/effects/${k}`;
      return makeCheck('interlock', [tag, on], 'dry', {
        point: 'witness',
        missFails: true,
        places: [`${path}/causes`, at],
        missing: [
          ...(causes.length === 0 ? [`${path}/causes`] : []),
          ...(effect === undefined ? [`${at}/effect`] : []),
        ],
        parts: {
          effect: effect ?? '',
          causes: causes.map((cause) => [cause.on, cause.state].filter(Boolean).join(' ')).join(', '),
        },
        ...(within === undefined
          ? {}
          : {
              instrument: 'stopwatch',
              limits: [{ sense: 'most', figure: placeFigure(book, `${at}/within`, 'time') }],
            }),
      });
    });
  });
