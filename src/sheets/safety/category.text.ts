/** Words that the sheets of categories share, in English. */
export const categoryOptions = {
  category: { B: 'B', '1': '1', '2': '2', '3': '3', '4': '4' },
  level: { a: 'a', b: 'b', c: 'c', d: 'd', e: 'e' },
} as const;

export const categoryProblemWords = {
  CATEGORY_COVERAGE: '{path}: category {category} asks more diagnostic coverage. Allowed: {allowed}.',
  CATEGORY_LIFETIME:
    '{path}: category {category} asks a longer mean time to a dangerous failure. Allowed: {allowed}.',
} as const;

export const categoryNotes = {
  CATEGORY_COVERAGE_AS_MEDIUM: 'In categories 2 and 3 more than medium coverage counts as medium.',
  CATEGORY_COVERAGE_NOT_COUNTED: 'In categories B and 1 diagnostic coverage counts nothing.',
} as const;
