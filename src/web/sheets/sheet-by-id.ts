import type { Sheet } from '../../sheets/frame.ts';
import { registry } from '../../sheets/registry.ts';
import type { SheetEntry } from '../../sheets/sheet-entry.ts';

/** A sheet with its evidence and words, by its name. */
export const sheetEntryById = (id: string): SheetEntry | undefined => registry.get(id);

export const sheetById = (id: string): Sheet | undefined => sheetEntryById(id)?.sheet;
