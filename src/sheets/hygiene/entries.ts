import { type SheetEntry, sheetEntry } from '../sheet-entry.ts';
import { causticRuleCases } from './caustic-rule.cases.ts';
import { causticRuleText } from './caustic-rule.text.ts';
import { causticRuleSheet } from './caustic-rule.ts';
import { sanitisingRuleCases } from './sanitising-rule.cases.ts';
import { sanitisingRuleText } from './sanitising-rule.text.ts';
import { sanitisingRuleSheet } from './sanitising-rule.ts';

/** The sheets of hygiene with their evidence and their words. */
export const hygieneEntries: readonly SheetEntry[] = [
  sheetEntry(sanitisingRuleSheet, sanitisingRuleCases, sanitisingRuleText),
  sheetEntry(causticRuleSheet, causticRuleCases, causticRuleText),
];
