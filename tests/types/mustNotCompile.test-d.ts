/**
 * What the type checker must refuse before a program runs, over all modules. Each wrong line stands beside the same call
 * made right, so that it is refused for its one mistake and not for a name that has changed.
 */
import { assertType, describe, expectTypeOf, test } from 'vitest';
import { acidClass, diluteVinegar } from '../../src/acid/index';
import { dryingCurveChart, isothermChart } from '../../src/charts/index';
import { driedMass, stopWeight, trayLoad, wetBasis } from '../../src/drying/index';
import { StillroomError } from '../../src/errors/index';
import { freezerLoad, freezingTime } from '../../src/freezing/index';
import { energyCost, energyNeeded, iceVapourPressure } from '../../src/heat/index';
import { checkHeadspace, describeJar, fillJar, jarsFor } from '../../src/jars/index';
import { lethality } from '../../src/lethality/index';
import { type PlanDayInput, planDay } from '../../src/plan/index';
import { elevationMinutes, loadTimeline, testedProcess } from '../../src/process/index';
import { convert, type MassInput, type MoneyInput, type Range, type VolumeInput } from '../../src/quantity/index';
import { batchRecord, netWeightCheck, recordRules } from '../../src/record/index';
import { runSheet } from '../../src/sheet/index';
import { refractiveIndex, sucroseDensity, syrupBoilingTemperature } from '../../src/solution/index';
import { type Basis, type Caution, sources } from '../../src/sources/index';
import { airPressure, boilingTemperature, steamTemperature } from '../../src/steam/index';
import { concentrate, gelTemperature, jamBalance, sweeten, syrup } from '../../src/sugar/index';
import { growthAt, isothermActivity, isothermMoisture, solutionWaterActivity } from '../../src/water-activity/index';

const batch = { food: 'peach', jar: 'pint', method: 'boiling-water', elevation: '1200 ft' } as const;
const fill = { jar: 'pint', headspace: '1/2 in' } as const;
const slab = {
  shape: 'slab',
  density: '1 g/mL',
  latentHeat: 250,
  conductivity: 1.5,
  surfaceCoefficient: 20,
  freezingPoint: '-1 degC',
  medium: '-30 degC',
  thickness: '2 in',
} as const;
const priced = { energy: '1 kWh', energyPrice: { soldBy: 'kWh', price: '0.31 USD' } } as const;

describe('quantity', () => {
  test('right', () => {
    assertType<MassInput>('62 lb');
    assertType<VolumeInput>({ value: 2, unit: 'cups' });
    assertType<MoneyInput>('24.50 USD');
    convert('1 cup', 'mL');
    assertType<Range<number>>({ low: 1, likely: 2, high: 3 });
  });
  test('wrong', () => {
    // @ts-expect-error a mass where a volume belongs
    assertType<VolumeInput>('62 lb');
    // @ts-expect-error a number has no unit
    assertType<MassInput>(62);
    // @ts-expect-error text without a unit
    assertType<MassInput>('62');
    // @ts-expect-error no such unit
    assertType<VolumeInput>('2 pottles');
    // @ts-expect-error no such unit in an object either
    assertType<VolumeInput>({ value: 2, unit: 'pottles' });
    // @ts-expect-error money has a currency
    assertType<MoneyInput>(24.5);
    // @ts-expect-error a sign is no currency code
    assertType<MoneyInput>('$24.50');
    // @ts-expect-error a volume is not converted to a mass
    convert('1 cup', 'lb');
    // @ts-expect-error a range has both ends
    assertType<Range<number>>({ likely: 2 });
  });
});

