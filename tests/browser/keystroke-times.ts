import type { Page } from 'playwright-core';

/**
 * Milliseconds from a key in a field to the frame that shows what follows from it.
 * Each key makes another value, so that nothing can be shown from memory.
 */
export const keystrokeTimes = (page: Page, path: string, keys: number): Promise<readonly number[]> =>
  page.evaluate(
    async ({ path, keys }) => {
      const input = document.querySelector<HTMLInputElement>(`.part input[data-path="${path}"]`);
      const write = Object.getOwnPropertyDescriptor(HTMLInputElement.prototype, 'value')?.set;
      if (input === null || write === undefined) throw new Error('no such field');
      const painted = () =>
        new Promise<void>((resolve) => {
          requestAnimationFrame(() => {
            // a message comes after the frame that was asked for
            const { port1, port2 } = new MessageChannel();
            port1.onmessage = () => resolve();
            port2.postMessage(undefined);
          });
        });
      input.focus();
      const times: number[] = [];
      for (let i = 0; i < keys; i += 1) {
        await painted();
        const rate = document.querySelector('button.rate')?.textContent;
        const from = performance.now();
        write.call(input, `${26 + i * 0.37} mm`);
        input.dispatchEvent(new Event('input', { bubbles: true }));
        await painted();
        times.push(performance.now() - from);
        if (document.querySelector('button.rate')?.textContent === rate && i < keys / 2) {
          throw new Error('the figure did not follow');
        }
      }
      return times;
    },
    { path, keys },
  );

/** The value under which a share of the values lies. */
export const percentile = (values: readonly number[], share: number): number =>
  [...values].sort((a, b) => a - b)[Math.ceil(values.length * share) - 1] ?? Number.NaN;
