/** Steps of a place in the book: keys, and places in lists as numbers written out. */
export type Steps = readonly string[];

/**
 * The steps of a JSON Pointer (RFC 6901). A pointer without its leading slash is taken as if it had one.
 */
export const stepsOf = (path: string): Steps => {
  if (path === '' || path === '/') return [];
  const from = path.startsWith('/') ? 1 : 0;
  const steps = path.slice(from).split('/');
  return path.includes('~') ? steps.map((step) => step.replaceAll('~1', '/').replaceAll('~0', '~')) : steps;
};

/** The JSON Pointer of steps. */
export const pointerOf = (steps: readonly (string | number)[]): string =>
  steps.map((step) => `/${String(step).replaceAll('~', '~0').replaceAll('/', '~1')}`).join('');

/** A place in a list, or nothing where the step is none. */
export const placeInList = (step: string): number | undefined =>
  /^(0|[1-9][0-9]{0,8})$/.test(step) ? Number(step) : undefined;
