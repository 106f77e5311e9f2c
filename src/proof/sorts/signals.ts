import type { Check } from '../check.ts';
import { makeCheck } from '../make-check.ts';
import type { ProofContext } from '../proof-context.ts';

/** Each input and output in both of its states, from the thing itself to the control. */
export const signalChecks = ({ book }: ProofContext): readonly Check[] =>
  (book.line?.devices ?? []).map(({ tag, kind, states = [], terminal, address }, i) => {
    const path = `/line/devices/${i}`;
    return makeCheck('states', [tag], 'signals', {
      readings: 2,
      places: ['kind', 'states', 'terminal', 'address', 'signal'].map((field) => `${path}/${field}`),
      missing: states.length < 2 ? [`${path}/states`] : [],
      parts: {
        states: states.join(', '),
        kind: kind ?? 'input',
        where: [terminal, address].filter(Boolean).join(', '),
      },
    });
  });
