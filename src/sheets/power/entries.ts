import { type SheetEntry, sheetEntry } from '../sheet-entry.ts';
import { ampacityIecCases } from './ampacity-iec.cases.ts';
import { ampacityIecText } from './ampacity-iec.text.ts';
import { ampacityIecSheet } from './ampacity-iec.ts';
import { ampacityUsCases } from './ampacity-us.cases.ts';
import { ampacityUsText } from './ampacity-us.text.ts';
import { ampacityUsSheet } from './ampacity-us.ts';
import { autotransformerCases } from './autotransformer.cases.ts';
import { autotransformerText } from './autotransformer.text.ts';
import { autotransformerSheet } from './autotransformer.ts';
import { branchDeviceUsCases } from './branch-device-us.cases.ts';
import { branchDeviceUsText } from './branch-device-us.text.ts';
import { branchDeviceUsSheet } from './branch-device-us.ts';
import { conductorIecCases } from './conductor-iec.cases.ts';
import { conductorIecText } from './conductor-iec.text.ts';
import { conductorIecSheet } from './conductor-iec.ts';
import { conductorUsCases } from './conductor-us.cases.ts';
import { conductorUsText } from './conductor-us.text.ts';
import { conductorUsSheet } from './conductor-us.ts';
import { currentsTogetherCases } from './currents-together.cases.ts';
import { currentsTogetherText } from './currents-together.text.ts';
import { currentsTogetherSheet } from './currents-together.ts';
import { deratedPlateCases } from './derated-plate.cases.ts';
import { deratedPlateText } from './derated-plate.text.ts';
import { deratedPlateSheet } from './derated-plate.ts';
import { driveFrequencyCases } from './drive-frequency.cases.ts';
import { driveFrequencyText } from './drive-frequency.text.ts';
import { driveFrequencySheet } from './drive-frequency.ts';
import { earthFaultLoopCases } from './earth-fault-loop.cases.ts';
import { earthFaultLoopText } from './earth-fault-loop.text.ts';
import { earthFaultLoopSheet } from './earth-fault-loop.ts';
import { earthingCases } from './earthing.cases.ts';
import { earthingText } from './earthing.text.ts';
import { earthingSheet } from './earthing.ts';
import { energyShiftCases } from './energy-shift.cases.ts';
import { energyShiftText } from './energy-shift.text.ts';
import { energyShiftSheet } from './energy-shift.ts';
import { faultBehindTransformerCases } from './fault-behind-transformer.cases.ts';
import { faultBehindTransformerText } from './fault-behind-transformer.text.ts';
import { faultBehindTransformerSheet } from './fault-behind-transformer.ts';
import { faultPointToPointCases } from './fault-point-to-point.cases.ts';
import { faultPointToPointText } from './fault-point-to-point.text.ts';
import { faultPointToPointSheet } from './fault-point-to-point.ts';
import { faultVectorCases } from './fault-vector.cases.ts';
import { faultVectorText } from './fault-vector.text.ts';
import { faultVectorSheet } from './fault-vector.ts';
import { feederUsCases } from './feeder-us.cases.ts';
import { feederUsText } from './feeder-us.text.ts';
import { feederUsSheet } from './feeder-us.ts';
import { frequencyChangeCases } from './frequency-change.cases.ts';
import { frequencyChangeText } from './frequency-change.text.ts';
import { frequencyChangeSheet } from './frequency-change.ts';
import { groundingConductorUsCases } from './grounding-conductor-us.cases.ts';
import { groundingConductorUsText } from './grounding-conductor-us.text.ts';
import { groundingConductorUsSheet } from './grounding-conductor-us.ts';
import { heaterCases } from './heater.cases.ts';
import { heaterText } from './heater.text.ts';
import { heaterSheet } from './heater.ts';
import { impedanceUsCases } from './impedance-us.cases.ts';
import { impedanceUsText } from './impedance-us.text.ts';
import { impedanceUsSheet } from './impedance-us.ts';
import { largestStartCases } from './largest-start.cases.ts';
import { largestStartText } from './largest-start.text.ts';
import { largestStartSheet } from './largest-start.ts';
import { lineCurrentsCases } from './line-currents.cases.ts';
import { lineCurrentsText } from './line-currents.text.ts';
import { lineCurrentsSheet } from './line-currents.ts';
import { loadCurrentCases } from './load-current.cases.ts';
import { loadCurrentText } from './load-current.text.ts';
import { loadCurrentSheet } from './load-current.ts';
import { lockedRotorCases } from './locked-rotor.cases.ts';
import { lockedRotorText } from './locked-rotor.text.ts';
import { lockedRotorSheet } from './locked-rotor.ts';
import { machineSupplyUsCases } from './machine-supply-us.cases.ts';
import { machineSupplyUsText } from './machine-supply-us.text.ts';
import { machineSupplyUsSheet } from './machine-supply-us.ts';
import { motorCurrentIecCases } from './motor-current-iec.cases.ts';
import { motorCurrentIecText } from './motor-current-iec.text.ts';
import { motorCurrentIecSheet } from './motor-current-iec.ts';
import { motorCurrentUsCases } from './motor-current-us.cases.ts';
import { motorCurrentUsText } from './motor-current-us.text.ts';
import { motorCurrentUsSheet } from './motor-current-us.ts';
import { motorInputCases } from './motor-input.cases.ts';
import { motorInputText } from './motor-input.text.ts';
import { motorInputSheet } from './motor-input.ts';
import { motorOn50HzCases } from './motor-on-50-hz.cases.ts';
import { motorOn50HzText } from './motor-on-50-hz.text.ts';
import { motorOn50HzSheet } from './motor-on-50-hz.ts';
import { motorSpeedCases } from './motor-speed.cases.ts';
import { motorSpeedText } from './motor-speed.text.ts';
import { motorSpeedSheet } from './motor-speed.ts';
import { motorStartCases } from './motor-start.cases.ts';
import { motorStartText } from './motor-start.text.ts';
import { motorStartSheet } from './motor-start.ts';
import { motorsInputCases } from './motors-input.cases.ts';
import { motorsInputText } from './motors-input.text.ts';
import { motorsInputSheet } from './motors-input.ts';
import { offVoltageCases } from './off-voltage.cases.ts';
import { offVoltageText } from './off-voltage.text.ts';
import { offVoltageSheet } from './off-voltage.ts';
import { overloadSettingCases } from './overload-setting.cases.ts';
import { overloadSettingText } from './overload-setting.text.ts';
import { overloadSettingSheet } from './overload-setting.ts';
import { panelFaultCases } from './panel-fault.cases.ts';
import { panelFaultText } from './panel-fault.text.ts';
import { panelFaultSheet } from './panel-fault.ts';
import { parallelConductorsCases } from './parallel-conductors.cases.ts';
import { parallelConductorsText } from './parallel-conductors.text.ts';
import { parallelConductorsSheet } from './parallel-conductors.ts';
import { residualVoltageCases } from './residual-voltage.cases.ts';
import { residualVoltageText } from './residual-voltage.text.ts';
import { residualVoltageSheet } from './residual-voltage.ts';
import { resistanceIecCases } from './resistance-iec.cases.ts';
import { resistanceIecText } from './resistance-iec.text.ts';
import { resistanceIecSheet } from './resistance-iec.ts';
import { standardDeviceCases } from './standard-device.cases.ts';
import { standardDeviceText } from './standard-device.text.ts';
import { standardDeviceSheet } from './standard-device.ts';
import { startingCurrentCases } from './starting-current.cases.ts';
import { startingCurrentText } from './starting-current.text.ts';
import { startingCurrentSheet } from './starting-current.ts';
import { supplyToleranceCases } from './supply-tolerance.cases.ts';
import { supplyToleranceText } from './supply-tolerance.text.ts';
import { supplyToleranceSheet } from './supply-tolerance.ts';
import { surroundingsDeratingCases } from './surroundings-derating.cases.ts';
import { surroundingsDeratingText } from './surroundings-derating.text.ts';
import { surroundingsDeratingSheet } from './surroundings-derating.ts';
import { throughTransformerCases } from './through-transformer.cases.ts';
import { throughTransformerText } from './through-transformer.text.ts';
import { throughTransformerSheet } from './through-transformer.ts';
import { transformerDeviceUsCases } from './transformer-device-us.cases.ts';
import { transformerDeviceUsText } from './transformer-device-us.text.ts';
import { transformerDeviceUsSheet } from './transformer-device-us.ts';
import { transformerFaultCases } from './transformer-fault.cases.ts';
import { transformerFaultText } from './transformer-fault.text.ts';
import { transformerFaultSheet } from './transformer-fault.ts';
import { transformerSizeCases } from './transformer-size.cases.ts';
import { transformerSizeText } from './transformer-size.text.ts';
import { transformerSizeSheet } from './transformer-size.ts';
import { transformerVoltageCases } from './transformer-voltage.cases.ts';
import { transformerVoltageText } from './transformer-voltage.text.ts';
import { transformerVoltageSheet } from './transformer-voltage.ts';
import { unbalanceDeratingCases } from './unbalance-derating.cases.ts';
import { unbalanceDeratingText } from './unbalance-derating.text.ts';
import { unbalanceDeratingSheet } from './unbalance-derating.ts';
import { voltageDropCases } from './voltage-drop.cases.ts';
import { voltageDropText } from './voltage-drop.text.ts';
import { voltageDropSheet } from './voltage-drop.ts';
import { voltageDropIecCases } from './voltage-drop-iec.cases.ts';
import { voltageDropIecText } from './voltage-drop-iec.text.ts';
import { voltageDropIecSheet } from './voltage-drop-iec.ts';
import { voltageUnbalanceCases } from './voltage-unbalance.cases.ts';
import { voltageUnbalanceText } from './voltage-unbalance.text.ts';
import { voltageUnbalanceSheet } from './voltage-unbalance.ts';
import { wireGaugeCases } from './wire-gauge.cases.ts';
import { wireGaugeText } from './wire-gauge.text.ts';
import { wireGaugeSheet } from './wire-gauge.ts';

