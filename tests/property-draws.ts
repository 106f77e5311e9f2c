import fc from 'fast-check';

/**
 * Property tests draw the same cases each time, so that a test that fails fails by the change that is being tried. Other
 * draws are tried with `TWINFLOOR_DRAWS=7 npx vitest run`, any number; a failure prints its own.
 */
const usualDraws = 20_260_301;
const { TWINFLOOR_DRAWS } = process.env;

fc.configureGlobal({ seed: TWINFLOOR_DRAWS === undefined ? usualDraws : Number(TWINFLOOR_DRAWS) });
