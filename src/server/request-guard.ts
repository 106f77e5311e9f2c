import type { Problem } from '../quantity/problem.ts';
import { hostNameOf, isLoopback } from './host-name.ts';
import { serverProblem } from './problems.ts';

/** What of a request decides whether it may come in. */
export interface Incoming {
  readonly method: string;
  readonly host: string | undefined;
  readonly origin: string | undefined;
  /** `Sec-Fetch-Site`, which a page can't forge. */
  readonly site: string | undefined;
}

/** By what name and scheme a listener may be called. */
export interface Answering {
  readonly scheme: 'http' | 'https';
  /** Whether the names that mean this machine alone are among them. */
  readonly loopback: boolean;
  /** The others. */
  readonly names: ReadonlySet<string>;
}

const reads = new Set(['GET', 'HEAD', 'OPTIONS']);

/**
 * Why a request must not come in, or nothing.
 *
 * Method   the name in Host is this machine or one that the person allowed: a foreign page that has its own
 *          name resolve to this machine (DNS rebinding) is turned away. A write comes from a page of this very
 *          host: Origin is absent (no browser) or equal to it; `null` and other sites are turned away.
 * Symbols  incoming  the request;  answering  names and scheme of the listener
 * Returns  the problem, or undefined
 * Cost     O(1)
 * Source   RFC 9110, 7.2 (Host); RFC 6454, 7 (Origin)
 */
export const requestProblem = (
  incoming: Incoming,
  { scheme, loopback, names }: Answering,
): Problem | undefined => {
  const name = hostNameOf(incoming.host);
  if (name === undefined || !((loopback && isLoopback(name)) || names.has(name))) {
    return serverProblem('SERVER_HOST_FOREIGN', 'Host', {
      given: incoming.host ?? '',
      allowed: [...(loopback ? ['localhost', '127.0.0.1', '[::1]'] : []), ...names],
    });
  }
  if (reads.has(incoming.method)) return undefined;
  const own = `${scheme}://${incoming.host}`;
  const foreign =
    incoming.origin === undefined
      ? (incoming.site ?? 'none') !== 'none' && incoming.site !== 'same-origin'
      : incoming.origin.toLowerCase() !== own.toLowerCase();
  return foreign
    ? serverProblem('SERVER_ORIGIN_FOREIGN', 'Origin', {
        given: incoming.origin ?? incoming.site ?? '',
        allowed: own,
      })
    : undefined;
};