/** Every sheet of power with its evidence and its words. */
export const powerEntries: readonly SheetEntry[] = [
  sheetEntry(motorCurrentUsSheet, motorCurrentUsCases, motorCurrentUsText),
  sheetEntry(motorCurrentIecSheet, motorCurrentIecCases, motorCurrentIecText),
  sheetEntry(motorInputSheet, motorInputCases, motorInputText),
  sheetEntry(loadCurrentSheet, loadCurrentCases, loadCurrentText),
  sheetEntry(overloadSettingSheet, overloadSettingCases, overloadSettingText),
  sheetEntry(lockedRotorSheet, lockedRotorCases, lockedRotorText),
  sheetEntry(motorStartSheet, motorStartCases, motorStartText),
  sheetEntry(largestStartSheet, largestStartCases, largestStartText),
  sheetEntry(standardDeviceSheet, standardDeviceCases, standardDeviceText),
  sheetEntry(branchDeviceUsSheet, branchDeviceUsCases, branchDeviceUsText),
  sheetEntry(feederUsSheet, feederUsCases, feederUsText),
  sheetEntry(machineSupplyUsSheet, machineSupplyUsCases, machineSupplyUsText),
  sheetEntry(ampacityUsSheet, ampacityUsCases, ampacityUsText),
  sheetEntry(conductorUsSheet, conductorUsCases, conductorUsText),
  sheetEntry(ampacityIecSheet, ampacityIecCases, ampacityIecText),
  sheetEntry(conductorIecSheet, conductorIecCases, conductorIecText),
  sheetEntry(wireGaugeSheet, wireGaugeCases, wireGaugeText),
  sheetEntry(impedanceUsSheet, impedanceUsCases, impedanceUsText),
  sheetEntry(resistanceIecSheet, resistanceIecCases, resistanceIecText),
  sheetEntry(voltageDropSheet, voltageDropCases, voltageDropText),
  sheetEntry(voltageDropIecSheet, voltageDropIecCases, voltageDropIecText),
  sheetEntry(groundingConductorUsSheet, groundingConductorUsCases, groundingConductorUsText),
  sheetEntry(transformerFaultSheet, transformerFaultCases, transformerFaultText),
  sheetEntry(faultPointToPointSheet, faultPointToPointCases, faultPointToPointText),
  sheetEntry(faultVectorSheet, faultVectorCases, faultVectorText),
  sheetEntry(faultBehindTransformerSheet, faultBehindTransformerCases, faultBehindTransformerText),
  sheetEntry(panelFaultSheet, panelFaultCases, panelFaultText),
  sheetEntry(transformerSizeSheet, transformerSizeCases, transformerSizeText),
  sheetEntry(transformerVoltageSheet, transformerVoltageCases, transformerVoltageText),
  sheetEntry(transformerDeviceUsSheet, transformerDeviceUsCases, transformerDeviceUsText),
  sheetEntry(autotransformerSheet, autotransformerCases, autotransformerText),
  sheetEntry(voltageUnbalanceSheet, voltageUnbalanceCases, voltageUnbalanceText),
  sheetEntry(unbalanceDeratingSheet, unbalanceDeratingCases, unbalanceDeratingText),
  sheetEntry(surroundingsDeratingSheet, surroundingsDeratingCases, surroundingsDeratingText),
  sheetEntry(deratedPlateSheet, deratedPlateCases, deratedPlateText),
  sheetEntry(lineCurrentsSheet, lineCurrentsCases, lineCurrentsText),
  sheetEntry(heaterSheet, heaterCases, heaterText),
  sheetEntry(offVoltageSheet, offVoltageCases, offVoltageText),
  sheetEntry(supplyToleranceSheet, supplyToleranceCases, supplyToleranceText),
  sheetEntry(frequencyChangeSheet, frequencyChangeCases, frequencyChangeText),
  sheetEntry(motorSpeedSheet, motorSpeedCases, motorSpeedText),
  sheetEntry(driveFrequencySheet, driveFrequencyCases, driveFrequencyText),
  sheetEntry(motorOn50HzSheet, motorOn50HzCases, motorOn50HzText),
  sheetEntry(energyShiftSheet, energyShiftCases, energyShiftText),
  sheetEntry(earthingSheet, earthingCases, earthingText),
  sheetEntry(earthFaultLoopSheet, earthFaultLoopCases, earthFaultLoopText),
  sheetEntry(residualVoltageSheet, residualVoltageCases, residualVoltageText),
  sheetEntry(currentsTogetherSheet, currentsTogetherCases, currentsTogetherText),
  sheetEntry(throughTransformerSheet, throughTransformerCases, throughTransformerText),
  sheetEntry(parallelConductorsSheet, parallelConductorsCases, parallelConductorsText),
  sheetEntry(motorsInputSheet, motorsInputCases, motorsInputText),
  sheetEntry(startingCurrentSheet, startingCurrentCases, startingCurrentText),
];
