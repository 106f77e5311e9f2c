import { airEntries } from './air/entries.ts';
import { powerEntries } from './power/entries.ts';
import { bottleRateCases } from './rate/bottle-rate.cases.ts';
import { bottleRateText } from './rate/bottle-rate.text.ts';
import { bottleRateSheet } from './rate/bottle-rate.ts';
import { fillStationTimeCases } from './rate/fill-station-time.cases.ts';
import { fillStationTimeText } from './rate/fill-station-time.text.ts';
import { fillStationTimeSheet } from './rate/fill-station-time.ts';
import { fillTimeLeftCases } from './rate/fill-time-left.cases.ts';
import { fillTimeLeftText } from './rate/fill-time-left.text.ts';
import { fillTimeLeftSheet } from './rate/fill-time-left.ts';
import { indexPeriodCases } from './rate/index-period.cases.ts';
import { indexPeriodText } from './rate/index-period.text.ts';
import { indexPeriodSheet } from './rate/index-period.ts';
import { loopPeriodCases } from './rate/loop-period.cases.ts';
import { loopPeriodText } from './rate/loop-period.text.ts';
import { loopPeriodSheet } from './rate/loop-period.ts';
import { meanDrawCases } from './rate/mean-draw.cases.ts';
import { meanDrawText } from './rate/mean-draw.text.ts';
import { meanDrawSheet } from './rate/mean-draw.ts';
import { meanOfRunCases } from './rate/mean-of-run.cases.ts';
import { meanOfRunText } from './rate/mean-of-run.text.ts';
import { meanOfRunSheet } from './rate/mean-of-run.ts';
import { stationRateCases } from './rate/station-rate.cases.ts';
import { stationRateText } from './rate/station-rate.text.ts';
import { stationRateSheet } from './rate/station-rate.ts';
import { type SheetEntry, sheetEntry } from './sheet-entry.ts';
import { atmosphericPressureCases } from './water/atmospheric-pressure.cases.ts';
import { atmosphericPressureText } from './water/atmospheric-pressure.text.ts';
import { atmosphericPressureSheet } from './water/atmospheric-pressure.ts';
import { bufferVolumeCases } from './water/buffer-volume.cases.ts';
import { bufferVolumeText } from './water/buffer-volume.text.ts';
import { bufferVolumeSheet } from './water/buffer-volume.ts';
import { controlValveCases } from './water/control-valve.cases.ts';
import { controlValveText } from './water/control-valve.text.ts';
import { controlValveSheet } from './water/control-valve.ts';
import { countPresetCases } from './water/count-preset.cases.ts';
import { countPresetText } from './water/count-preset.text.ts';
import { countPresetSheet } from './water/count-preset.ts';
import { drainCapacityCases } from './water/drain-capacity.cases.ts';
import { drainCapacityText } from './water/drain-capacity.text.ts';
import { drainCapacitySheet } from './water/drain-capacity.ts';
import { drainDepthCases } from './water/drain-depth.cases.ts';
import { drainDepthText } from './water/drain-depth.text.ts';
import { drainDepthSheet } from './water/drain-depth.ts';
import { fillByStepsCases } from './water/fill-by-steps.cases.ts';
import { fillByStepsText } from './water/fill-by-steps.text.ts';
import { fillByStepsSheet } from './water/fill-by-steps.ts';
import { fillTimeCases } from './water/fill-time.cases.ts';
import { fillTimeText } from './water/fill-time.text.ts';
import { fillTimeSheet } from './water/fill-time.ts';
import { frictionFactorCases } from './water/friction-factor.cases.ts';
import { frictionFactorText } from './water/friction-factor.text.ts';
import { frictionFactorSheet } from './water/friction-factor.ts';
import { gravitySupplyCases } from './water/gravity-supply.cases.ts';
import { gravitySupplyText } from './water/gravity-supply.text.ts';
import { gravitySupplySheet } from './water/gravity-supply.ts';
import { hazenWilliamsCases } from './water/hazen-williams.cases.ts';
import { hazenWilliamsText } from './water/hazen-williams.text.ts';
import { hazenWilliamsSheet } from './water/hazen-williams.ts';
import { hydrantPitotCases } from './water/hydrant-pitot.cases.ts';
import { hydrantPitotText } from './water/hydrant-pitot.text.ts';
import { hydrantPitotSheet } from './water/hydrant-pitot.ts';
import { inertiaLagCases } from './water/inertia-lag.cases.ts';
import { inertiaLagText } from './water/inertia-lag.text.ts';
import { inertiaLagSheet } from './water/inertia-lag.ts';
import { laneDoseCases } from './water/lane-dose.cases.ts';
import { laneDoseText } from './water/lane-dose.text.ts';
import { laneDoseSheet } from './water/lane-dose.ts';
import { laneFillCases } from './water/lane-fill.cases.ts';
import { laneFillText } from './water/lane-fill.text.ts';
import { laneFillSheet } from './water/lane-fill.ts';
import { laneFlowCases } from './water/lane-flow.cases.ts';
import { laneFlowText } from './water/lane-flow.text.ts';
import { laneFlowSheet } from './water/lane-flow.ts';
import { liquidBetweenCases } from './water/liquid-between.cases.ts';
import { liquidBetweenText } from './water/liquid-between.text.ts';
import { liquidBetweenSheet } from './water/liquid-between.ts';
import { mainSupplyCases } from './water/main-supply.cases.ts';
import { mainSupplyText } from './water/main-supply.text.ts';
import { mainSupplySheet } from './water/main-supply.ts';
import { manifoldCases } from './water/manifold.cases.ts';
import { manifoldText } from './water/manifold.text.ts';
import { manifoldSheet } from './water/manifold.ts';
import { manifoldFlowCases } from './water/manifold-flow.cases.ts';
import { manifoldFlowText } from './water/manifold-flow.text.ts';
import { manifoldFlowSheet } from './water/manifold-flow.ts';
import { manifoldPressureCases } from './water/manifold-pressure.cases.ts';
import { manifoldPressureText } from './water/manifold-pressure.text.ts';
import { manifoldPressureSheet } from './water/manifold-pressure.ts';
import { meanOverflowCases } from './water/mean-overflow.cases.ts';
import { meanOverflowText } from './water/mean-overflow.text.ts';
import { meanOverflowSheet } from './water/mean-overflow.ts';
import { nozzleVelocityCases } from './water/nozzle-velocity.cases.ts';
import { nozzleVelocityText } from './water/nozzle-velocity.text.ts';
import { nozzleVelocitySheet } from './water/nozzle-velocity.ts';
import { npshCases } from './water/npsh.cases.ts';
import { npshText } from './water/npsh.text.ts';
import { npshSheet } from './water/npsh.ts';
import { operatingPointCases } from './water/operating-point.cases.ts';
import { operatingPointText } from './water/operating-point.text.ts';
import { operatingPointSheet } from './water/operating-point.ts';
import { orificeCases } from './water/orifice.cases.ts';
import { orificeText } from './water/orifice.text.ts';
import { orificeSheet } from './water/orifice.ts';
import { overflowWeirCases } from './water/overflow-weir.cases.ts';
import { overflowWeirText } from './water/overflow-weir.text.ts';
import { overflowWeirSheet } from './water/overflow-weir.ts';
import { pipeLossCases } from './water/pipe-loss.cases.ts';
import { pipeLossText } from './water/pipe-loss.text.ts';
import { pipeLossSheet } from './water/pipe-loss.ts';
import { pipeVelocityCases } from './water/pipe-velocity.cases.ts';
import { pipeVelocityText } from './water/pipe-velocity.text.ts';
import { pipeVelocitySheet } from './water/pipe-velocity.ts';
import { pressureVesselCases } from './water/pressure-vessel.cases.ts';
import { pressureVesselText } from './water/pressure-vessel.text.ts';
import { pressureVesselSheet } from './water/pressure-vessel.ts';
import { pumpAffinityCases } from './water/pump-affinity.cases.ts';
import { pumpAffinityText } from './water/pump-affinity.text.ts';
import { pumpAffinitySheet } from './water/pump-affinity.ts';
import { pumpBandCases } from './water/pump-band.cases.ts';
import { pumpBandText } from './water/pump-band.text.ts';
import { pumpBandSheet } from './water/pump-band.ts';
import { pumpCurveCases } from './water/pump-curve.cases.ts';
import { pumpCurveText } from './water/pump-curve.text.ts';
import { pumpCurveSheet } from './water/pump-curve.ts';
import { pumpedSupplyCases } from './water/pumped-supply.cases.ts';
import { pumpedSupplyText } from './water/pumped-supply.text.ts';
import { pumpedSupplySheet } from './water/pumped-supply.ts';
import { readingCurveCases } from './water/reading-curve.cases.ts';
import { readingCurveText } from './water/reading-curve.text.ts';
import { readingCurveSheet } from './water/reading-curve.ts';
import { readingSupplyCases } from './water/reading-supply.cases.ts';
import { readingSupplyText } from './water/reading-supply.text.ts';
import { readingSupplySheet } from './water/reading-supply.ts';
import { reynoldsNumberCases } from './water/reynolds-number.cases.ts';
import { reynoldsNumberText } from './water/reynolds-number.text.ts';
import { reynoldsNumberSheet } from './water/reynolds-number.ts';
import { runDryTimeCases } from './water/run-dry-time.cases.ts';
import { runDryTimeText } from './water/run-dry-time.text.ts';
import { runDryTimeSheet } from './water/run-dry-time.ts';
import { runLossCases } from './water/run-loss.cases.ts';
import { runLossText } from './water/run-loss.text.ts';
import { runLossSheet } from './water/run-loss.ts';
import { sprayNozzleCases } from './water/spray-nozzle.cases.ts';
import { sprayNozzleText } from './water/spray-nozzle.text.ts';
import { sprayNozzleSheet } from './water/spray-nozzle.ts';
import { surgeCases } from './water/surge.cases.ts';
import { surgeText } from './water/surge.text.ts';
import { surgeSheet } from './water/surge.ts';
import { tankDrawDownCases } from './water/tank-draw-down.cases.ts';
import { tankDrawDownText } from './water/tank-draw-down.text.ts';
import { tankDrawDownSheet } from './water/tank-draw-down.ts';
import { tankLevelCases } from './water/tank-level.cases.ts';
import { tankLevelText } from './water/tank-level.text.ts';
import { tankLevelSheet } from './water/tank-level.ts';
import { twoVesselsCases } from './water/two-vessels.cases.ts';
import { twoVesselsText } from './water/two-vessels.text.ts';
import { twoVesselsSheet } from './water/two-vessels.ts';
import { valveCoefficientCases } from './water/valve-coefficient.cases.ts';
import { valveCoefficientText } from './water/valve-coefficient.text.ts';
import { valveCoefficientSheet } from './water/valve-coefficient.ts';
import { valveFlowCases } from './water/valve-flow.cases.ts';
import { valveFlowText } from './water/valve-flow.text.ts';
import { valveFlowSheet } from './water/valve-flow.ts';
import { valveLossCases } from './water/valve-loss.cases.ts';
import { valveLossText } from './water/valve-loss.text.ts';
import { valveLossSheet } from './water/valve-loss.ts';
import { vapourPressureCases } from './water/vapour-pressure.cases.ts';
import { vapourPressureText } from './water/vapour-pressure.text.ts';
import { vapourPressureSheet } from './water/vapour-pressure.ts';
import { volumeAt20Cases } from './water/volume-at-20.cases.ts';
import { volumeAt20Text } from './water/volume-at-20.text.ts';
import { volumeAt20Sheet } from './water/volume-at-20.ts';
import { waterDensityCases } from './water/water-density.cases.ts';
import { waterDensityText } from './water/water-density.text.ts';
import { waterDensitySheet } from './water/water-density.ts';
import { waterViscosityCases } from './water/water-viscosity.cases.ts';
import { waterViscosityText } from './water/water-viscosity.text.ts';
import { waterViscositySheet } from './water/water-viscosity.ts';
import { waveSpeedCases } from './water/wave-speed.cases.ts';
import { waveSpeedText } from './water/wave-speed.text.ts';
import { waveSpeedSheet } from './water/wave-speed.ts';

