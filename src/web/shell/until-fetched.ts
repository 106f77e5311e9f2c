/** Milliseconds between two tries while the server does not answer. */
const pause = 2_000;

const serverAnswers = (): Promise<boolean> =>
  fetch('/api/health', { cache: 'no-store' }).then(
    () => true,
    () => false,
  );

/**
 * A part of the page that is fetched when it is wanted. While the server does not answer the page stays as it is and
 * tries again; a part that the server does not have is a fault, as after a change of the program under an open page.
 */
export const untilFetched = async <T>(part: () => Promise<T>): Promise<T> => {
  for (;;) {
    try {
      return await part();
    } catch (cause) {
      // it may have come back just now
      if (await serverAnswers()) return part().catch(() => Promise.reject(cause));
      await new Promise((resolve) => setTimeout(resolve, pause));
    }
  }
};
