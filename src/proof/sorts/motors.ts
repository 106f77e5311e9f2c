import type { Check } from '../check.ts';
import { makeCheck } from '../make-check.ts';
import { placeFigure } from '../place-figure.ts';
import type { ProofContext } from '../proof-context.ts';

/** A three-phase motor draws by three conductors, and a lost one shows in the other two. */
const conductors = 3;

/** Each motor: the way that it turns before it drives anything, and its current against its plate under its load. */
export const motorChecks = ({ book }: ProofContext): readonly Check[] =>
  (book.line?.drives ?? []).flatMap(({ tag, phases, pump, inverter }, i) => {
    const path = `/line/drives/${i}`;
    const figure = placeFigure(book, `${path}/current`, 'current');
    const wet = (pump ?? []).length > 0;
    return [
      makeCheck('rotation', [tag], 'energised', {
        point: 'hold',
        missFails: true,
        instrument: 'phaseMeter',
        places: [`${path}/inverter`, `${path}/fed`, `${path}/phases`],
        after: ['voltage'],
      }),
      makeCheck('current', [tag], wet ? 'wet' : 'dry', {
        instrument: 'clampMeter',
        readings: phases === '1' ? 1 : conductors,
        limits: [{ sense: 'most', figure }],
        missing: figure.missing,
        places: ['current', 'overload', 'load', 'shaftPower', 'inverter', 'pump'].map(
          (field) => `${path}/${field}`,
        ),
        conditions: inverter === true ? ['lineAtIndex'] : ['frequency', 'lineAtIndex'],
      }),
    ];
  });
