export { type AdviceInput, adviseTrial, type TrialAdvice } from './advise-trial.ts';
export { type Allowance, allowancesFor, type FloorChange, type MeasurableCode } from './allowances.ts';
export type { BottleSample, SampleQuestions } from './bottle-sample.ts';
export {
  type BottleSamples,
  bottleSamples,
  type SampledName,
  type SampledQuantity,
} from './bottle-samples.ts';
export { shareDeviation } from './column-shares.ts';
export {
  type EstimateAnswer,
  type EstimateInput,
  estimateLanes,
  type LanesEstimate,
} from './estimate-lanes.ts';
export { judgeLot, type LotJudgement } from './judge-lot.ts';
export type { Apart, TrialProblem } from './kept-trials.ts';
export type { LaneEstimate } from './lane-estimate.ts';
export { type LanePriors, lanePriors } from './lane-priors.ts';
export { type Drift, type RunBottle, type RunControl, type RunQuestions, runControl } from './lot-control.ts';
export {
  type FloorPrediction,
  type LanePrediction,
  type PredictionInput,
  predictOtherFloor,
} from './predict-other-floor.ts';
export {
  type Capacity,
  type LanePreset,
  type LevelPresetInput,
  type LevelPresets,
  presetsForLevel,
} from './presets-for-level.ts';
export {
  presetsForVolume,
  type VolumeLimit,
  type VolumePreset,
  type VolumePresetInput,
} from './presets-for-volume.ts';
export type { Residual } from './residuals.ts';
export { type OfRuns, type RowForecast, rowForecast } from './row-forecast.ts';
export { type PredictionScore, type Score, scorePrediction } from './score.ts';
export type { Doubt } from './separable.ts';
export type { Estimated, Within } from './student-sum.ts';
export { type TraceGuide, type TracePath, type TraceStep, tracePath, traceStep } from './trace-path.ts';
export type { FillTrial, Overflow } from './trial.ts';
export type { SupplyUnknown, UncertainFloor } from './uncertain-floor.ts';
export type { LotPlan, LotScale, ProductDensity, WeighedLot, WeighedPackage } from './weighed-lot.ts';
export type { Step, StepOrigin } from './worksheet.ts';
