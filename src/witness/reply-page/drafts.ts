const fieldsOf = (page: Document): readonly HTMLTextAreaElement[] => [
  ...page.querySelectorAll<HTMLTextAreaElement>('textarea[data-check]'),
];

/** Some browsers keep nothing for a page out of a file, and say so by throwing. */
const storeOf = (): Storage | undefined => {
  try {
    return window.sessionStorage;
  } catch {
    return undefined;
  }
};

/** Comments outlive a reload of the page; they are gone with its window. */
export const keepDrafts = (page: Document, file: string): void => {
  const store = storeOf();
  const name = `twinfloor-comments/${file}`;
  const fields = fieldsOf(page);
  try {
    const kept = JSON.parse(store?.getItem(name) ?? '[]') as readonly string[];
    for (const [i, field] of fields.entries()) field.value = kept[i] ?? '';
  } catch {
    // what can't be read is no draft
  }
  page.addEventListener('input', () => {
    try {
      store?.setItem(name, JSON.stringify(fields.map(({ value }) => value)));
    } catch {
      // full: the page itself still has them
    }
  });
};
