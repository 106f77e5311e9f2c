import { type SheetEntry, sheetEntry } from '../sheet-entry.ts';
import { actualFlowCases } from './actual-flow.cases.ts';
import { actualFlowText } from './actual-flow.text.ts';
import { actualFlowSheet } from './actual-flow.ts';
import { aftercoolerOutletCases } from './aftercooler-outlet.cases.ts';
import { aftercoolerOutletText } from './aftercooler-outlet.text.ts';
import { aftercoolerOutletSheet } from './aftercooler-outlet.ts';
import { coldestPointCases } from './coldest-point.cases.ts';
import { coldestPointText } from './coldest-point.text.ts';
import { coldestPointSheet } from './coldest-point.ts';
import { compressorCapacityCases } from './compressor-capacity.cases.ts';
import { compressorCapacityText } from './compressor-capacity.text.ts';
import { compressorCapacitySheet } from './compressor-capacity.ts';
import { compressorStartsCases } from './compressor-starts.cases.ts';
import { compressorStartsText } from './compressor-starts.text.ts';
import { compressorStartsSheet } from './compressor-starts.ts';
import { compressorsTogetherCases } from './compressors-together.cases.ts';
import { compressorsTogetherText } from './compressors-together.text.ts';
import { compressorsTogetherSheet } from './compressors-together.ts';
import { condensateCases } from './condensate.cases.ts';
import { condensateText } from './condensate.text.ts';
import { condensateSheet } from './condensate.ts';
import { cutInPressureCases } from './cut-in-pressure.cases.ts';
import { cutInPressureText } from './cut-in-pressure.text.ts';
import { cutInPressureSheet } from './cut-in-pressure.ts';
import { cylinderDemandCases } from './cylinder-demand.cases.ts';
import { cylinderDemandText } from './cylinder-demand.text.ts';
import { cylinderDemandSheet } from './cylinder-demand.ts';
import { deadVolumeCases } from './dead-volume.cases.ts';
import { deadVolumeText } from './dead-volume.text.ts';
import { deadVolumeSheet } from './dead-volume.ts';
import { dryerCapacityCases } from './dryer-capacity.cases.ts';
import { dryerCapacityText } from './dryer-capacity.text.ts';
import { dryerCapacitySheet } from './dryer-capacity.ts';
import { dryerChoiceCases } from './dryer-choice.cases.ts';
import { dryerChoiceText } from './dryer-choice.text.ts';
import { dryerChoiceSheet } from './dryer-choice.ts';
import { fillingTimeCases } from './filling-time.cases.ts';
import { fillingTimeText } from './filling-time.text.ts';
import { fillingTimeSheet } from './filling-time.ts';
import { filterLossCases } from './filter-loss.cases.ts';
import { filterLossText } from './filter-loss.text.ts';
import { filterLossSheet } from './filter-loss.ts';
import { filterRegulatorCases } from './filter-regulator.cases.ts';
import { filterRegulatorText } from './filter-regulator.text.ts';
import { filterRegulatorSheet } from './filter-regulator.ts';
import { fittingEquivalentCases } from './fitting-equivalent.cases.ts';
import { fittingEquivalentText } from './fitting-equivalent.text.ts';
import { fittingEquivalentSheet } from './fitting-equivalent.ts';
import { fittingLengthCases } from './fitting-length.cases.ts';
import { fittingLengthText } from './fitting-length.text.ts';
import { fittingLengthSheet } from './fitting-length.ts';
import { flowTogetherCases } from './flow-together.cases.ts';
import { flowTogetherText } from './flow-together.text.ts';
import { flowTogetherSheet } from './flow-together.ts';
import { humidAirCases } from './humid-air.cases.ts';
import { humidAirText } from './humid-air.text.ts';
import { humidAirSheet } from './humid-air.ts';
import { intakeDewPointCases } from './intake-dew-point.cases.ts';
import { intakeDewPointText } from './intake-dew-point.text.ts';
import { intakeDewPointSheet } from './intake-dew-point.ts';
import { leakDecayCases } from './leak-decay.cases.ts';
import { leakDecayText } from './leak-decay.text.ts';
import { leakDecaySheet } from './leak-decay.ts';
import { leakLoadUnloadCases } from './leak-load-unload.cases.ts';
import { leakLoadUnloadText } from './leak-load-unload.text.ts';
import { leakLoadUnloadSheet } from './leak-load-unload.ts';
import { leakStepsCases } from './leak-steps.cases.ts';
import { leakStepsText } from './leak-steps.text.ts';
import { leakStepsSheet } from './leak-steps.ts';
import { leastPressureCases } from './least-pressure.cases.ts';
import { leastPressureText } from './least-pressure.text.ts';
import { leastPressureSheet } from './least-pressure.ts';
import { lineLossCases } from './line-loss.cases.ts';
import { lineLossText } from './line-loss.text.ts';
import { lineLossSheet } from './line-loss.ts';
import { machineDemandCases } from './machine-demand.cases.ts';
import { machineDemandText } from './machine-demand.text.ts';
import { machineDemandSheet } from './machine-demand.ts';
import { massToFreeAirCases } from './mass-to-free-air.cases.ts';
import { massToFreeAirText } from './mass-to-free-air.text.ts';
import { massToFreeAirSheet } from './mass-to-free-air.ts';
import { nozzleDischargeCases } from './nozzle-discharge.cases.ts';
import { nozzleDischargeText } from './nozzle-discharge.text.ts';
import { nozzleDischargeSheet } from './nozzle-discharge.ts';
import { oilClassCases } from './oil-class.cases.ts';
import { oilClassText } from './oil-class.text.ts';
import { oilClassSheet } from './oil-class.ts';
import { particleClassCases } from './particle-class.cases.ts';
import { particleClassText } from './particle-class.text.ts';
import { particleClassSheet } from './particle-class.ts';
import { pistonForceCases } from './piston-force.cases.ts';
import { pistonForceText } from './piston-force.text.ts';
import { pistonForceSheet } from './piston-force.ts';
import { pressureDewPointCases } from './pressure-dew-point.cases.ts';
import { pressureDewPointText } from './pressure-dew-point.text.ts';
import { pressureDewPointSheet } from './pressure-dew-point.ts';
import { receiverBandCases } from './receiver-band.cases.ts';
import { receiverBandText } from './receiver-band.text.ts';
import { receiverBandSheet } from './receiver-band.ts';
import { receiverLeastCases } from './receiver-least.cases.ts';
import { receiverLeastText } from './receiver-least.text.ts';
import { receiverLeastSheet } from './receiver-least.ts';
import { receiverTimeCases } from './receiver-time.cases.ts';
import { receiverTimeText } from './receiver-time.text.ts';
import { receiverTimeSheet } from './receiver-time.ts';
import { receiverVolumeCases } from './receiver-volume.cases.ts';
import { receiverVolumeText } from './receiver-volume.text.ts';
import { receiverVolumeSheet } from './receiver-volume.ts';
import { referenceConversionCases } from './reference-conversion.cases.ts';
import { referenceConversionText } from './reference-conversion.text.ts';
import { referenceConversionSheet } from './reference-conversion.ts';
import { regulatorOutletCases } from './regulator-outlet.cases.ts';
import { regulatorOutletText } from './regulator-outlet.text.ts';
import { regulatorOutletSheet } from './regulator-outlet.ts';
import { restrictionFlowCases } from './restriction-flow.cases.ts';
import { restrictionFlowText } from './restriction-flow.text.ts';
import { restrictionFlowSheet } from './restriction-flow.ts';
import { restrictionOutletCases } from './restriction-outlet.cases.ts';
import { restrictionOutletText } from './restriction-outlet.text.ts';
import { restrictionOutletSheet } from './restriction-outlet.ts';
import { saturationCases } from './saturation.cases.ts';
import { saturationText } from './saturation.text.ts';
import { saturationSheet } from './saturation.ts';
import { seriesFlowCases } from './series-flow.cases.ts';
import { seriesFlowText } from './series-flow.text.ts';
import { seriesFlowSheet } from './series-flow.ts';
import { sonicConductanceCases } from './sonic-conductance.cases.ts';
import { sonicConductanceText } from './sonic-conductance.text.ts';
import { sonicConductanceSheet } from './sonic-conductance.ts';
import { storedEnergyCases } from './stored-energy.cases.ts';
import { storedEnergyText } from './stored-energy.text.ts';
import { storedEnergySheet } from './stored-energy.ts';
import { strokeChangeCases } from './stroke-change.cases.ts';
import { strokeChangeText } from './stroke-change.text.ts';
import { strokeChangeSheet } from './stroke-change.ts';
import { strokeTimeCases } from './stroke-time.cases.ts';
import { strokeTimeText } from './stroke-time.text.ts';
import { strokeTimeSheet } from './stroke-time.ts';
import { switchingBandCases } from './switching-band.cases.ts';
import { switchingBandText } from './switching-band.text.ts';
import { switchingBandSheet } from './switching-band.ts';
import { treatmentChainCases } from './treatment-chain.cases.ts';
import { treatmentChainText } from './treatment-chain.text.ts';
import { treatmentChainSheet } from './treatment-chain.ts';
import { tubeConductanceCases } from './tube-conductance.cases.ts';
import { tubeConductanceText } from './tube-conductance.text.ts';
import { tubeConductanceSheet } from './tube-conductance.ts';
import { userDemandCases } from './user-demand.cases.ts';
import { userDemandText } from './user-demand.text.ts';
import { userDemandSheet } from './user-demand.ts';
import { valveCvCases } from './valve-cv.cases.ts';
import { valveCvText } from './valve-cv.text.ts';
import { valveCvSheet } from './valve-cv.ts';
import { valveFactorCases } from './valve-factor.cases.ts';
import { valveFactorText } from './valve-factor.text.ts';
import { valveFactorSheet } from './valve-factor.ts';
import { ventTimeCases } from './vent-time.cases.ts';
import { ventTimeText } from './vent-time.text.ts';
import { ventTimeSheet } from './vent-time.ts';
import { waterClassCases } from './water-class.cases.ts';
import { waterClassText } from './water-class.text.ts';
import { waterClassSheet } from './water-class.ts';
import { workingPointCases } from './working-point.cases.ts';
import { workingPointText } from './working-point.text.ts';
import { workingPointSheet } from './working-point.ts';

