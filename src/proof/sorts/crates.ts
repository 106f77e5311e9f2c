import type { Check } from '../check.ts';
import { makeCheck } from '../make-check.ts';
import type { ProofContext } from '../proof-context.ts';

/**
 * What is looked at before a crate closes where the line was built, and as it arrives: unopened first, then opened. A
 * carrier answers for what was told in time and shown before anybody opened it.
 */
export const crateChecks = ({ book, here }: ProofContext): readonly Check[] =>
  (book.line?.crates ?? []).flatMap(({ tag, seal, wood, indicators = [] }, i) => {
    const path = `/line/crates/${i}`;
    const at = (...fields: readonly string[]) => fields.map((field) => `${path}/${field}`);
    const parts = {
      seal: seal ?? '',
      wood: wood ?? '',
      indicators: indicators.map(({ kind, number }) => [kind, number].filter(Boolean).join(' ')).join(', '),
    };
    if (here.role === 'built on') {
      return [
        makeCheck('crateClosed', [tag], 'handover', {
          places: at(
            'holds',
            'contents',
            'items',
            'dangerous',
            'wood',
            'moisture',
            'frost',
            'indicators',
            'seal',
          ),
          parts,
          conditions: ['photographed'],
        }),
      ];
    }
    const receipt = makeCheck('crateReceipt', [tag], 'placed', {
      places: at('seal', 'indicators'),
      parts,
      conditions: ['photographed'],
    });
    return [
      receipt,
      makeCheck('crateOpened', [tag], 'placed', {
        places: at('holds', 'contents', 'items'),
        conditions: ['photographed'],
        after: [receipt.id],
      }),
    ];
  });
