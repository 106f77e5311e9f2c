import type { ReactElement } from 'react';
import { useWords } from '../state/page-context.ts';
import { type CheckOrder, checkOrders } from './check-order.ts';

/** Whether the checks stand as the trade does them or as one walks along the line. */
export const OrderKeys = ({
  order,
  choose,
}: {
  readonly order: CheckOrder;
  readonly choose: (order: CheckOrder) => void;
}): ReactElement => {
  const { say } = useWords();
  return (
    <fieldset className="proof-keys">
      <legend className="said">{say('proving.order')}</legend>
      {checkOrders.map((one) => (
        <button
          key={one}
          type="button"
          data-order={one}
          aria-pressed={order === one}
          onClick={() => choose(one)}
        >
          {say(`proving.order.${one}`)}
        </button>
      ))}
    </fieldset>
  );
};