describe('process', () => {
  test('right', () => {
    testedProcess(batch);
    loadTimeline({ ...batch, jars: 7, waterVolume: '12 quarts', burnerPower: '2400 W' });
    elevationMinutes({ baseMinutes: 20, rule: 'per-1000-ft', elevation: '1200 ft', citation: 'p. 1' });
    const answer = testedProcess(batch);
    if (answer.tested) expectTypeOf(answer.minutes).toEqualTypeOf<number>();
  });
  test('wrong', () => {
    // @ts-expect-error minutes are there only once `tested` is known
    testedProcess(batch).minutes;
    // @ts-expect-error a served process gives no reason against it
    if (testedProcess(batch).tested) testedProcess(batch).reason;
    // @ts-expect-error no such method
    testedProcess({ ...batch, method: 'oven' });
    // @ts-expect-error an elevation is never assumed
    testedProcess({ food: 'peach', jar: 'pint', method: 'boiling-water' });
    // @ts-expect-error an elevation has a unit
    testedProcess({ ...batch, elevation: 1200 });
    // @ts-expect-error jars are counted
    loadTimeline({ ...batch, jars: '7', waterVolume: '12 quarts', burnerPower: '2400 W' });
    // @ts-expect-error no such rule
    elevationMinutes({ baseMinutes: 20, rule: 'by feel', elevation: '1200 ft', citation: 'p. 1' });
    // @ts-expect-error a time that is adjusted names where it is printed
    elevationMinutes({ baseMinutes: 20, rule: 'per-1000-ft', elevation: '1200 ft' });
  });
});

describe('jars', () => {
  test('right', () => {
    fillJar(fill);
    fillJar({ ...fill, jar: { brimful: '530 mL', opening: '60 mm' } });
    fillJar({ ...fill, jar: { brimful: '530 mL', mouth: 'wide' } });
    jarsFor({ ...fill, volume: '3 quarts' });
    checkHeadspace({ food: 'peach', measured: '1/2 in', when: 'before processing' });
    describeJar({ water: '470 g', temperature: '20 degC' });
  });
  test('wrong', () => {
    // @ts-expect-error an opening is a length
    fillJar({ ...fill, jar: { brimful: '530 mL', opening: '60 mL' } });
    // @ts-expect-error a headspace is never assumed
    fillJar({ jar: { brimful: '530 mL', opening: '60 mm' } });
    // @ts-expect-error a measured jar has its opening, or says that its mouth is a usual one
    fillJar({ ...fill, jar: { brimful: '530 mL' } });
    // @ts-expect-error what a jar holds is a volume
    fillJar({ ...fill, jar: { brimful: '530 g', opening: '60 mm' } });
    // @ts-expect-error a headspace is a length
    fillJar({ ...fill, headspace: '1 tbsp' });
    // @ts-expect-error jars are filled from a volume
    jarsFor({ ...fill, volume: '3 lb' });
    // @ts-expect-error no such moment
    checkHeadspace({ food: 'peach', measured: '1/2 in', when: 'some time' });
    // @ts-expect-error the water is weighed
    describeJar({ water: '1 pint', temperature: '20 degC' });
  });
});

