import type * as z from 'zod/mini';
import { answer } from '../common/answer';
import { kilowattHours } from '../heat/needed';
import { figure, shareBasis, shareOr, usual } from '../heat/tables';
import { count, fields, optional, power, readInput, share, temperature, volume } from '../quantity/fields';
import { mapRange } from '../quantity/range';
import { valueIn } from '../quantity/scale';
import type { PowerInput, Quantity, Range, ShareInput, TemperatureInput, VolumeInput } from '../quantity/types';
import { type Basis, type Caution, derived } from '../sources/basis';
import { caution } from '../sources/cautions';
import type { NotTested } from '../sources/no';
import { practiceBasis } from '../sources/table';
import { boilingTemperature } from '../steam/boilingTemperature';
import { readJar } from '../words/jar';
import { ruleBasis, ruleFigures } from './canningRules';
import { processCaution } from './cautions';
import { loadBasis, loadRange } from './loadFigures';
import { type TestedProcess, type TestedProcessInput, testedProcess } from './testedProcess';

/** Minutes to put a jar in or lift it out. */
export const MINUTES_A_JAR: Range<number> = /* @__PURE__ */ loadRange('minutes-a-jar');

const schema = /* @__PURE__ */ fields({
  /** Jars in the load, 1 to 100. */
  jars: count('jars in the load', 1, 100),
  /** Water in the canner, up to 200 L. */
  waterVolume: volume({ max: { value: 200, unit: 'L' } }),
  /** The water in the canner before heating, 0 to 100 degC; a tap's when left out. */
  waterTemperature: optional(temperature({ min: { value: 0, unit: 'degC' }, max: { value: 100, unit: 'degC' } })),
  /** The food as it goes in, 0 to 100 degC; as hot as the water the jars are put into when left out. */
  fillTemperature: optional(temperature({ min: { value: 0, unit: 'degC' }, max: { value: 100, unit: 'degC' } })),
  /** Rated power of the burner, 100 W to 100 kW. */
  burnerPower: power({ min: { value: 100, unit: 'W' }, max: { value: 100, unit: 'kW' } }),
  /** Share of it that reaches the pot, 0.05 to 1. */
  efficiency: optional(share({ min: 0.05, max: 1 })),
  /** Share of it that holds the boil or the pressure, above 0 to 1. */
  holdingShare: optional(share({ above: 0 })),
});

export interface LoadTimelineInput extends TestedProcessInput {
  /** Jars in the load, 1 to 100. */
  readonly jars: number;
  /** Water in the canner, up to 200 L. */
  readonly waterVolume: VolumeInput;
  /** The water in the canner before heating; a tap's when left out. A second load starts hot. */
  readonly waterTemperature?: TemperatureInput | undefined;
  /** The food as it goes in; the water the jars are put into when left out. */
  readonly fillTemperature?: TemperatureInput | undefined;
  /** The burner's rated power, 100 W to 100 kW. */
  readonly burnerPower: PowerInput;
  /** Share of it that reaches the pot; 35 to 80 % when left out. */
  readonly efficiency?: ShareInput | undefined;
  /** Share of it that holds the boil or the pressure, above 0 to 100 %; 25 to 70 % (likely 40 %) when left out. */
  readonly holdingShare?: ShareInput | undefined;
}

export interface LoadStep {
  /** What is done. */
  readonly what: string;
  /** How long it takes. */
  readonly minutes: Range<number>;
  /** What the burner does: heats at full power, holds the boil or the pressure, or is off. */
  readonly burner: 'full' | 'holding' | 'off';
  /** Whether the figure is printed, or an estimate. */
  readonly kind: 'published' | 'estimate';
}
export interface LoadTimeline {
  /** The load has a tested process. */
  readonly tested: true;
  /** The process, as `testedProcess` gives it. */
  readonly process: TestedProcess;
  /** The steps in their order. */
  readonly steps: readonly LoadStep[];
  /** From cold water to jars out, minutes. */
  readonly totalMinutes: Range<number>;
  /** What the burner gives off in all, kWh; of gas, the heat of the fuel. */
  readonly energy: Range<Quantity<'energy'>>;
  /** Of the energy, what brings water and jars to the boil or to pressure, kWh. */
  readonly heatingUp: Range<Quantity<'energy'>>;
  /** And what holds them there while jars go in, steam vents and the process runs, kWh. */
  readonly holding: Range<Quantity<'energy'>>;
  /** Where each figure comes from. */
  readonly basis: readonly Basis[];
  /** What to mind, dangers first. */
  readonly cautions: readonly Caution[];
}

const range = (low: number, likely: number, high: number): Range<number> => ({ low, likely, high });
const fixed = (minutes: number): Range<number> => range(minutes, minutes, minutes);
const middle = ({ low, high }: { low: number; high: number }): Range<number> => range(low, (low + high) / 2, high);
const toCelsius = (fahrenheit: number): number => ((fahrenheit - 32) * 5) / 9;

