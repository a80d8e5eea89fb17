import fc from 'fast-check';

/**
 * Properties are tried on the same cases every time, so that a run can be made again; `PROPERTY_SEED=7 npm test`
 * tries others.
 */
fc.configureGlobal({ seed: Number(process.env.PROPERTY_SEED ?? 1) });
