import { type SheetEntry, sheetEntry } from '../sheet-entry.ts';
import { airDensityCases } from './air-density.cases.ts';
import { airDensityText } from './air-density.text.ts';
import { airDensitySheet } from './air-density.ts';
import { averageScaleCases } from './average-scale.cases.ts';
import { averageScaleText } from './average-scale.text.ts';
import { averageScaleSheet } from './average-scale.ts';
import { capabilityCases } from './capability.cases.ts';
import { capabilityText } from './capability.text.ts';
import { capabilitySheet } from './capability.ts';
import { capabilityLowerCases } from './capability-lower.cases.ts';
import { capabilityLowerText } from './capability-lower.text.ts';
import { capabilityLowerSheet } from './capability-lower.ts';
import { combinedUncertaintyCases } from './combined-uncertainty.cases.ts';
import { combinedUncertaintyText } from './combined-uncertainty.text.ts';
import { combinedUncertaintySheet } from './combined-uncertainty.ts';
import { commonPresetCases } from './common-preset.cases.ts';
import { commonPresetText } from './common-preset.text.ts';
import { commonPresetSheet } from './common-preset.ts';
import { correlatedUncertaintyCases } from './correlated-uncertainty.cases.ts';
import { correlatedUncertaintyText } from './correlated-uncertainty.text.ts';
import { correlatedUncertaintySheet } from './correlated-uncertainty.ts';
import { cusumChartCases } from './cusum-chart.cases.ts';
import { cusumChartText } from './cusum-chart.text.ts';
import { cusumChartSheet } from './cusum-chart.ts';
import { densityAtReferenceCases } from './density-at-reference.cases.ts';
import { densityAtReferenceText } from './density-at-reference.text.ts';
import { densityAtReferenceSheet } from './density-at-reference.ts';
import { densityByFlaskCases } from './density-by-flask.cases.ts';
import { densityByFlaskText } from './density-by-flask.text.ts';
import { densityByFlaskSheet } from './density-by-flask.ts';
import { densityInAirCases } from './density-in-air.cases.ts';
import { densityInAirText } from './density-in-air.text.ts';
import { densityInAirSheet } from './density-in-air.ts';
import { euLotCases } from './eu-lot.cases.ts';
import { euLotText } from './eu-lot.text.ts';
import { euLotSheet } from './eu-lot.ts';
import { ewmaChartCases } from './ewma-chart.cases.ts';
import { ewmaChartText } from './ewma-chart.text.ts';
import { ewmaChartSheet } from './ewma-chart.ts';
import { fillVarianceCases } from './fill-variance.cases.ts';
import { fillVarianceText } from './fill-variance.text.ts';
import { fillVarianceSheet } from './fill-variance.ts';
import { firstBottlesCases } from './first-bottles.cases.ts';
import { firstBottlesText } from './first-bottles.text.ts';
import { firstBottlesSheet } from './first-bottles.ts';
import { gaugeStudyCases } from './gauge-study.cases.ts';
import { gaugeStudyText } from './gauge-study.text.ts';
import { gaugeStudySheet } from './gauge-study.ts';
import { giveawayCases } from './giveaway.cases.ts';
import { giveawayText } from './giveaway.text.ts';
import { giveawaySheet } from './giveaway.ts';
import { handbook133LotCases } from './handbook-133-lot.cases.ts';
import { handbook133LotText } from './handbook-133-lot.text.ts';
import { handbook133LotSheet } from './handbook-133-lot.ts';
import { handbook133ScaleCases } from './handbook-133-scale.cases.ts';
import { handbook133ScaleText } from './handbook-133-scale.text.ts';
import { handbook133ScaleSheet } from './handbook-133-scale.ts';
import { handbook133TaresCases } from './handbook-133-tares.cases.ts';
import { handbook133TaresText } from './handbook-133-tares.text.ts';
import { handbook133TaresSheet } from './handbook-133-tares.ts';
import { individualsChartCases } from './individuals-chart.cases.ts';
import { individualsChartText } from './individuals-chart.text.ts';
import { individualsChartSheet } from './individuals-chart.ts';
import { kvAllowanceCases } from './kv-allowance.cases.ts';
import { kvAllowanceText } from './kv-allowance.text.ts';
import { kvAllowanceSheet } from './kv-allowance.ts';
import { laneDifferencesCases } from './lane-differences.cases.ts';
import { laneDifferencesText } from './lane-differences.text.ts';
import { laneDifferencesSheet } from './lane-differences.ts';
import { laneLineCases } from './lane-line.cases.ts';
import { laneLineText } from './lane-line.text.ts';
import { laneLineSheet } from './lane-line.ts';
import { laneLineWeightedCases } from './lane-line-weighted.cases.ts';
import { laneLineWeightedText } from './lane-line-weighted.text.ts';
import { laneLineWeightedSheet } from './lane-line-weighted.ts';
import { lengthSpreadCases } from './length-spread.cases.ts';
import { lengthSpreadText } from './length-spread.text.ts';
import { lengthSpreadSheet } from './length-spread.ts';
import { levelPresetCases } from './level-preset.cases.ts';
import { levelPresetText } from './level-preset.text.ts';
import { levelPresetSheet } from './level-preset.ts';
import { levelPresetFromTrialsCases } from './level-preset-from-trials.cases.ts';
import { levelPresetFromTrialsText } from './level-preset-from-trials.text.ts';
import { levelPresetFromTrialsSheet } from './level-preset-from-trials.ts';
import { levelVolumeCases } from './level-volume.cases.ts';
import { levelVolumeText } from './level-volume.text.ts';
import { levelVolumeSheet } from './level-volume.ts';
import { lineLackOfFitCases } from './line-lack-of-fit.cases.ts';
import { lineLackOfFitText } from './line-lack-of-fit.text.ts';
import { lineLackOfFitSheet } from './line-lack-of-fit.ts';
import { lineThroughOriginCases } from './line-through-origin.cases.ts';
import { lineThroughOriginText } from './line-through-origin.text.ts';
import { lineThroughOriginSheet } from './line-through-origin.ts';
import { massSpreadCases } from './mass-spread.cases.ts';
import { massSpreadText } from './mass-spread.text.ts';
import { massSpreadSheet } from './mass-spread.ts';
import { meanRangeChartCases } from './mean-range-chart.cases.ts';
import { meanRangeChartText } from './mean-range-chart.text.ts';
import { meanRangeChartSheet } from './mean-range-chart.ts';
import { measuredAllowanceCases } from './measured-allowance.cases.ts';
import { measuredAllowanceText } from './measured-allowance.text.ts';
import { measuredAllowanceSheet } from './measured-allowance.ts';
import { measuringContainerCases } from './measuring-container.cases.ts';
import { measuringContainerText } from './measuring-container.text.ts';
import { measuringContainerSheet } from './measuring-container.ts';
import { meterAllowanceCases } from './meter-allowance.cases.ts';
import { meterAllowanceText } from './meter-allowance.text.ts';
import { meterAllowanceSheet } from './meter-allowance.ts';
import { normalityTestCases } from './normality-test.cases.ts';
import { normalityTestText } from './normality-test.text.ts';
import { normalityTestSheet } from './normality-test.ts';
import { oimlLotCases } from './oiml-lot.cases.ts';
import { oimlLotText } from './oiml-lot.text.ts';
import { oimlLotSheet } from './oiml-lot.ts';
import { outlierTestCases } from './outlier-test.cases.ts';
import { outlierTestText } from './outlier-test.text.ts';
import { outlierTestSheet } from './outlier-test.ts';
import { overflowOptimumCases } from './overflow-optimum.cases.ts';
import { overflowOptimumText } from './overflow-optimum.text.ts';
import { overflowOptimumSheet } from './overflow-optimum.ts';
import { packageVolumesCases } from './package-volumes.cases.ts';
import { packageVolumesText } from './package-volumes.text.ts';
import { packageVolumesSheet } from './package-volumes.ts';
import { presetOfLineCases } from './preset-of-line.cases.ts';
import { presetOfLineText } from './preset-of-line.text.ts';
import { presetOfLineSheet } from './preset-of-line.ts';
import { productAtReferenceCases } from './product-at-reference.cases.ts';
import { productAtReferenceText } from './product-at-reference.text.ts';
import { productAtReferenceSheet } from './product-at-reference.ts';
import { pulsesOfVolumeCases } from './pulses-of-volume.cases.ts';
import { pulsesOfVolumeText } from './pulses-of-volume.text.ts';
import { pulsesOfVolumeSheet } from './pulses-of-volume.ts';
import { referenceTemperatureCases } from './reference-temperature.cases.ts';
import { referenceTemperatureText } from './reference-temperature.text.ts';
import { referenceTemperatureSheet } from './reference-temperature.ts';
import { shortfallOptimumCases } from './shortfall-optimum.cases.ts';
import { shortfallOptimumText } from './shortfall-optimum.text.ts';
import { shortfallOptimumSheet } from './shortfall-optimum.ts';
/** The sheets of setting and proving the fill. */ import { timeIntervalCases } from './time-interval.cases.ts';
import { timeIntervalText } from './time-interval.text.ts';
import { timeIntervalSheet } from './time-interval.ts';
import { timeSpreadCases } from './time-spread.cases.ts';
import { timeSpreadText } from './time-spread.text.ts';
import { timeSpreadSheet } from './time-spread.ts';
import { tolerableDeficiencyCases } from './tolerable-deficiency.cases.ts';
import { tolerableDeficiencyText } from './tolerable-deficiency.text.ts';
import { tolerableDeficiencySheet } from './tolerable-deficiency.ts';
import { toleranceBoundCases } from './tolerance-bound.cases.ts';
import { toleranceBoundText } from './tolerance-bound.text.ts';
import { toleranceBoundSheet } from './tolerance-bound.ts';
import { trueDensityCases } from './true-density.cases.ts';
import { trueDensityText } from './true-density.text.ts';
import { trueDensitySheet } from './true-density.ts';
import { ukLotCases } from './uk-lot.cases.ts';
import { ukLotText } from './uk-lot.text.ts';
import { ukLotSheet } from './uk-lot.ts';
import { valveAirAllowanceCases } from './valve-air-allowance.cases.ts';
import { valveAirAllowanceText } from './valve-air-allowance.text.ts';
import { valveAirAllowanceSheet } from './valve-air-allowance.ts';
import { vesselAt20Cases } from './vessel-at-20.cases.ts';
import { vesselAt20Text } from './vessel-at-20.text.ts';
import { vesselAt20Sheet } from './vessel-at-20.ts';
import { volumeAtLevelCases } from './volume-at-level.cases.ts';
import { volumeAtLevelText } from './volume-at-level.text.ts';
import { volumeAtLevelSheet } from './volume-at-level.ts';
import { volumeByWeighingCases } from './volume-by-weighing.cases.ts';
import { volumeByWeighingText } from './volume-by-weighing.text.ts';
import { volumeByWeighingSheet } from './volume-by-weighing.ts';
import { volumePresetCases } from './volume-preset.cases.ts';
import { volumePresetText } from './volume-preset.text.ts';
import { volumePresetSheet } from './volume-preset.ts';
import { volumeSpreadCases } from './volume-spread.cases.ts';
import { volumeSpreadText } from './volume-spread.text.ts';
import { volumeSpreadSheet } from './volume-spread.ts';
import { weighingUncertaintyCases } from './weighing-uncertainty.cases.ts';
import { weighingUncertaintyText } from './weighing-uncertainty.text.ts';
import { weighingUncertaintySheet } from './weighing-uncertainty.ts';

