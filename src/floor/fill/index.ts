export { type AgreedContents, agreedContents, referenceOf } from './agreed-contents.ts';
export { type CapacityFound, capacityOf, levelVolumes } from './capacity-of.ts';
export type { FillFloor } from './fill-floor.ts';
export {
  type FillAsk,
  type FillStory,
  fillStories,
  fillStory,
  type NoAnswer,
  type OtherFloor,
} from './fill-story.ts';
export type { AllowanceAsk, FloorAllowances, FloorRun } from './floor-change.ts';
export type { CountRange, FillGoal, GoalPresets, NoPreset } from './goal-presets.ts';
export { type LotAsk, type LotRead, lotInSi } from './lot-in-si.ts';
export type { MeasuredAllowance } from './measured-between.ts';
export { type FillProblemCode, fillProblems } from './problems.ts';
export { type AgainstBook, samplesAgainstBook } from './samples-against-book.ts';
export { type FormatSamples, samplesOfFormat } from './samples-of-format.ts';
export type { TrialNote, TrialNoteCode, TrialRefused } from './trial-note.ts';
export { slipGround, type TrialSlips, trialSlips } from './trial-slips.ts';
export { type TrialInSi, type TrialsInSi, trialsInSi } from './trials-in-si.ts';
export { typedPlan } from './typed-plan.ts';
export type { MeasuredSample, WeighedLot, WeighedPackage, WeighedTrial } from './weighed.ts';
