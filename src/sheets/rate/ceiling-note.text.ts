/** What every rate worked out from cycle times must say. */
export const ceilingNote = {
  en: 'A ceiling: no stop, no bottle missing, none rejected.',
} as const;
