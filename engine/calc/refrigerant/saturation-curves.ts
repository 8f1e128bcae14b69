/**
 * Saturation curves: figures only.
 *
 * Six fluids by the ancillary equations of CoolProp (open source, MIT; commit ea27c639): p = pRed·exp(Tr/T·Σ n·θ^t),
 * θ = 1 − T/Tr, T in K, p in kPa absolute. R-410A and R-404A are the pseudo-pure bubble and dew lines of Lemmon,
 * Int. J. Thermophysics 24(4), 2003. R-454B has no such equation: points from a flash over CoolProp's data, every 10 °F.
 */
import type { Refrigerant } from './refrigerants.ts';

/** Bubble: the first vapour, for subcooling. Dew: the last liquid, for superheat. A pure fluid has one curve for both. */
export type Curve = 'bubble' | 'dew';

export interface Equation {
  readonly kind: 'equation';
  readonly reducingKelvin: number;
  readonly reducingKilopascals: number;
  /** n and t of each term. */
  readonly terms: readonly (readonly [n: number, t: number])[];
}
export interface Points {
  readonly kind: 'points';
  /** kPa absolute from −40 °F on, every 10 °F. */
  readonly kilopascals: readonly number[];
}
interface Fluid {
  readonly curves: Readonly<Record<Curve, Equation | Points>>;
  /** How far a pressure may be off, in %. */
  readonly accuracyPercent: string;
}

const equation = (
  reducingKelvin: number,
  reducingKilopascals: number,
  ...terms: [n: number, t: number][]
): Equation => ({ kind: 'equation', reducingKelvin, reducingKilopascals, terms });
const pure = (curve: Equation, accuracyPercent: string): Fluid => ({
  curves: { bubble: curve, dew: curve },
  accuracyPercent,
});

export const FLUIDS: Readonly<Record<Refrigerant, Fluid>> = {
  'R-22': pure(
    equation(
      369.295,
      4990,
      [-7.2670371701641265, 0.999],
      [1.2860929616388512, 1.272],
      [-0.10790119794275199, 1.692],
      [-0.989473291657183, 2.74],
      [-2.9393096353041623, 4.539],
      [0.488431917326884, 15.876],
    ),
    '0.019',
  ),
  'R-32': pure(
    equation(
      351.255,
      5782,
      [0.019194334673139708, 0.531],
      [-6.794802163795212, 0.979],
      [9.276391392786632, 2.203],
      [-12.327153852761946, 2.382],
      [28.46579606476374, 3.421],
      [-28.570870718190093, 3.558],
    ),
    '0.011',
  ),
  'R-134a': pure(
    equation(
      374.21,
      4059.28,
      [0.4331478287291047, 0.845],
      [-9.090302559074352, 0.99],
      [2.1476074125217703, 1.14],
      [-1.557687007603464, 2.651],
      [-3.5020328972698604, 4.507],
      [14.958442337201044, 17.235],
    ),
    '0.0092',
  ),
  'R-290': pure(
    equation(
      369.89,
      4251.2,
      [-23.998635747391152, 1.05],
      [18.313017605233238, 1.084],
      [-0.42240851966839504, 2.259],
      [-2.7378298813798962, 4.287],
      [0.257888414168987, 7.66],
      [-1.3113462226130785, 18.584],
    ),
    '0.016',
  ),
  'R-410A': {
    curves: {
      bubble: equation(344.494, 4901.2, [-7.2818, 1], [2.5093, 1.8], [-3.2695, 2.4], [-2.8022, 4.9]),
      dew: equation(344.494, 4901.2, [-7.4411, 1], [1.9883, 1.6], [-2.4925, 2.4], [-3.2633, 5]),
    },
    // A maker's service table differs by up to 1.2 %.
    accuracyPercent: '1.5',
  },
  'R-404A': {
    curves: {
      bubble: equation(345.27, 3734.8, [0.061067, 0.54], [-6.5646, 0.965], [-3.6162, 3.7], [-3.9771, 9]),
      dew: equation(345.27, 3734.8, [-0.00026863, 0.1], [-6.5757, 0.972], [-4.1802, 3.8], [-7.9102, 9]),
    },
    // Our setting: a public table that names REFPROP agrees within 0.1 psi.
    accuracyPercent: '0.5',
  },
  'R-454B': {
    curves: {
      bubble: {
        kind: 'points',
        kilopascals: [
          169.0, 215.73, 271.96, 338.92, 417.89, 510.23, 617.34, 740.67, 881.73, 1042.1, 1223.38, 1427.25, 1655.47,
          1909.86, 2192.32, 2504.87, 2849.68, 3229.05, 3645.58, 4102.15,
        ],
      },
      dew: {
        kind: 'points',
        kilopascals: [
          159.63, 204.13, 257.74, 321.67, 397.17, 485.58, 588.28, 706.71, 842.41, 996.95, 1172.0, 1369.31, 1590.73,
          1838.23, 2113.93, 2420.16, 2759.49, 3134.87, 3549.84, 4008.96,
        ],
      },
    },
    accuracyPercent: '1.5',
  },
};