describe('acid, sugar, solution', () => {
  test('right', () => {
    acidClass({ pH: 4.2 });
    diluteVinegar({ vinegar: '2 cups', acetic: '5 %' });
    diluteVinegar({ vinegar: '1 L', acetic: 0.07 });
    syrup({ brix: 30, volume: '1 L' });
    sweeten({ mass: '2 kg', brix: 10, targetBrix: 20 });
    concentrate({ mass: '2 kg', solids: '10 %', targetSolids: 0.3 });
    jamBalance({ ready: '4 kg', solids: 0.1, sugarToFruit: 1, finishSolids: 0.65 });
    gelTemperature({ elevation: '300 m' });
    sucroseDensity({ brix: 20, temperature: '20 degC' });
    refractiveIndex({ brix: 20, temperature: '20 degC' });
    syrupBoilingTemperature({ brix: 65 });
  });
  test('wrong', () => {
    // @ts-expect-error a pH is a number
    acidClass({ pH: '4.2' });
    // @ts-expect-error vinegar is measured by volume
    diluteVinegar({ vinegar: '2 lb', acetic: '5 %' });
    // @ts-expect-error a share is a number or percent
    diluteVinegar({ vinegar: '1 L', acetic: '7 cups' });
    // @ts-expect-error degrees Brix are a number
    syrup({ brix: '30 %', volume: '1 L' });
    // @ts-expect-error one of `brix` and `strength`, not both
    syrup({ brix: 30, strength: 'light', volume: '1 L' });
    // @ts-expect-error no such field
    sweeten({ mass: '2 kg', brix: 10, targetBrixx: 20 });
    // @ts-expect-error a jam balance has its fruit, its jam or its jars
    jamBalance({ solids: 0.1, sugarToFruit: 1, finishSolids: 0.65 });
    // @ts-expect-error and only one of them
    jamBalance({ ready: '4 kg', jars: 12, solids: 0.1, sugarToFruit: 1, finishSolids: 0.65 });
    // @ts-expect-error a mass is weighed
    concentrate({ mass: '2 quarts', solids: '10 %', targetSolids: 0.3 });
    // @ts-expect-error a temperature is no elevation
    gelTemperature({ elevation: '300 degC' });
    // @ts-expect-error a temperature has a unit
    sucroseDensity({ brix: 20, temperature: 20 });
    // @ts-expect-error a density is of one temperature, never assumed
    sucroseDensity({ brix: 20 });
    // @ts-expect-error so is a refractive index
    refractiveIndex({ brix: 20 });
    // @ts-expect-error a mass is no temperature
    refractiveIndex({ brix: 20, temperature: '20 g' });
    // @ts-expect-error a length is no number of degrees
    syrupBoilingTemperature({ brix: '65 mm' });
  });
});

describe('drying, water activity, freezing, lethality', () => {
  test('right', () => {
    driedMass({ fresh: '5 lb', moisture: '85 %', targetMoisture: 0.2 });
    wetBasis({ moisture: 0.25 });
    stopWeight({ fresh: '5 lb', moisture: 0.85, targetMoisture: 0.2 });
    trayLoad({ area: '1 ft2' });
    solutionWaterActivity({ water: '1 kg', solutes: [{ solute: 'sucrose', mass: '1 kg' }] });
    growthAt({ waterActivity: 0.9 });
    isothermMoisture({ food: 'apple', waterActivity: 0.5 });
    isothermActivity({ food: 'apple', moisture: 0.15 });
    freezerLoad({ freezerVolume: '15 ft3' });
    freezingTime(slab);
    lethality({ log: [{ time: '0 min', temperature: '90 degC' }], reference: '93.3 degC', z: '8.9 degC' });
  });
  test('wrong', () => {
    // @ts-expect-error the food is weighed
    driedMass({ fresh: '5 cups', moisture: '85 %', targetMoisture: 0.2 });
    // @ts-expect-error a moisture is a share
    wetBasis({ moisture: '25 g' });
    // @ts-expect-error the moisture to stop at is not assumed
    stopWeight({ fresh: '5 lb', moisture: 0.85 });
    // @ts-expect-error an area is no length
    trayLoad({ area: '1 ft' });
    // @ts-expect-error water is weighed
    solutionWaterActivity({ water: 1, solutes: [{ solute: 'sucrose', mass: '1 kg' }] });
    // @ts-expect-error a water activity is a number
    growthAt({ waterActivity: true });
    // @ts-expect-error a water activity is never assumed
    isothermMoisture({ food: 'apple' });
    // @ts-expect-error nor a moisture
    isothermActivity({ food: 'apple' });
    // @ts-expect-error an isotherm is that of a food, or of constants
    isothermMoisture({ waterActivity: 0.5 });
    // @ts-expect-error here too
    isothermActivity({ moisture: 0.15 });
    // @ts-expect-error a freezer holds a volume
    freezerLoad({ freezerVolume: '15 lb' });
    // @ts-expect-error no such shape
    freezingTime({ ...slab, shape: 'pear' });
    // @ts-expect-error a record of temperatures is a list
    lethality({ log: { time: '0 min', temperature: '90 degC' }, reference: '93.3 degC', z: '8.9 degC' });
  });
});

