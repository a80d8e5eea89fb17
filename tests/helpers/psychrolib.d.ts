declare module 'psychrolib' {
  const psychrolib: {
    readonly SI: number;
    SetUnitSystem(system: number): void;
    GetHumRatioFromRelHum(dryBulb: number, relativeHumidity: number, pressure: number): number;
    GetTWetBulbFromHumRatio(dryBulb: number, humidityRatio: number, pressure: number): number;
  };
  export default psychrolib;
}
