import { type SheetEntry, sheetEntry } from '../sheet-entry.ts';
import { averageCoverageCases } from './average-coverage.cases.ts';
import { averageCoverageText } from './average-coverage.text.ts';
import { averageCoverageSheet } from './average-coverage.ts';
import { beamDistanceCases } from './beam-distance.cases.ts';
import { beamDistanceText } from './beam-distance.text.ts';
import { beamDistanceSheet } from './beam-distance.ts';
import { bondLimitCases } from './bond-limit.cases.ts';
import { bondLimitText } from './bond-limit.text.ts';
import { bondLimitSheet } from './bond-limit.ts';
import { bondResistanceCases } from './bond-resistance.cases.ts';
import { bondResistanceText } from './bond-resistance.text.ts';
import { bondResistanceSheet } from './bond-resistance.ts';
import { channelLifetimeCases } from './channel-lifetime.cases.ts';
import { channelLifetimeText } from './channel-lifetime.text.ts';
import { channelLifetimeSheet } from './channel-lifetime.ts';
import { failureRateCases } from './failure-rate.cases.ts';
import { failureRateText } from './failure-rate.text.ts';
import { failureRateSheet } from './failure-rate.ts';
import { guardDistanceCases } from './guard-distance.cases.ts';
import { guardDistanceText } from './guard-distance.text.ts';
import { guardDistanceSheet } from './guard-distance.ts';
import { insulationLimitCases } from './insulation-limit.cases.ts';
import { insulationLimitText } from './insulation-limit.text.ts';
import { insulationLimitSheet } from './insulation-limit.ts';
import { levelOfRateCases } from './level-of-rate.cases.ts';
import { levelOfRateText } from './level-of-rate.text.ts';
import { levelOfRateSheet } from './level-of-rate.ts';
import { longestStopTimeCases } from './longest-stop-time.cases.ts';
import { longestStopTimeText } from './longest-stop-time.text.ts';
import { longestStopTimeSheet } from './longest-stop-time.ts';
import { operationsInYearCases } from './operations-in-year.cases.ts';
import { operationsInYearText } from './operations-in-year.text.ts';
import { operationsInYearSheet } from './operations-in-year.ts';
import { overallStopTimeCases } from './overall-stop-time.cases.ts';
import { overallStopTimeText } from './overall-stop-time.text.ts';
import { overallStopTimeSheet } from './overall-stop-time.ts';
import { parallelFieldDistanceCases } from './parallel-field-distance.cases.ts';
import { parallelFieldDistanceText } from './parallel-field-distance.text.ts';
import { parallelFieldDistanceSheet } from './parallel-field-distance.ts';
import { partLifetimeCases } from './part-lifetime.cases.ts';
import { partLifetimeText } from './part-lifetime.text.ts';
import { partLifetimeSheet } from './part-lifetime.ts';
import { reachThroughCases } from './reach-through.cases.ts';
import { reachThroughText } from './reach-through.text.ts';
import { reachThroughSheet } from './reach-through.ts';
import { simplifiedLevelCases } from './simplified-level.cases.ts';
import { simplifiedLevelText } from './simplified-level.text.ts';
import { simplifiedLevelSheet } from './simplified-level.ts';
import { stopTimeUsedCases } from './stop-time-used.cases.ts';
import { stopTimeUsedText } from './stop-time-used.text.ts';
import { stopTimeUsedSheet } from './stop-time-used.ts';
import { subsystemsCases } from './subsystems.cases.ts';
import { subsystemsText } from './subsystems.text.ts';
import { subsystemsSheet } from './subsystems.ts';
import { testRateCases } from './test-rate.cases.ts';
import { testRateText } from './test-rate.text.ts';
import { testRateSheet } from './test-rate.ts';
import { twoChannelsCases } from './two-channels.cases.ts';
import { twoChannelsText } from './two-channels.text.ts';
import { twoChannelsSheet } from './two-channels.ts';
import { twoHandDistanceCases } from './two-hand-distance.cases.ts';
import { twoHandDistanceText } from './two-hand-distance.text.ts';
import { twoHandDistanceSheet } from './two-hand-distance.ts';
import { usDistanceCases } from './us-distance.cases.ts';
import { usDistanceText } from './us-distance.text.ts';
import { usDistanceSheet } from './us-distance.ts';
import { verticalFieldDistanceCases } from './vertical-field-distance.cases.ts';
import { verticalFieldDistanceText } from './vertical-field-distance.text.ts';
import { verticalFieldDistanceSheet } from './vertical-field-distance.ts';

/** The sheets of guarding: stop times, distances, performance of controls, bonds. */
export const safetyEntries: readonly SheetEntry[] = [
  sheetEntry(stopTimeUsedSheet, stopTimeUsedCases, stopTimeUsedText),
  sheetEntry(overallStopTimeSheet, overallStopTimeCases, overallStopTimeText),
  sheetEntry(verticalFieldDistanceSheet, verticalFieldDistanceCases, verticalFieldDistanceText),
  sheetEntry(beamDistanceSheet, beamDistanceCases, beamDistanceText),
  sheetEntry(parallelFieldDistanceSheet, parallelFieldDistanceCases, parallelFieldDistanceText),
  sheetEntry(twoHandDistanceSheet, twoHandDistanceCases, twoHandDistanceText),
  sheetEntry(reachThroughSheet, reachThroughCases, reachThroughText),
  sheetEntry(guardDistanceSheet, guardDistanceCases, guardDistanceText),
  sheetEntry(usDistanceSheet, usDistanceCases, usDistanceText),
  sheetEntry(longestStopTimeSheet, longestStopTimeCases, longestStopTimeText),
  sheetEntry(operationsInYearSheet, operationsInYearCases, operationsInYearText),
  sheetEntry(partLifetimeSheet, partLifetimeCases, partLifetimeText),
  sheetEntry(channelLifetimeSheet, channelLifetimeCases, channelLifetimeText),
  sheetEntry(twoChannelsSheet, twoChannelsCases, twoChannelsText),
  sheetEntry(averageCoverageSheet, averageCoverageCases, averageCoverageText),
  sheetEntry(simplifiedLevelSheet, simplifiedLevelCases, simplifiedLevelText),
  sheetEntry(failureRateSheet, failureRateCases, failureRateText),
  sheetEntry(levelOfRateSheet, levelOfRateCases, levelOfRateText),
  sheetEntry(subsystemsSheet, subsystemsCases, subsystemsText),
  sheetEntry(testRateSheet, testRateCases, testRateText),
  sheetEntry(bondResistanceSheet, bondResistanceCases, bondResistanceText),
  sheetEntry(bondLimitSheet, bondLimitCases, bondLimitText),
  sheetEntry(insulationLimitSheet, insulationLimitCases, insulationLimitText),
];
