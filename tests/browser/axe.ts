import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Page } from 'playwright-core';

const source = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

interface Axe {
  readonly run: (
    within: string | Document,
    options: { resultTypes: readonly string[]; preload: boolean },
  ) => Promise<{ violations: readonly { id: string; nodes: readonly { html: string }[] }[] }>;
}

/**
 * What axe finds on the whole page, or within what has changed on it since.
 *
 * It runs in the page itself and tells its findings alone: with all that it passes carried over to another page, as
 * its own bridge does, one look took three times as long.
 */
export const faults = async (page: Page, within?: string): Promise<readonly string[]> => {
  if (!(await page.evaluate(() => 'axe' in window))) await page.evaluate(source);
  return page.evaluate(async (selector) => {
    const { axe } = window as unknown as { axe: Axe };
    const { violations } = await axe.run(selector ?? document, {
      resultTypes: ['violations'],
      // style sheets and sounds are fetched for two rules that look at nothing that a page here has
      preload: false,
    });
    return violations.map(
      ({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 160)).join(' | ')}`,
    );
  }, within);
};
