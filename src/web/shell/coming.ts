import type { ComponentType } from 'react';
import { untilFetched } from './until-fetched.ts';

/** A part of the page whose code comes when it is wanted. */
export interface Coming<P> {
  /** The part, once it has come. */
  readonly here: () => ComponentType<P> | undefined;
  /** Asks for it, also ahead of its being shown; it is fetched once. */
  readonly ask: () => Promise<unknown>;
}

/** A part that is fetched when somebody asks for it; what failed is fetched again for who asks again. */
export const coming = <P extends object>(fetch: () => Promise<ComponentType<P>>): Coming<P> => {
  let here: ComponentType<P> | undefined;
  let asked: Promise<unknown> | undefined;
  return {
    here: () => here,
    ask: () => {
      asked ??= untilFetched(fetch).then(
        (part) => {
          here = part;
        },
        (cause: unknown) => {
          asked = undefined;
          throw cause;
        },
      );
      return asked;
    },
  };
};

/** A part that comes with whoever asks for it. */
export const alreadyHere = <P extends object>(part: ComponentType<P>): Coming<P> => ({
  here: () => part,
  ask: () => Promise.resolve(),
});
