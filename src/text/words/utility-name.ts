import type { Parts } from '../message.ts';

type Say = (key: string, parts?: Parts) => string;

/** A question or a figure of a utility by name, with the thing that it is about: `load of the motor, wash pump`. */
export const utilityName = (say: Say, key: string, of?: string): string =>
  of === undefined ? say(key) : say('utility.of', { name: say(key), of });
