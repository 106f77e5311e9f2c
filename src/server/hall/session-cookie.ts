import type { Way } from './hall-ports.ts';

const month = 30 * 24 * 3600;

/** The prefix binds the cookie to this very host, to encrypted transport and to all of its places. */
const nameOf = (way: Way): string => (way === 'tls' ? '__Host-twinfloor-hall' : 'twinfloor-hall');

/**
 * The cookie of a joined device: no script reads it, and no page of another site makes the browser send it.
 *
 * Source   RFC 6265bis, 4.1.2 (attributes) and 4.1.3 (prefixes)
 */
export const cookieOf = (token: string, way: Way): string =>
  [
    `${nameOf(way)}=${token}`,
    'Path=/',
    `Max-Age=${month}`,
    'HttpOnly',
    'SameSite=Strict',
    ...(way === 'tls' ? ['Secure'] : []),
  ].join('; ');

/** The token that a request brings. Two under one name are none: somebody else may have put one there. */
export const tokenIn = (header: string | undefined, way: Way): string | undefined => {
  const name = nameOf(way);
  const tokens = (header ?? '')
    .split(';')
    .map((part) => part.trim().split('='))
    .filter(([key]) => key === name)
    .map(([, value]) => value ?? '');
  const [token] = tokens;
  return tokens.length === 1 && token !== undefined && /^[\w-]{43}$/.test(token) ? token : undefined;
};