type Burner = LoadStep['burner'];
const printed = (what: string, burner: Burner, rule: string): LoadStep => ({
  what,
  minutes: middle(ruleFigures(rule)),
  burner,
  kind: 'published',
});
const estimate = (what: string, burner: Burner, minutes: Range<number>): LoadStep => ({
  what,
  minutes,
  burner,
  kind: 'estimate',
});

/** Minutes to warm the water for the jars, where it is colder, and from there to the boil or to steady steam. */
function heatingOf(
  load: z.output<typeof schema>,
  { pack }: LoadProcess,
  { jar, elevation }: Pick<TestedProcessInput, 'jar' | 'elevation'>,
): { readonly water?: Range<number>; readonly toBoil: Range<number> } {
  const boils = valueIn(boilingTemperature({ elevation }).temperature, 'degC');
  const preheat = toCelsius(ruleFigures(pack === 'hot' ? 'preheat-hot' : 'preheat-raw').low);
  const start = load.waterTemperature === undefined ? usual('tap').likely : valueIn(load.waterTemperature, 'degC');
  const fill = load.fillTemperature === undefined ? preheat : valueIn(load.fillTemperature, 'degC');
  const jarShare = loadRange('jar-share');
  const kilograms = valueIn(load.waterVolume, 'L'); // a liter of water is a kilogram, near enough for an estimate
  const litersOfJar = valueIn(readJar(jar).volume, 'L') * load.jars;
  // what is in a jar counts as water, which is the upper end for food
  const perKelvin = figure('water-heat').value;
  const jarHeat =
    litersOfJar * (perKelvin + usual('jar-glass').likely * usual('glass-heat').likely) * Math.max(0, boils - fill);
  const kilowatts = valueIn(load.burnerPower, 'kW');
  const share = shareOr(load.efficiency, 'burner-share');
  const minutes = (kilojoules: number, efficiency: number) => kilojoules / (kilowatts * efficiency) / 60;
  const waterHeat = (from: number, to: number) => kilograms * perKelvin * Math.max(0, to - from);
  const first = waterHeat(start, preheat);
  const second = waterHeat(Math.max(start, preheat), boils);
  return {
    ...(first > 0
      ? { water: range(minutes(first, share.high), minutes(first, share.likely), minutes(first, share.low)) }
      : {}),
    toBoil: range(
      minutes(second + jarHeat * jarShare.low, share.high),
      minutes(second + jarHeat * jarShare.likely, share.likely),
      minutes(second + jarHeat * jarShare.high, share.low),
    ),
  };
}

/** The energy of a burner that is full on until the boil or the pressure is there, and then holds it with a share. */
function energyOf(steps: readonly LoadStep[], load: z.output<typeof schema>) {
  const kilowatts = valueIn(load.burnerPower, 'kW');
  const held = shareOr(load.holdingShare, 'holding-share');
  const hours = (burns: Burner, end: keyof Range): number =>
    steps.reduce((sum, { burner, minutes }) => sum + (burner === burns ? minutes[end] / 60 : 0), 0);
  const heatingUp = (end: keyof Range) => kilowatts * hours('full', end);
  const holding = (end: keyof Range) => kilowatts * held[end] * hours('holding', end);
  const ends = (energy: (end: keyof Range) => number): Range<Quantity<'energy'>> => ({
    low: kilowattHours(energy('low')),
    likely: kilowattHours(energy('likely')),
    high: kilowattHours(energy('high')),
  });
  return {
    energy: ends((end) => heatingUp(end) + holding(end)),
    heatingUp: ends(heatingUp),
    holding: ends(holding),
  };
}

/**
 * The timeline and the energy of one canner load: heat the water, load, come back to the boil (or vent and come to pressure),
 * process, cool down and wait, unload. The process is the tested one, never shortened; heating is an estimate.
 *
 * Heat-up = (water mass x 4.186 kJ/(kg K) x rise + share of the jars' heating) / (burner power x efficiency), with the
 * efficiency from 35 to 80 % (likely 55 %) unless given, and none, half or all of the jars' heating done by the boil.
 * Printed steps: 10 min of venting, 3 to 5 min to come to pressure, 30 min (pints) or 45 min (quarts) for a
 * heavy-walled canner to lose its pressure, 10 min with the weight off; 5 min of rest in a boiling-water canner.
 *
 * energy = burner power x (minutes at full power + share x minutes held): it holds the boil at 25 to 70 % of its power
 * (likely 40 %) unless given, and is off while the canner rests, cools and is emptied.
 *
 * Source: USDA Complete Guide to Home Canning, guide 1; PNW 421; PB724. Efficiency, jar mass and handling: common
 * practice, no source.
 *
 * @param input - the question of `testedProcess`, with
 * @returns the steps with their minutes as ranges, the total and the energy in kWh, or the refusal of `testedProcess`
 * @throws StillroomError as `testedProcess`, and OUT_OF_RANGE, MISSING
 *
 * @example
 * ```ts
 * import { loadTimeline } from 'stillroom/process';
 *
 * const load = loadTimeline({
 *   food: 'green beans', pack: 'hot', jar: 'quart', method: 'weighted-gauge', elevation: '800 ft',
 *   jars: 7, waterVolume: '3 quarts', burnerPower: '2400 W',
 * });
 * load.tested && load.steps[1]?.what; // => 'load the jars'
 * load.tested && load.steps[3]?.minutes; // => { low: 10, likely: 10, high: 10 }
 * load.tested && load.energy.likely.value; // ≈ 1.43
 * ```
 */