describe('steam, heat', () => {
  test('right', () => {
    airPressure({ elevation: '3,400 ft' });
    boilingTemperature({ elevation: '300 m' });
    steamTemperature({ gauge: '11 psi', elevation: '2000 ft' });
    energyNeeded({ machine: { power: '600 W', time: '8 h' } });
    energyNeeded({ cooking: { boilOff: '2 kg' } });
    energyNeeded({ cooking: { heatUp: { mass: '2 kg', startTemperature: '10 degC', targetTemperature: '90 degC' } } });
    energyCost(priced);
    iceVapourPressure({ temperature: '-20 degC' });
  });
  test('wrong', () => {
    // @ts-expect-error a pressure is no elevation
    airPressure({ elevation: '14.7 psi' });
    // @ts-expect-error a mass is no pressure
    steamTemperature({ gauge: '11 lb', elevation: '2000 ft' });
    // @ts-expect-error the elevation is never assumed
    steamTemperature({ gauge: '11 psi' });
    // @ts-expect-error an energy is no power
    energyNeeded({ machine: { power: '600 kWh', time: '8 h' } });
    // @ts-expect-error a length where a mass or a volume belongs
    energyNeeded({ cooking: { boilOff: '2 ft' } });
    // @ts-expect-error a temperature has a unit
    energyNeeded({ cooking: { heatUp: { mass: '2 kg', startTemperature: 10 } } });
    // @ts-expect-error a price has a currency
    energyCost({ ...priced, energyPrice: { soldBy: 'kWh', price: 0.31 } });
    // @ts-expect-error a pressure is no temperature
    iceVapourPressure({ temperature: '10 Pa' });
  });
});

declare const kitchen: PlanDayInput['kitchen'];
declare const day: PlanDayInput;
declare const basis: Basis;
declare const caution: Caution;

describe('plan, record, sheet, charts, sources, errors', () => {
  const label = { labeled: '18 oz', contents: ['18.2 oz'], market: 'US' } as const;
  test('right', () => {
    assertType<PlanDayInput['kitchen']>({ ...kitchen, elevation: '300 m', hours: '6 h' });
    const plan = planDay(day);
    if (plan.feasible) runSheet(plan);
    recordRules({ made: '2026-08-14' });
    netWeightCheck(label);
    dryingCurveChart({ weighings: [{ time: '0 h', mass: '1000 g' }], stopWeight: '188 g', model: 'lewis' });
    isothermChart({ food: 'kiwifruit', temperature: '30 degC' });
    sources({ ids: ['usda-cghc-2015'] });
  });
  test('wrong', () => {
    // @ts-expect-error a kitchen has hours, not pounds
    assertType<PlanDayInput['kitchen']>({ ...kitchen, hours: '6 lb' });
    // @ts-expect-error a day that may not be possible has no products yet
    planDay(day).products;
    // @ts-expect-error a run sheet needs a plan
    runSheet({ feasible: true });
    // @ts-expect-error a date is text
    recordRules({ made: new Date(0) });
    // @ts-expect-error what a label says is a mass or a volume
    netWeightCheck({ ...label, labeled: '18 in' });
    // @ts-expect-error a record has a day, a name and lots
    batchRecord({ lotCode: 'A1' });
    // @ts-expect-error no such model
    dryingCurveChart({ weighings: [{ time: '0 h', mass: '1000 g' }], stopWeight: '188 g', model: 'by eye' });
    // @ts-expect-error a length is no temperature
    isothermChart({ food: 'kiwifruit', temperature: '30 mm' });
    // @ts-expect-error a source goes by its id
    sources({ ids: [2015] });
    // @ts-expect-error an answer is not written to
    basis.of = 'minutes';
    // @ts-expect-error no such severity
    assertType<Caution>({ ...caution, severity: 'mild' });
    // @ts-expect-error no such error code
    new StillroomError({ code: 'OOPS', path: '', given: '', expected: '' });
  });
});