/** Every sheet with its evidence and its words. A new sheet is one line here. */
export const sheetEntries: readonly SheetEntry[] = [
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
  sheetEntry(inertiaLagSheet, inertiaLagCases, inertiaLagText),
  sheetEntry(sprayNozzleSheet, sprayNozzleCases, sprayNozzleText),
  sheetEntry(npshSheet, npshCases, npshText),
  sheetEntry(drainCapacitySheet, drainCapacityCases, drainCapacityText),
  sheetEntry(drainDepthSheet, drainDepthCases, drainDepthText),
  sheetEntry(overflowWeirSheet, overflowWeirCases, overflowWeirText),
  sheetEntry(hydrantPitotSheet, hydrantPitotCases, hydrantPitotText),
  sheetEntry(bottleRateSheet, bottleRateCases, bottleRateText),
  sheetEntry(indexPeriodSheet, indexPeriodCases, indexPeriodText),
  sheetEntry(fillStationTimeSheet, fillStationTimeCases, fillStationTimeText),
  sheetEntry(loopPeriodSheet, loopPeriodCases, loopPeriodText),
  sheetEntry(fillTimeLeftSheet, fillTimeLeftCases, fillTimeLeftText),
  sheetEntry(stationRateSheet, stationRateCases, stationRateText),
  sheetEntry(meanDrawSheet, meanDrawCases, meanDrawText),
  sheetEntry(meanOfRunSheet, meanOfRunCases, meanOfRunText),
  ...airEntries,
  ...powerEntries,
];

/** The same by id: `water/pipe-loss`. */
export const registry: ReadonlyMap<string, SheetEntry> = new Map(
  sheetEntries.map((entry) => [entry.sheet.id, entry]),
);
