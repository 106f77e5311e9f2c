import { type SheetEntry, sheetEntry } from '../sheet-entry.ts';
import { atmosphericPressureCases } from './atmospheric-pressure.cases.ts';
import { atmosphericPressureText } from './atmospheric-pressure.text.ts';
import { atmosphericPressureSheet } from './atmospheric-pressure.ts';
import { backflowLossCases } from './backflow-loss.cases.ts';
import { backflowLossText } from './backflow-loss.text.ts';
import { backflowLossSheet } from './backflow-loss.ts';
import { bufferVolumeCases } from './buffer-volume.cases.ts';
import { bufferVolumeText } from './buffer-volume.text.ts';
import { bufferVolumeSheet } from './buffer-volume.ts';
import { closingColumnCases } from './closing-column.cases.ts';
import { closingColumnText } from './closing-column.text.ts';
import { closingColumnSheet } from './closing-column.ts';
import { controlValveCases } from './control-valve.cases.ts';
import { controlValveText } from './control-valve.text.ts';
import { controlValveSheet } from './control-valve.ts';
import { countPresetCases } from './count-preset.cases.ts';
import { countPresetText } from './count-preset.text.ts';
import { countPresetSheet } from './count-preset.ts';
import { drainCapacityCases } from './drain-capacity.cases.ts';
import { drainCapacityText } from './drain-capacity.text.ts';
import { drainCapacitySheet } from './drain-capacity.ts';
import { drainDepthCases } from './drain-depth.cases.ts';
import { drainDepthText } from './drain-depth.text.ts';
import { drainDepthSheet } from './drain-depth.ts';
import { fillByStepsCases } from './fill-by-steps.cases.ts';
import { fillByStepsText } from './fill-by-steps.text.ts';
import { fillByStepsSheet } from './fill-by-steps.ts';
import { fillTimeCases } from './fill-time.cases.ts';
import { fillTimeText } from './fill-time.text.ts';
import { fillTimeSheet } from './fill-time.ts';
import { flowLeftCases } from './flow-left.cases.ts';
import { flowLeftText } from './flow-left.text.ts';
import { flowLeftSheet } from './flow-left.ts';
import { flowsTogetherCases } from './flows-together.cases.ts';
import { flowsTogetherText } from './flows-together.text.ts';
import { flowsTogetherSheet } from './flows-together.ts';
import { flushingCases } from './flushing.cases.ts';
import { flushingText } from './flushing.text.ts';
import { flushingSheet } from './flushing.ts';
import { frictionFactorCases } from './friction-factor.cases.ts';
import { frictionFactorText } from './friction-factor.text.ts';
import { frictionFactorSheet } from './friction-factor.ts';
import { gravitySupplyCases } from './gravity-supply.cases.ts';
import { gravitySupplyText } from './gravity-supply.text.ts';
import { gravitySupplySheet } from './gravity-supply.ts';
import { hardnessCases } from './hardness.cases.ts';
import { hardnessText } from './hardness.text.ts';
import { hardnessSheet } from './hardness.ts';
import { hazenWilliamsCases } from './hazen-williams.cases.ts';
import { hazenWilliamsText } from './hazen-williams.text.ts';
import { hazenWilliamsSheet } from './hazen-williams.ts';
import { heightAboveCases } from './height-above.cases.ts';
import { heightAboveText } from './height-above.text.ts';
import { heightAboveSheet } from './height-above.ts';
import { hydrantPitotCases } from './hydrant-pitot.cases.ts';
import { hydrantPitotText } from './hydrant-pitot.text.ts';
import { hydrantPitotSheet } from './hydrant-pitot.ts';
import { inertiaLagCases } from './inertia-lag.cases.ts';
import { inertiaLagText } from './inertia-lag.text.ts';
import { inertiaLagSheet } from './inertia-lag.ts';
import { laneDoseCases } from './lane-dose.cases.ts';
import { laneDoseText } from './lane-dose.text.ts';
import { laneDoseSheet } from './lane-dose.ts';
import { laneFillCases } from './lane-fill.cases.ts';
import { laneFillText } from './lane-fill.text.ts';
import { laneFillSheet } from './lane-fill.ts';
import { laneFlowCases } from './lane-flow.cases.ts';
import { laneFlowText } from './lane-flow.text.ts';
import { laneFlowSheet } from './lane-flow.ts';
import { liquidBetweenCases } from './liquid-between.cases.ts';
import { liquidBetweenText } from './liquid-between.text.ts';
import { liquidBetweenSheet } from './liquid-between.ts';
import { mainSupplyCases } from './main-supply.cases.ts';
import { mainSupplyText } from './main-supply.text.ts';
import { mainSupplySheet } from './main-supply.ts';
import { manifoldCases } from './manifold.cases.ts';
import { manifoldText } from './manifold.text.ts';
import { manifoldSheet } from './manifold.ts';
import { manifoldFlowCases } from './manifold-flow.cases.ts';
import { manifoldFlowText } from './manifold-flow.text.ts';
import { manifoldFlowSheet } from './manifold-flow.ts';
import { manifoldPressureCases } from './manifold-pressure.cases.ts';
import { manifoldPressureText } from './manifold-pressure.text.ts';
import { manifoldPressureSheet } from './manifold-pressure.ts';
import { meanOverflowCases } from './mean-overflow.cases.ts';
import { meanOverflowText } from './mean-overflow.text.ts';
import { meanOverflowSheet } from './mean-overflow.ts';
import { meterConductivityCases } from './meter-conductivity.cases.ts';
import { meterConductivityText } from './meter-conductivity.text.ts';
import { meterConductivitySheet } from './meter-conductivity.ts';
import { neutralisingAcidCases } from './neutralising-acid.cases.ts';
import { neutralisingAcidText } from './neutralising-acid.text.ts';
import { neutralisingAcidSheet } from './neutralising-acid.ts';
import { nozzleVelocityCases } from './nozzle-velocity.cases.ts';
import { nozzleVelocityText } from './nozzle-velocity.text.ts';
import { nozzleVelocitySheet } from './nozzle-velocity.ts';
import { npshCases } from './npsh.cases.ts';
import { npshText } from './npsh.text.ts';
import { npshSheet } from './npsh.ts';
import { npshRequiredHereCases } from './npsh-required-here.cases.ts';
import { npshRequiredHereText } from './npsh-required-here.text.ts';
import { npshRequiredHereSheet } from './npsh-required-here.ts';
import { operatingPointCases } from './operating-point.cases.ts';
import { operatingPointText } from './operating-point.text.ts';
import { operatingPointSheet } from './operating-point.ts';
import { orificeCases } from './orifice.cases.ts';
import { orificeText } from './orifice.text.ts';
import { orificeSheet } from './orifice.ts';
import { overflowWeirCases } from './overflow-weir.cases.ts';
import { overflowWeirText } from './overflow-weir.text.ts';
import { overflowWeirSheet } from './overflow-weir.ts';
import { pipeLossCases } from './pipe-loss.cases.ts';
import { pipeLossText } from './pipe-loss.text.ts';
import { pipeLossSheet } from './pipe-loss.ts';
import { pipeVelocityCases } from './pipe-velocity.cases.ts';
import { pipeVelocityText } from './pipe-velocity.text.ts';
import { pipeVelocitySheet } from './pipe-velocity.ts';
import { pressureVesselCases } from './pressure-vessel.cases.ts';
import { pressureVesselText } from './pressure-vessel.text.ts';
import { pressureVesselSheet } from './pressure-vessel.ts';
import { pumpAffinityCases } from './pump-affinity.cases.ts';
import { pumpAffinityText } from './pump-affinity.text.ts';
import { pumpAffinitySheet } from './pump-affinity.ts';
import { pumpBandCases } from './pump-band.cases.ts';
import { pumpBandText } from './pump-band.text.ts';
import { pumpBandSheet } from './pump-band.ts';
import { pumpCurveCases } from './pump-curve.cases.ts';
import { pumpCurveText } from './pump-curve.text.ts';
import { pumpCurveSheet } from './pump-curve.ts';
import { pumpedSupplyCases } from './pumped-supply.cases.ts';
import { pumpedSupplyText } from './pumped-supply.text.ts';
import { pumpedSupplySheet } from './pumped-supply.ts';
import { readingCurveCases } from './reading-curve.cases.ts';
import { readingCurveText } from './reading-curve.text.ts';
import { readingCurveSheet } from './reading-curve.ts';
import { readingSupplyCases } from './reading-supply.cases.ts';
import { readingSupplyText } from './reading-supply.text.ts';
import { readingSupplySheet } from './reading-supply.ts';
import { reynoldsNumberCases } from './reynolds-number.cases.ts';
import { reynoldsNumberText } from './reynolds-number.text.ts';
import { reynoldsNumberSheet } from './reynolds-number.ts';
import { runDryTimeCases } from './run-dry-time.cases.ts';
import { runDryTimeText } from './run-dry-time.text.ts';
import { runDryTimeSheet } from './run-dry-time.ts';
import { runLossCases } from './run-loss.cases.ts';
import { runLossText } from './run-loss.text.ts';
import { runLossSheet } from './run-loss.ts';
import { screenBlockingCases } from './screen-blocking.cases.ts';
import { screenBlockingText } from './screen-blocking.text.ts';
import { screenBlockingSheet } from './screen-blocking.ts';
import { siteWaterCases } from './site-water.cases.ts';
import { siteWaterText } from './site-water.text.ts';
import { siteWaterSheet } from './site-water.ts';
import { sprayJetCases } from './spray-jet.cases.ts';
import { sprayJetText } from './spray-jet.text.ts';
import { sprayJetSheet } from './spray-jet.ts';
import { sprayNozzleCases } from './spray-nozzle.cases.ts';
import { sprayNozzleText } from './spray-nozzle.text.ts';
import { sprayNozzleSheet } from './spray-nozzle.ts';
import { surgeCases } from './surge.cases.ts';
import { surgeText } from './surge.text.ts';
import { surgeSheet } from './surge.ts';
import { tankDrawDownCases } from './tank-draw-down.cases.ts';
import { tankDrawDownText } from './tank-draw-down.text.ts';
import { tankDrawDownSheet } from './tank-draw-down.ts';
import { tankDumpCases } from './tank-dump.cases.ts';
import { tankDumpText } from './tank-dump.text.ts';
import { tankDumpSheet } from './tank-dump.ts';
import { tankLevelCases } from './tank-level.cases.ts';
import { tankLevelText } from './tank-level.text.ts';
import { tankLevelSheet } from './tank-level.ts';
import { tieInPressureCases } from './tie-in-pressure.cases.ts';
import { tieInPressureText } from './tie-in-pressure.text.ts';
import { tieInPressureSheet } from './tie-in-pressure.ts';
import { twoVesselsCases } from './two-vessels.cases.ts';
import { twoVesselsText } from './two-vessels.text.ts';
import { twoVesselsSheet } from './two-vessels.ts';
import { valveCoefficientCases } from './valve-coefficient.cases.ts';
import { valveCoefficientText } from './valve-coefficient.text.ts';
import { valveCoefficientSheet } from './valve-coefficient.ts';
import { valveFlowCases } from './valve-flow.cases.ts';
import { valveFlowText } from './valve-flow.text.ts';
import { valveFlowSheet } from './valve-flow.ts';
import { valveLossCases } from './valve-loss.cases.ts';
import { valveLossText } from './valve-loss.text.ts';
import { valveLossSheet } from './valve-loss.ts';
import { vapourPressureCases } from './vapour-pressure.cases.ts';
import { vapourPressureText } from './vapour-pressure.text.ts';
import { vapourPressureSheet } from './vapour-pressure.ts';
import { volumeAt20Cases } from './volume-at-20.cases.ts';
import { volumeAt20Text } from './volume-at-20.text.ts';
import { volumeAt20Sheet } from './volume-at-20.ts';
import { washerWaterCases } from './washer-water.cases.ts';
import { washerWaterText } from './washer-water.text.ts';
import { washerWaterSheet } from './washer-water.ts';
import { waterDensityCases } from './water-density.cases.ts';
import { waterDensityText } from './water-density.text.ts';
import { waterDensitySheet } from './water-density.ts';
import { waterViscosityCases } from './water-viscosity.cases.ts';
import { waterViscosityText } from './water-viscosity.text.ts';
import { waterViscositySheet } from './water-viscosity.ts';
import { waveSpeedCases } from './wave-speed.cases.ts';
import { waveSpeedText } from './wave-speed.text.ts';
import { waveSpeedSheet } from './wave-speed.ts';

