import { type SheetEntry, sheetEntry } from '../sheet-entry.ts';
import { cornerWeighingCases } from './corner-weighing.cases.ts';
import { cornerWeighingText } from './corner-weighing.text.ts';
import { cornerWeighingSheet } from './corner-weighing.ts';
import { offCentreSlingCases } from './off-centre-sling.cases.ts';
import { offCentreSlingText } from './off-centre-sling.text.ts';
import { offCentreSlingSheet } from './off-centre-sling.ts';
import { slingLegCases } from './sling-leg.cases.ts';
import { slingLegText } from './sling-leg.text.ts';
import { slingLegSheet } from './sling-leg.ts';
import { slingPlanCases } from './sling-plan.cases.ts';
import { slingPlanText } from './sling-plan.text.ts';
import { slingPlanSheet } from './sling-plan.ts';
import { twoPointWeighingCases } from './two-point-weighing.cases.ts';
import { twoPointWeighingText } from './two-point-weighing.text.ts';
import { twoPointWeighingSheet } from './two-point-weighing.ts';

/** The sheets of lifting: weighing, slings. */
export const liftingEntries: readonly SheetEntry[] = [
  sheetEntry(twoPointWeighingSheet, twoPointWeighingCases, twoPointWeighingText),
  sheetEntry(cornerWeighingSheet, cornerWeighingCases, cornerWeighingText),
  sheetEntry(slingLegSheet, slingLegCases, slingLegText),
  sheetEntry(offCentreSlingSheet, offCentreSlingCases, offCentreSlingText),
  sheetEntry(slingPlanSheet, slingPlanCases, slingPlanText),
];
