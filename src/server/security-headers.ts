import type { FastifyHelmetOptions } from '@fastify/helmet';

/**
 * What the pages may do: load from this server and nothing else, run no script and no style written into a
 * page, stand in no frame. Styles that code sets on elements are allowed by the policy without an exception.
 */
export const securityHeaders: FastifyHelmetOptions = {
  contentSecurityPolicy: {
    useDefaults: false,
    directives: {
      defaultSrc: ["'self'"],
      scriptSrc: ["'self'"],
      styleSrc: ["'self'"],
      // a picture that the server does not have yet is shown out of the page's own storage
      imgSrc: ["'self'", 'blob:'],
      mediaSrc: ["'self'", 'blob:'],
      fontSrc: ["'self'"],
      connectSrc: ["'self'"],
      workerSrc: ["'self'"],
      manifestSrc: ["'self'"],
      objectSrc: ["'none'"],
      baseUri: ["'none'"],
      formAction: ["'self'"],
      frameAncestors: ["'none'"],
    },
  },
  // plain http on the loopback address: a promise of https would lock the person out
  strictTransportSecurity: false,
  referrerPolicy: { policy: 'no-referrer' },
  xFrameOptions: { action: 'deny' },
};