export function loadTimeline(input: LoadTimelineInput): LoadTimeline | NotTested {
  const { jars, waterVolume, waterTemperature, fillTemperature, burnerPower, efficiency, holdingShare, ...question } = {
    ...input,
  };
  const heating = { waterTemperature, fillTemperature, burnerPower, efficiency, holdingShare };
  const load = readInput(schema, { jars, waterVolume, ...heating });
  const process = testedProcess(question);
  if (!process.tested) return answer(process);
  return answer({ tested: true, process, ...timelineOf(process, question, load) });
}

/** What a load takes of its process, printed in these tables or in the cook's own book. */
export type LoadProcess = Pick<TestedProcess, 'pack' | 'minutes' | 'basis' | 'cautions'> &
  Partial<Pick<TestedProcess, 'pressure' | 'leastHeatUp'>>;

/** The timeline of one load of a process that is at hand already. */
export const loadOf = (
  process: LoadProcess,
  where: Pick<TestedProcessInput, 'jar' | 'elevation'>,
  load: z.input<typeof schema>,
): Omit<LoadTimeline, 'tested' | 'process'> => timelineOf(process, where, readInput(schema, load));

function timelineOf(
  process: LoadProcess,
  question: Pick<TestedProcessInput, 'jar' | 'elevation'>,
  load: z.output<typeof schema>,
): Omit<LoadTimeline, 'tested' | 'process'> {
  const heat = heatingOf(load, process, question);
  const pressure = process.pressure !== undefined;
  const least = process.leastHeatUp ?? 0;
  const handling = mapRange(MINUTES_A_JAR, (minutes) => minutes * load.jars);
  const small = valueIn(readJar(question.jar).volume, 'pint') <= 1;
  const steps: LoadStep[] = [
    ...(heat.water === undefined ? [] : [estimate('heat the water', 'full', heat.water)]),
    estimate('load the jars', 'holding', handling),
    estimate(
      pressure ? 'heat to steady steam' : 'heat to a boil',
      'full',
      mapRange(heat.toBoil, (minutes) => Math.max(least, minutes)),
    ),
    ...(pressure ? [printed('vent', 'holding', 'vent'), printed('come to pressure', 'full', 'pressurize')] : []),
    { what: 'process', minutes: fixed(process.minutes), burner: 'holding', kind: 'published' },
    ...(pressure
      ? [
          printed('lose pressure', 'off', small ? 'depressurize-pints' : 'depressurize-quarts'),
          printed('wait with the weight off', 'off', 'wait-before-opening'),
        ]
      : [printed('rest', 'off', 'rest')]),
    estimate('unload', 'off', handling),
  ];
  const sum = (end: keyof Range<number>) => steps.reduce((total, { minutes }) => total + minutes[end], 0);
  const rules = pressure
    ? ['vent', 'pressurize', small ? 'depressurize-pints' : 'depressurize-quarts', 'wait-before-opening']
    : ['rest'];
  return {
    steps,
    totalMinutes: range(sum('low'), sum('likely'), sum('high')),
    ...energyOf(steps, load),
    basis: [
      ...process.basis.map((line) => ({ ...line, of: `process.${line.of}` })),
      ...rules.map((rule) => ruleBasis(rule, 'steps[].minutes', rule)),
      ...['minutes-a-jar', 'jar-share'].map((figure) => loadBasis(figure, 'steps[].minutes')),
      shareBasis(load.efficiency, 'burner-share', 'steps[].minutes'),
      practiceBasis('steps[].minutes', 'a cold tap, and the glass of a jar'),
      derived('energy', 'the power of the burner, and the minutes of the steps'),
      shareBasis(load.holdingShare, 'holding-share', 'holding'),
    ],
    cautions: [...process.cautions, processCaution('heat-up-varies'), caution('estimate')],
  };
}