export const contentsEntries: readonly SheetEntry[] = [
  sheetEntry(airDensitySheet, airDensityCases, airDensityText),
  sheetEntry(densityInAirSheet, densityInAirCases, densityInAirText),
  sheetEntry(densityByFlaskSheet, densityByFlaskCases, densityByFlaskText),
  sheetEntry(volumeByWeighingSheet, volumeByWeighingCases, volumeByWeighingText),
  sheetEntry(vesselAt20Sheet, vesselAt20Cases, vesselAt20Text),
  sheetEntry(productAtReferenceSheet, productAtReferenceCases, productAtReferenceText),
  sheetEntry(densityAtReferenceSheet, densityAtReferenceCases, densityAtReferenceText),
  sheetEntry(levelVolumeSheet, levelVolumeCases, levelVolumeText),
  sheetEntry(volumeAtLevelSheet, volumeAtLevelCases, volumeAtLevelText),
  sheetEntry(weighingUncertaintySheet, weighingUncertaintyCases, weighingUncertaintyText),
  sheetEntry(packageVolumesSheet, packageVolumesCases, packageVolumesText),
  sheetEntry(tolerableDeficiencySheet, tolerableDeficiencyCases, tolerableDeficiencyText),
  sheetEntry(oimlLotSheet, oimlLotCases, oimlLotText),
  sheetEntry(euLotSheet, euLotCases, euLotText),
  sheetEntry(ukLotSheet, ukLotCases, ukLotText),
  sheetEntry(handbook133LotSheet, handbook133LotCases, handbook133LotText),
  sheetEntry(handbook133ScaleSheet, handbook133ScaleCases, handbook133ScaleText),
  sheetEntry(handbook133TaresSheet, handbook133TaresCases, handbook133TaresText),
  sheetEntry(averageScaleSheet, averageScaleCases, averageScaleText),
  sheetEntry(measuringContainerSheet, measuringContainerCases, measuringContainerText),
  sheetEntry(gaugeStudySheet, gaugeStudyCases, gaugeStudyText),
  sheetEntry(referenceTemperatureSheet, referenceTemperatureCases, referenceTemperatureText),
  sheetEntry(laneLineSheet, laneLineCases, laneLineText),
  sheetEntry(presetOfLineSheet, presetOfLineCases, presetOfLineText),
  sheetEntry(laneLineWeightedSheet, laneLineWeightedCases, laneLineWeightedText),
  sheetEntry(lineThroughOriginSheet, lineThroughOriginCases, lineThroughOriginText),
  sheetEntry(lineLackOfFitSheet, lineLackOfFitCases, lineLackOfFitText),
  sheetEntry(trueDensitySheet, trueDensityCases, trueDensityText),
  sheetEntry(volumeSpreadSheet, volumeSpreadCases, volumeSpreadText),
  sheetEntry(lengthSpreadSheet, lengthSpreadCases, lengthSpreadText),
  sheetEntry(timeSpreadSheet, timeSpreadCases, timeSpreadText),
  sheetEntry(massSpreadSheet, massSpreadCases, massSpreadText),
  sheetEntry(levelPresetSheet, levelPresetCases, levelPresetText),
  sheetEntry(levelPresetFromTrialsSheet, levelPresetFromTrialsCases, levelPresetFromTrialsText),
  sheetEntry(overflowOptimumSheet, overflowOptimumCases, overflowOptimumText),
  sheetEntry(shortfallOptimumSheet, shortfallOptimumCases, shortfallOptimumText),
  sheetEntry(volumePresetSheet, volumePresetCases, volumePresetText),
  sheetEntry(commonPresetSheet, commonPresetCases, commonPresetText),
  sheetEntry(fillVarianceSheet, fillVarianceCases, fillVarianceText),
  sheetEntry(giveawaySheet, giveawayCases, giveawayText),
  sheetEntry(capabilitySheet, capabilityCases, capabilityText),
  sheetEntry(capabilityLowerSheet, capabilityLowerCases, capabilityLowerText),
  sheetEntry(meanRangeChartSheet, meanRangeChartCases, meanRangeChartText),
  sheetEntry(individualsChartSheet, individualsChartCases, individualsChartText),
  sheetEntry(ewmaChartSheet, ewmaChartCases, ewmaChartText),
  sheetEntry(cusumChartSheet, cusumChartCases, cusumChartText),
  sheetEntry(laneDifferencesSheet, laneDifferencesCases, laneDifferencesText),
  sheetEntry(toleranceBoundSheet, toleranceBoundCases, toleranceBoundText),
  sheetEntry(outlierTestSheet, outlierTestCases, outlierTestText),
  sheetEntry(normalityTestSheet, normalityTestCases, normalityTestText),
  sheetEntry(combinedUncertaintySheet, combinedUncertaintyCases, combinedUncertaintyText),
  sheetEntry(correlatedUncertaintySheet, correlatedUncertaintyCases, correlatedUncertaintyText),
  sheetEntry(timeIntervalSheet, timeIntervalCases, timeIntervalText),
  sheetEntry(pulsesOfVolumeSheet, pulsesOfVolumeCases, pulsesOfVolumeText),
  sheetEntry(meterAllowanceSheet, meterAllowanceCases, meterAllowanceText),
  sheetEntry(valveAirAllowanceSheet, valveAirAllowanceCases, valveAirAllowanceText),
  sheetEntry(kvAllowanceSheet, kvAllowanceCases, kvAllowanceText),
  sheetEntry(measuredAllowanceSheet, measuredAllowanceCases, measuredAllowanceText),
  sheetEntry(firstBottlesSheet, firstBottlesCases, firstBottlesText),
];
