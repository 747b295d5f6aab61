import fc from "fast-check";

/**
 * One seed for every property test, so that a run can be repeated to the letter. `SEED=7 npm run test:fast` tries others.
 */
const GIVEN = Number(process.env.SEED ?? "20261124");

fc.configureGlobal({ seed: GIVEN });
