/**
 * Heat carried by moving air, with the trade's factors for standard air (0.075 lb/ft³, sea level).
 * Sources: an insulation maker's and an engineering reference's pages, read: 1.08 = 60 × 0.075 × 0.24,
 * 4.5 = 60 × 0.075, 0.68 for grains, 4840 for lb of water per lb of air.
 */
import { Exact, type Figure } from '../exact.ts';

const SENSIBLE = '1.08';
const TOTAL = '4.5';
const LATENT_PER_GRAIN = '0.68';
const LATENT_PER_POUND = '4840';

/** Btu/h that change the temperature: 1.08 × CFM × °F of difference. */
export const sensibleBtuPerHour = (cfm: Figure, differenceFahrenheit: Figure): Exact =>
  new Exact(cfm).times(differenceFahrenheit).times(SENSIBLE);

/** °F of difference that an airflow shows under a sensible load: the inverse. `cfm` must not be zero. */
export const differenceFahrenheit = (sensibleBtuPerHour: Figure, cfm: Figure): Exact =>
  new Exact(sensibleBtuPerHour).div(new Exact(cfm).times(SENSIBLE));

/** Btu/h in all: 4.5 × CFM × Btu/lb of difference in enthalpy. */
export const totalBtuPerHour = (cfm: Figure, differenceBtuPerPound: Figure): Exact =>
  new Exact(cfm).times(differenceBtuPerPound).times(TOTAL);

/** Btu/lb that an airflow gives up under a total load: the inverse. `cfm` must not be zero. */
export const differenceBtuPerPound = (totalBtuPerHour: Figure, cfm: Figure): Exact =>
  new Exact(totalBtuPerHour).div(new Exact(cfm).times(TOTAL));

/** Btu/h that take water out: 0.68 × CFM × grains per pound of difference. */
export const latentBtuPerHour = (cfm: Figure, differenceGrainsPerPound: Figure): Exact =>
  new Exact(cfm).times(differenceGrainsPerPound).times(LATENT_PER_GRAIN);

/** The same by the humidity ratio, lb of water per lb of dry air: 4840 × CFM × difference. */
export const latentBtuPerHourByRatio = (cfm: Figure, differenceRatio: Figure): Exact =>
  new Exact(cfm).times(differenceRatio).times(LATENT_PER_POUND);
