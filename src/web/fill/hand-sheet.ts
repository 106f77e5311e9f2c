import { useMemo } from 'react';
import { levelVolumes } from '../../floor/fill/index.ts';
import { samplesOf } from '../../record/samples.ts';
import { sheetAddress } from '../shell/route.ts';
import { useKeptRecords } from '../state/kept-records.tsx';
import { useFillPlace } from './fill-place.tsx';
import type { VolumeGoal } from './goals.ts';
import { useAnswer } from './with-answer.tsx';

const millilitres = (volume: number, decimals = 2): string => `${(volume * 1e6).toFixed(decimals)} mL`;

/** A sheet takes as many of each. */
const fewest = { bottles: 3, capacities: 2 } as const;

/** The sheet by which one checks a lane by hand, with the lane's bottles and the measured capacities in it. */
export const useHandSheet = (): ((lane: string) => string | undefined) => {
  const { answer } = useAnswer();
  const { format } = useFillPlace();
  const { records } = useKeptRecords();
  const capacities = useMemo(
    () => levelVolumes(samplesOf(records).filter((sample) => sample.format === format?.tag)),
    [records, format?.tag],
  );
  return (lane) => {
    const own = (answer?.dots ?? []).filter((dot) => dot.lane === lane && !dot.overflowed);
    if (own.length < fewest.bottles || capacities.length < fewest.capacities) return undefined;
    return sheetAddress('contents/level-preset-from-trials', {
      counts: own.map(({ preset }) => String(preset)).join('; '),
      volumes: own.map(({ volume }) => millilitres(volume)).join('; '),
      capacities: capacities.map((capacity) => millilitres(capacity)).join('; '),
    });
  };
};

/** The sheet of a count for the contents, with the first lane's values in it. */
export const useVolumeSheet = (): ((goal: VolumeGoal) => string) => {
  const { answer } = useAnswer();
  return ({ labelHere, deficiency, label, presets: [first] }) => {
    const pulses = answer?.lanes?.find(({ lane }) => lane === first?.lane)?.pulses.value;
    const spread = answer?.ownSpread?.value;
    if (first === undefined || pulses === undefined || spread === undefined) {
      return sheetAddress('contents/volume-preset');
    }
    return sheetAddress('contents/volume-preset', {
      label: millilitres(labelHere),
      deficiency: millilitres((deficiency * labelHere) / label),
      spread: millilitres(spread, 4),
      afterRun: millilitres(first.volume - first.preset / pulses, 3),
      perCount: millilitres(1 / pulses, 6),
    });
  };
};
