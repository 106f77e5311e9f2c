import { createContext, useContext } from 'react';
import type { Sheet } from '../../sheets/frame.ts';

/** A sheet by its name; the sheets come with their words, after the first figures. */
export type FindSheet = (id: string) => Sheet | undefined;

export const SheetContext = createContext<FindSheet>(() => undefined);

export const useFindSheet = (): FindSheet => useContext(SheetContext);
