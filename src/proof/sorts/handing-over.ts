import type { Check } from '../check.ts';
import { makeCheck } from '../make-check.ts';
import type { ProofContext } from '../proof-context.ts';

/** What is handed over beside the line itself. A copy of the program is kept on each floor, since it is changed on each. */
export const handingOverChecks = ({ book, here }: ProofContext): readonly Check[] => {
  const program = makeCheck('program', [], 'handover', { places: ['/line/settings'] });
  if (here.role === 'built on') return [program];
  const spares = book.line?.spares ?? [];
  return [
    program,
    makeCheck('documents', [], 'handover', { point: 'witness' }),
    ...(spares.length === 0
      ? []
      : [
          makeCheck(
            'spares',
            spares.map(({ tag }) => tag),
            'handover',
            {
              id: 'spares',
              places: ['/line/spares'],
            },
          ),
        ]),
    makeCheck('asBuilt', [], 'handover'),
    makeCheck('training', [], 'handover', { point: 'witness' }),
    makeCheck('warranty', [], 'handover', {
      point: 'witness',
      places: ['/about/dates/warrantyStart', '/about/dates/warrantyEnd'],
      after: ['documents', 'training'],
    }),
  ];
};
