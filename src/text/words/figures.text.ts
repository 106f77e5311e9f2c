import type { Bundle } from '../catalogue.ts';

/** Names of figures and findings, as a mechanic says them. */
export const figureWords: Bundle = {
  en: {
    'figure.manifoldPressure': 'manifold pressure',
    'figure.manifoldFlow': 'flow, all lanes open',
    'figure.fillTime': 'fill, slowest lane',
    'figure.lagTime': 'lag of the run',
    'figure.fillStationTime': 'fill station, whole',
    'figure.washerIndex': 'washer index',
    'figure.cycle': 'cycle',
    'figure.runningRate': 'running rate',
    'figure.hourRate': 'rate over the agreed hour',
    'figure.worstRow': 'slowest row of the hour',
    'figure.shiftOutput': 'output of a shift',
    'figure.level': 'level in the bottle',
    'figure.jetSpeed': 'jet at the bottle',
    'figure.surge': 'pressure with surge',
    'figure.surgePressure': 'surge on closing',
    'figure.runVelocity': 'speed in the run',
    'figure.tankLevel': 'tank, lowest',
    'figure.tankLow': 'tank, lowest',
    'figure.makeUp': 'make-up',
    'figure.runDryAfter': 'tank runs dry after',
    'figure.meanDraw': 'mean draw',
    'figure.overflow': 'overflow a bottle',
    'figure.washerRate': 'washer, its ceiling',
    'figure.closingRate': 'closing station',
    'figure.takeOffRate': 'take-off',
  },
};

/** Verdicts and standings. */
export const verdictWords: Bundle = {
  en: {
    'verdict.carries': 'carries',
    'verdict.short': 'short',
    'verdict.unknown': 'not known',
    'verdict.least.carries': 'carries {demand}',
    'verdict.least.short': 'short of {demand}',
    'verdict.most.carries': 'within {demand}',
    'verdict.most.short': 'over {demand}',
    'verdict.unknown.demand': 'asks {demand}',
    'verdict.unknown.none': 'nothing asked yet',
    'verdict.straddles': 'may or may not reach {demand}',
    'verdict.straddles.most': 'may pass {demand}',
    'standing.measured': 'measured',
    'standing.stated': 'stated',
    'standing.assumed': 'assumed',
    'role.built on': 'built on',
    'role.bound for': 'bound for',
    'role.other': 'other floor',
  },
};
