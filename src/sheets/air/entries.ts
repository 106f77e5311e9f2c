import { type SheetEntry, sheetEntry } from '../sheet-entry.ts';
import { coldestPointCases } from './coldest-point.cases.ts';
import { coldestPointText } from './coldest-point.text.ts';
import { coldestPointSheet } from './coldest-point.ts';
import { condensateCases } from './condensate.cases.ts';
import { condensateText } from './condensate.text.ts';
import { condensateSheet } from './condensate.ts';
import { dryerCapacityCases } from './dryer-capacity.cases.ts';
import { dryerCapacityText } from './dryer-capacity.text.ts';
import { dryerCapacitySheet } from './dryer-capacity.ts';
import { dryerChoiceCases } from './dryer-choice.cases.ts';
import { dryerChoiceText } from './dryer-choice.text.ts';
import { dryerChoiceSheet } from './dryer-choice.ts';
import { humidAirCases } from './humid-air.cases.ts';
import { humidAirText } from './humid-air.text.ts';
import { humidAirSheet } from './humid-air.ts';
import { intakeDewPointCases } from './intake-dew-point.cases.ts';
import { intakeDewPointText } from './intake-dew-point.text.ts';
import { intakeDewPointSheet } from './intake-dew-point.ts';
import { oilClassCases } from './oil-class.cases.ts';
import { oilClassText } from './oil-class.text.ts';
import { oilClassSheet } from './oil-class.ts';
import { particleClassCases } from './particle-class.cases.ts';
import { particleClassText } from './particle-class.text.ts';
import { particleClassSheet } from './particle-class.ts';
import { pressureDewPointCases } from './pressure-dew-point.cases.ts';
import { pressureDewPointText } from './pressure-dew-point.text.ts';
import { pressureDewPointSheet } from './pressure-dew-point.ts';
import { saturationCases } from './saturation.cases.ts';
import { saturationText } from './saturation.text.ts';
import { saturationSheet } from './saturation.ts';
import { treatmentChainCases } from './treatment-chain.cases.ts';
import { treatmentChainText } from './treatment-chain.text.ts';
import { treatmentChainSheet } from './treatment-chain.ts';
import { waterClassCases } from './water-class.cases.ts';
import { waterClassText } from './water-class.text.ts';
import { waterClassSheet } from './water-class.ts';

/** The sheets of compressed air, in the order of a menu. */
export const airEntries: readonly SheetEntry[] = [
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
];
