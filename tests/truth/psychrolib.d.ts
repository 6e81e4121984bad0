/** The parts of the package that the tests ask; it ships no types. RH is a fraction, the rest °C and Pa. */
declare module "psychrolib" {
  const psychrolib: {
    readonly SI: number;
    SetUnitSystem(system: number): void;
    GetSatVapPres(tempC: number): number;
    GetHumRatioFromRelHum(tempC: number, rh: number, pressurePa: number): number;
    GetTDewPointFromRelHum(tempC: number, rh: number): number;
    GetTWetBulbFromRelHum(tempC: number, rh: number, pressurePa: number): number;
    GetRelHumFromTWetBulb(tempC: number, wetBulbC: number, pressurePa: number): number;
    GetMoistAirDensity(tempC: number, ratio: number, pressurePa: number): number;
    GetVaporPressureDeficit(tempC: number, ratio: number, pressurePa: number): number;
    GetStandardAtmPressure(altitudeM: number): number;
    GetMoistAirEnthalpy(tempC: number, ratio: number): number;
  };
  export default psychrolib;
}
