import type { Page } from 'playwright-core';

/** Colours hang on the scheme alone and places on the width alone: two of the four pairs see each once. */
const readers = [
  { name: '1280x800, light', colorScheme: 'light', viewport: { width: 1280, height: 800 } },
  { name: '820x1180, dark', colorScheme: 'dark', viewport: { width: 820, height: 1180 } },
] as const;

/** Looks at one page as each reader has it; to load it anew for each would take most of the time. */
export const asEachReader = async (
  page: Page,
  look: (reader: string, turn: number) => Promise<void>,
): Promise<void> => {
  for (const [turn, { name, colorScheme, viewport }] of readers.entries()) {
    await page.emulateMedia({ colorScheme });
    await page.setViewportSize(viewport);
    // what measures itself is drawn anew after the next frame
    await page.evaluate(
      () =>
        new Promise<void>((done) => {
          requestAnimationFrame(() => requestAnimationFrame(() => setTimeout(done, 100)));
        }),
    );
    await look(name, turn);
  }
};
