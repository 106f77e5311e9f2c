import type { Sheet } from '../../sheets/frame.ts';
import { floorSheets } from '../words/all-words.ts';

const byId = new Map(floorSheets.map(({ sheet }) => [sheet.id, sheet]));

/** A sheet that a figure of a floor opens, by its name. */
export const sheetById = (id: string): Sheet | undefined => byId.get(id);
