/** The library has no types of its own. Only what is used here; every figure in the units that were set. */
declare module 'psychrolib' {
  class Psychrometrics {
    readonly IP: 1;
    readonly SI: 2;
    SetUnitSystem(system: 1 | 2): void;
    GetHumRatioFromTWetBulb(dryBulb: number, wetBulb: number, pressure: number): number;
    GetHumRatioFromRelHum(dryBulb: number, share: number, pressure: number): number;
    GetRelHumFromHumRatio(dryBulb: number, ratio: number, pressure: number): number;
    GetTWetBulbFromHumRatio(dryBulb: number, ratio: number, pressure: number): number;
    GetTDewPointFromHumRatio(dryBulb: number, ratio: number, pressure: number): number;
    GetMoistAirEnthalpy(dryBulb: number, ratio: number): number;
    GetTDryBulbFromEnthalpyAndHumRatio(enthalpy: number, ratio: number): number;
    GetSatVapPres(dryBulb: number): number;
    GetSatAirEnthalpy(dryBulb: number, pressure: number): number;
    GetDryAirEnthalpy(dryBulb: number): number;
    GetDryAirVolume(dryBulb: number, pressure: number): number;
    GetStandardAtmPressure(altitude: number): number;
  }
  /** One instance that everybody who imports it shares, its unit system too. */
  const shared: Psychrometrics;
  export default shared;
}
