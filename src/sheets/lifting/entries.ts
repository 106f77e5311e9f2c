import { type SheetEntry, sheetEntry } from '../sheet-entry.ts';
import { offCentreSlingCases } from './off-centre-sling.cases.ts';
import { offCentreSlingText } from './off-centre-sling.text.ts';
import { offCentreSlingSheet } from './off-centre-sling.ts';
import { slingLegCases } from './sling-leg.cases.ts';
import { slingLegText } from './sling-leg.text.ts';
import { slingLegSheet } from './sling-leg.ts';
import { twoPointWeighingCases } from './two-point-weighing.cases.ts';
import { twoPointWeighingText } from './two-point-weighing.text.ts';
import { twoPointWeighingSheet } from './two-point-weighing.ts';

/** The sheets of lifting: weighing, slings. */
export const liftingEntries: readonly SheetEntry[] = [
  sheetEntry(twoPointWeighingSheet, twoPointWeighingCases, twoPointWeighingText),
  sheetEntry(slingLegSheet, slingLegCases, slingLegText),
  sheetEntry(offCentreSlingSheet, offCentreSlingCases, offCentreSlingText),
];