/** The sheets of water: properties, runs, valves, pumps, supplies, lanes, tanks, drains. */
export const waterEntries: readonly SheetEntry[] = [
  sheetEntry(waterDensitySheet, waterDensityCases, waterDensityText),
  sheetEntry(waterViscositySheet, waterViscosityCases, waterViscosityText),
  sheetEntry(volumeAt20Sheet, volumeAt20Cases, volumeAt20Text),
  sheetEntry(vapourPressureSheet, vapourPressureCases, vapourPressureText),
  sheetEntry(atmosphericPressureSheet, atmosphericPressureCases, atmosphericPressureText),
  sheetEntry(reynoldsNumberSheet, reynoldsNumberCases, reynoldsNumberText),
  sheetEntry(frictionFactorSheet, frictionFactorCases, frictionFactorText),
  sheetEntry(pipeVelocitySheet, pipeVelocityCases, pipeVelocityText),
  sheetEntry(nozzleVelocitySheet, nozzleVelocityCases, nozzleVelocityText),
  sheetEntry(pipeLossSheet, pipeLossCases, pipeLossText),
  sheetEntry(runLossSheet, runLossCases, runLossText),
  sheetEntry(hazenWilliamsSheet, hazenWilliamsCases, hazenWilliamsText),
  sheetEntry(valveCoefficientSheet, valveCoefficientCases, valveCoefficientText),
  sheetEntry(valveFlowSheet, valveFlowCases, valveFlowText),
  sheetEntry(valveLossSheet, valveLossCases, valveLossText),
  sheetEntry(controlValveSheet, controlValveCases, controlValveText),
  sheetEntry(orificeSheet, orificeCases, orificeText),
  sheetEntry(pumpCurveSheet, pumpCurveCases, pumpCurveText),
  sheetEntry(pumpAffinitySheet, pumpAffinityCases, pumpAffinityText),
  sheetEntry(operatingPointSheet, operatingPointCases, operatingPointText),
  sheetEntry(mainSupplySheet, mainSupplyCases, mainSupplyText),
  sheetEntry(gravitySupplySheet, gravitySupplyCases, gravitySupplyText),
  sheetEntry(pumpedSupplySheet, pumpedSupplyCases, pumpedSupplyText),
  sheetEntry(readingSupplySheet, readingSupplyCases, readingSupplyText),
  sheetEntry(readingCurveSheet, readingCurveCases, readingCurveText),
  sheetEntry(manifoldFlowSheet, manifoldFlowCases, manifoldFlowText),
  sheetEntry(meanOverflowSheet, meanOverflowCases, meanOverflowText),
  sheetEntry(tankLevelSheet, tankLevelCases, tankLevelText),
  sheetEntry(liquidBetweenSheet, liquidBetweenCases, liquidBetweenText),
  sheetEntry(manifoldPressureSheet, manifoldPressureCases, manifoldPressureText),
  sheetEntry(manifoldSheet, manifoldCases, manifoldText),
  sheetEntry(laneFlowSheet, laneFlowCases, laneFlowText),
  sheetEntry(laneFillSheet, laneFillCases, laneFillText),
  sheetEntry(laneDoseSheet, laneDoseCases, laneDoseText),
  sheetEntry(countPresetSheet, countPresetCases, countPresetText),
  sheetEntry(fillTimeSheet, fillTimeCases, fillTimeText),
  sheetEntry(fillByStepsSheet, fillByStepsCases, fillByStepsText),
  sheetEntry(tankDrawDownSheet, tankDrawDownCases, tankDrawDownText),
  sheetEntry(twoVesselsSheet, twoVesselsCases, twoVesselsText),
  sheetEntry(runDryTimeSheet, runDryTimeCases, runDryTimeText),
  sheetEntry(bufferVolumeSheet, bufferVolumeCases, bufferVolumeText),
  sheetEntry(pumpBandSheet, pumpBandCases, pumpBandText),
  sheetEntry(pressureVesselSheet, pressureVesselCases, pressureVesselText),
  sheetEntry(waveSpeedSheet, waveSpeedCases, waveSpeedText),
  sheetEntry(surgeSheet, surgeCases, surgeText),
  sheetEntry(closingColumnSheet, closingColumnCases, closingColumnText),
  sheetEntry(inertiaLagSheet, inertiaLagCases, inertiaLagText),
  sheetEntry(sprayNozzleSheet, sprayNozzleCases, sprayNozzleText),
  sheetEntry(npshSheet, npshCases, npshText),
  sheetEntry(npshRequiredHereSheet, npshRequiredHereCases, npshRequiredHereText),
  sheetEntry(drainCapacitySheet, drainCapacityCases, drainCapacityText),
  sheetEntry(drainDepthSheet, drainDepthCases, drainDepthText),
  sheetEntry(overflowWeirSheet, overflowWeirCases, overflowWeirText),
  sheetEntry(hydrantPitotSheet, hydrantPitotCases, hydrantPitotText),
  sheetEntry(tankDumpSheet, tankDumpCases, tankDumpText),
  sheetEntry(neutralisingAcidSheet, neutralisingAcidCases, neutralisingAcidText),
  sheetEntry(washerWaterSheet, washerWaterCases, washerWaterText),
  sheetEntry(sprayJetSheet, sprayJetCases, sprayJetText),
  sheetEntry(screenBlockingSheet, screenBlockingCases, screenBlockingText),
  sheetEntry(meterConductivitySheet, meterConductivityCases, meterConductivityText),
  sheetEntry(hardnessSheet, hardnessCases, hardnessText),
  sheetEntry(siteWaterSheet, siteWaterCases, siteWaterText),
  sheetEntry(backflowLossSheet, backflowLossCases, backflowLossText),
  sheetEntry(flushingSheet, flushingCases, flushingText),
  sheetEntry(flowsTogetherSheet, flowsTogetherCases, flowsTogetherText),
  sheetEntry(flowLeftSheet, flowLeftCases, flowLeftText),
  sheetEntry(tieInPressureSheet, tieInPressureCases, tieInPressureText),
  sheetEntry(heightAboveSheet, heightAboveCases, heightAboveText),
];
