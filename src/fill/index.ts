export { type Allowance, allowancesFor, type FloorChange } from './allowances.ts';
export {
  type EstimateAnswer,
  type EstimateInput,
  estimateLanes,
  type LanesEstimate,
} from './estimate-lanes.ts';
export type { Apart, TrialProblem } from './kept-trials.ts';
export type { LaneEstimate } from './lane-estimate.ts';
export { type LanePriors, lanePriors } from './lane-priors.ts';
export {
  type FloorPrediction,
  type LanePrediction,
  type PredictionInput,
  predictOtherFloor,
} from './predict-other-floor.ts';
export type { Residual } from './residuals.ts';
export type { Doubt } from './separable.ts';
export type { Estimated, Within } from './student-sum.ts';
export type { FillTrial, Overflow } from './trial.ts';
export type { SupplyUnknown, UncertainFloor } from './uncertain-floor.ts';
