/** Papers that are filled in by people of two languages: their words can be supplied. */
export const worded = ['protocol', 'preparation', 'schedule'] as const;
export type WordedPaper = (typeof worded)[number];
