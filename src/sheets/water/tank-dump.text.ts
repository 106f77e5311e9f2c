import type { SheetText } from '../sheet-text.ts';

export const tankDumpText: SheetText = {
  en: {
    title: 'Dump of a tank',
    about:
      'Peak flow and time when a tank is let go to the drain, the mean over a shift, and what the drain carries.',
    inputs: {
      volume: 'Liquid in the tank',
      depth: 'Depth of the liquid',
      drop: 'Tank bottom over the free end of the outlet pipe',
      outlet: 'Bore of the outlet',
      dischargeCoefficient: 'Coefficient of discharge',
      running: 'Flow that runs to the drain all the time',
      betweenDumps: 'Time from dump to dump',
      drainBore: 'Bore of the drain',
      slope: 'Fall over length of the drain',
      manning: 'Manning coefficient of the drain',
      filling: 'Depth over bore of the drain',
    },
    outputs: {
      dumpFlow: 'Flow of the dump at first',
      time: 'Time until it is empty',
      peak: 'Peak flow to the drain',
      mean: 'Mean flow to the drain',
      drainCapacity: 'What the drain carries at that filling',
      drainShare: 'Peak over what the drain carries',
    },
    notes: {
      DUMP_DRAIN_SHORT:
        'The drain carries less than the dump gives: it backs up through the floor. Throttle the outlet or use a smaller one.',
      DUMP_OFTENER_THAN_IT_RUNS: 'The tank takes longer to run empty than from one dump to the next.',
      DUMP_MEAN_HIDES: 'The peak is over three times the mean: a drain sized for the mean floods.',
      DUMP_AUTHORITY:
        'Temperature, pH and volume of a dump are decided by the sewer authority; a caustic bath may not simply be drained.',
    },
  },
};