/** The sheets of compressed air, in the order of a menu. */
export const airEntries: readonly SheetEntry[] = [
  sheetEntry(referenceConversionSheet, referenceConversionCases, referenceConversionText),
  sheetEntry(massToFreeAirSheet, massToFreeAirCases, massToFreeAirText),
  sheetEntry(actualFlowSheet, actualFlowCases, actualFlowText),
  sheetEntry(deadVolumeSheet, deadVolumeCases, deadVolumeText),
  sheetEntry(cylinderDemandSheet, cylinderDemandCases, cylinderDemandText),
  sheetEntry(nozzleDischargeSheet, nozzleDischargeCases, nozzleDischargeText),
  sheetEntry(flowTogetherSheet, flowTogetherCases, flowTogetherText),
  sheetEntry(userDemandSheet, userDemandCases, userDemandText),
  sheetEntry(machineDemandSheet, machineDemandCases, machineDemandText),
  sheetEntry(leakLoadUnloadSheet, leakLoadUnloadCases, leakLoadUnloadText),
  sheetEntry(leakDecaySheet, leakDecayCases, leakDecayText),
  sheetEntry(leakStepsSheet, leakStepsCases, leakStepsText),
  sheetEntry(compressorCapacitySheet, compressorCapacityCases, compressorCapacityText),
  sheetEntry(compressorStartsSheet, compressorStartsCases, compressorStartsText),
  sheetEntry(receiverTimeSheet, receiverTimeCases, receiverTimeText),
  sheetEntry(receiverBandSheet, receiverBandCases, receiverBandText),
  sheetEntry(receiverVolumeSheet, receiverVolumeCases, receiverVolumeText),
  sheetEntry(fittingLengthSheet, fittingLengthCases, fittingLengthText),
  sheetEntry(fittingEquivalentSheet, fittingEquivalentCases, fittingEquivalentText),
  sheetEntry(lineLossSheet, lineLossCases, lineLossText),
  sheetEntry(filterRegulatorSheet, filterRegulatorCases, filterRegulatorText),
  sheetEntry(filterLossSheet, filterLossCases, filterLossText),
  sheetEntry(regulatorOutletSheet, regulatorOutletCases, regulatorOutletText),
  sheetEntry(workingPointSheet, workingPointCases, workingPointText),
  sheetEntry(sonicConductanceSheet, sonicConductanceCases, sonicConductanceText),
  sheetEntry(tubeConductanceSheet, tubeConductanceCases, tubeConductanceText),
  sheetEntry(restrictionFlowSheet, restrictionFlowCases, restrictionFlowText),
  sheetEntry(restrictionOutletSheet, restrictionOutletCases, restrictionOutletText),
  sheetEntry(seriesFlowSheet, seriesFlowCases, seriesFlowText),
  sheetEntry(fillingTimeSheet, fillingTimeCases, fillingTimeText),
  sheetEntry(ventTimeSheet, ventTimeCases, ventTimeText),
  sheetEntry(pistonForceSheet, pistonForceCases, pistonForceText),
  sheetEntry(leastPressureSheet, leastPressureCases, leastPressureText),
  sheetEntry(strokeTimeSheet, strokeTimeCases, strokeTimeText),
  sheetEntry(strokeChangeSheet, strokeChangeCases, strokeChangeText),
  sheetEntry(valveFactorSheet, valveFactorCases, valveFactorText),
  sheetEntry(valveCvSheet, valveCvCases, valveCvText),
  sheetEntry(storedEnergySheet, storedEnergyCases, storedEnergyText),
  sheetEntry(saturationSheet, saturationCases, saturationText),
  sheetEntry(humidAirSheet, humidAirCases, humidAirText),
  sheetEntry(pressureDewPointSheet, pressureDewPointCases, pressureDewPointText),
  sheetEntry(intakeDewPointSheet, intakeDewPointCases, intakeDewPointText),
  sheetEntry(condensateSheet, condensateCases, condensateText),
  sheetEntry(coldestPointSheet, coldestPointCases, coldestPointText),
  sheetEntry(dryerCapacitySheet, dryerCapacityCases, dryerCapacityText),
  sheetEntry(dryerChoiceSheet, dryerChoiceCases, dryerChoiceText),
  sheetEntry(particleClassSheet, particleClassCases, particleClassText),
  sheetEntry(waterClassSheet, waterClassCases, waterClassText),
  sheetEntry(oilClassSheet, oilClassCases, oilClassText),
  sheetEntry(treatmentChainSheet, treatmentChainCases, treatmentChainText),
  sheetEntry(compressorsTogetherSheet, compressorsTogetherCases, compressorsTogetherText),
  sheetEntry(aftercoolerOutletSheet, aftercoolerOutletCases, aftercoolerOutletText),
  sheetEntry(cutInPressureSheet, cutInPressureCases, cutInPressureText),
  sheetEntry(switchingBandSheet, switchingBandCases, switchingBandText),
  sheetEntry(receiverLeastSheet, receiverLeastCases, receiverLeastText),
];
