/** The rules as a further opinion: a model for SPIN and its claims. */
export { CLAIMS, type Claim } from './claims.ts';
export { CAPACITOR_CHECK, promela, SAYS } from './model.ts';
