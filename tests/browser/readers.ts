/** Colours hang on the scheme alone and places on the width alone: two of the four pairs see each once. */
export const readers = [
  { name: '1280x800, light', colorScheme: 'light', viewport: { width: 1280, height: 800 } },
  { name: '820x1180, dark', colorScheme: 'dark', viewport: { width: 820, height: 1180 } },
] as const;
