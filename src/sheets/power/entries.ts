import { type SheetEntry, sheetEntry } from '../sheet-entry.ts';
import { ampacityIecCases } from './ampacity-iec.cases.ts';
import { ampacityIecText } from './ampacity-iec.text.ts';
import { ampacityIecSheet } from './ampacity-iec.ts';
import { ampacityUsCases } from './ampacity-us.cases.ts';
import { ampacityUsText } from './ampacity-us.text.ts';
import { ampacityUsSheet } from './ampacity-us.ts';
import { branchDeviceUsCases } from './branch-device-us.cases.ts';
import { branchDeviceUsText } from './branch-device-us.text.ts';
import { branchDeviceUsSheet } from './branch-device-us.ts';
import { conductorIecCases } from './conductor-iec.cases.ts';
import { conductorIecText } from './conductor-iec.text.ts';
import { conductorIecSheet } from './conductor-iec.ts';
import { conductorUsCases } from './conductor-us.cases.ts';
import { conductorUsText } from './conductor-us.text.ts';
import { conductorUsSheet } from './conductor-us.ts';
import { feederUsCases } from './feeder-us.cases.ts';
import { feederUsText } from './feeder-us.text.ts';
import { feederUsSheet } from './feeder-us.ts';
import { groundingConductorUsCases } from './grounding-conductor-us.cases.ts';
import { groundingConductorUsText } from './grounding-conductor-us.text.ts';
import { groundingConductorUsSheet } from './grounding-conductor-us.ts';
import { impedanceUsCases } from './impedance-us.cases.ts';
import { impedanceUsText } from './impedance-us.text.ts';
import { impedanceUsSheet } from './impedance-us.ts';
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
import { motorStartCases } from './motor-start.cases.ts';
import { motorStartText } from './motor-start.text.ts';
import { motorStartSheet } from './motor-start.ts';
import { overloadSettingCases } from './overload-setting.cases.ts';
import { overloadSettingText } from './overload-setting.text.ts';
import { overloadSettingSheet } from './overload-setting.ts';
import { resistanceIecCases } from './resistance-iec.cases.ts';
import { resistanceIecText } from './resistance-iec.text.ts';
import { resistanceIecSheet } from './resistance-iec.ts';
import { standardDeviceCases } from './standard-device.cases.ts';
import { standardDeviceText } from './standard-device.text.ts';
import { standardDeviceSheet } from './standard-device.ts';
import { voltageDropCases } from './voltage-drop.cases.ts';
import { voltageDropText } from './voltage-drop.text.ts';
import { voltageDropSheet } from './voltage-drop.ts';
import { voltageDropIecCases } from './voltage-drop-iec.cases.ts';
import { voltageDropIecText } from './voltage-drop-iec.text.ts';
import { voltageDropIecSheet } from './voltage-drop-iec.ts';
import { wireGaugeCases } from './wire-gauge.cases.ts';
import { wireGaugeText } from './wire-gauge.text.ts';
import { wireGaugeSheet } from './wire-gauge.ts';

/** Every sheet of power with its evidence and its words. */
export const powerEntries: readonly SheetEntry[] = [
  sheetEntry(motorCurrentUsSheet, motorCurrentUsCases, motorCurrentUsText),
  sheetEntry(motorCurrentIecSheet, motorCurrentIecCases, motorCurrentIecText),
  sheetEntry(motorInputSheet, motorInputCases, motorInputText),
  sheetEntry(overloadSettingSheet, overloadSettingCases, overloadSettingText),
  sheetEntry(lockedRotorSheet, lockedRotorCases, lockedRotorText),
  sheetEntry(motorStartSheet, motorStartCases, motorStartText),
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
];
