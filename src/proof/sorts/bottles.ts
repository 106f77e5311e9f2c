import { stationOf } from '../../floor/station-of.ts';
import type { Check } from '../check.ts';
import { makeCheck } from '../make-check.ts';
import type { ProofContext } from '../proof-context.ts';

/** What becomes of broken glass, of what is left in the line, and of every bottle and cap that went in. */
export const bottleChecks = ({ book, format, formatPath }: ProofContext): readonly Check[] => {
  const fill = stationOf(book, 'fill');
  const stations = [fill?.station.tag, stationOf(book, 'washer')?.station.tag].filter(
    (tag) => tag !== undefined,
  );
  if (format === undefined || stations.length === 0) return [];
  const places = [`${formatPath}/material`];
  return [
    ...(format.material === 'glass'
      ? [makeCheck('glassBreakage', stations, 'product', { id: 'glassBreakage', point: 'witness', places })]
      : []),
    makeCheck('lineClearance', stations, 'product', { id: 'lineClearance', places }),
    makeCheck('count', [format.tag], 'run', { point: 'witness', places, conditions: ['bottles', 'caps'] }),
  ];
};
