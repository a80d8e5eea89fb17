import type * as z from 'zod/mini';
import jerkyTable from '../../../data/drying/jerky.json';
import { answer } from '../../common/answer';
import { choice, fields, length, optional, readInput, temperature, time } from '../../quantity/fields';
import { valueIn } from '../../quantity/scale';
import type { Quantity } from '../../quantity/types';
import { type Basis, type Caution, joinBasis, type Refusal } from '../../sources/basis';
import { asTable, basisOf, type Sourced } from '../../sources/table';
import { caution } from '../cautions';

interface JerkyRow extends Sourced {
  readonly id: string;
  readonly step: string;
  readonly temperature_degF: readonly [least: number, most: number | null] | null;
  readonly atLeast?: Quantity<'time'>;
  readonly thickest_in?: number;
  readonly keeps?: string;
  readonly offered: boolean;
}

const rows = asTable<JerkyRow>(jerkyTable).rows.filter(({ offered }) => offered);
function step(id: string): JerkyRow {
  const found = rows.find((row) => row.id === id);
  if (found === undefined) throw new Error(`no jerky row ${id}`);
  return found;
}

const MEAT = step('inside-meat');
const POULTRY = step('inside-poultry');
const DRYER = step('dryer-after-heating');
const HOT_DRYER = step('dryer-before-oven');
const OVEN = step('oven-after');
const STRIP: Quantity<'length'> = {
  value: Math.min(HOT_DRYER.thickest_in as number, OVEN.thickest_in as number),
  unit: 'in',
};

/** The least and the most that a row prints, in degF; no most where it prints none. */
function printed({ temperature_degF: ends }: JerkyRow): { readonly least: number; readonly most: number } {
  const [least, most] = ends as readonly [number, number | null];
  return { least, most: most ?? Number.POSITIVE_INFINITY };
}

/** Whether a temperature is one that the row prints; none given is not. */
function within(given: Quantity<'temperature'> | undefined, row: JerkyRow): boolean {
  if (given === undefined) return false;
  const [value, { least, most }] = [valueIn(given, 'degF'), printed(row)];
  return value >= least - 1e-9 && value <= most + 1e-9;
}

/** Whether a time is as long as the row asks for. */
const longEnough = (given: Quantity<'time'> | undefined, { atLeast }: JerkyRow): boolean =>
  given !== undefined && atLeast !== undefined && valueIn(given, 'min') >= valueIn(atLeast, 'min') - 1e-9;

const schema = fields({
  meat: choice('the meat', ['meat', 'beef', 'pork', 'lamb', 'venison', 'game', 'poultry', 'chicken', 'turkey', 'duck']),
  heating: optional(choice('when the meat itself is heated', ['before', 'after', 'none'])),
  internalTemperature: optional(temperature({ max: { value: 300, unit: 'degF' } })),
  dryerTemperature: temperature({ max: { value: 300, unit: 'degF' } }),
  dryingTime: optional(time()),
  oven: optional(fields({ temperature: temperature({ max: { value: 600, unit: 'degF' } }), time: time() })),
  thickness: optional(length()),
});
export type JerkyInput = z.input<typeof schema>;

/** A way to make jerky whose heating step is printed. */
export interface JerkySteps {
  readonly tested: true;
  /** What the meat must reach inside before it dries, by a thermometer. */
  readonly internalTemperature?: Quantity<'temperature'>;
  /** Air of the dryer: the least and the most that is printed. */
  readonly dryer: { readonly low: Quantity<'temperature'>; readonly high: Quantity<'temperature'> };
  readonly dryAtLeast?: Quantity<'time'>;
  /** The oven after drying. */
  readonly oven?: { readonly temperature: Quantity<'temperature'>; readonly time: Quantity<'time'> };
  readonly thickestStrip?: Quantity<'length'>;
  readonly keeps: { readonly room: string; readonly refrigerator: string; readonly freezer: string };
  readonly basis: readonly Basis[];
  readonly cautions: readonly Caution[];
}
export type Jerky = JerkySteps | Refusal;

const degF = (value: number): Quantity<'temperature'> => ({ value, unit: 'degF' });

/**
 * Whether a way of making jerky holds the heating step that makes it safe, and the printed steps; refused otherwise.
 *
 * Either the meat reaches 160 degF inside (poultry 165 degF) before it dries at 130 to 140 degF; or strips of 1/4 in
 * or less dry at 145 to 155 degF for at least 6 hours and then stand 10 minutes in an oven at 275 degF (not for
 * poultry). Drying alone is refused at every temperature, a dryer or an oven hotter than printed as well as a cooler
 * one (a hot dryer hardens the outside over a wet middle), and old directions at 120 degF are never offered.
 *
 * @param input.meat - `beef`, `pork`, `lamb`, `venison`, `game`, `meat`; or `poultry`, `chicken`, `turkey`, `duck`
 * @param input.heating - `before` drying, `after` it, or `none`; refused if not given
 * @param input.internalTemperature - what the meat reaches inside before drying; needed with `before`
 * @param input.dryerTemperature - of the dryer's air
 * @param input.dryingTime - needed with `after`
 * @param input.oven - `temperature` and `time` of the oven after drying; needed with `after`
 * @param input.thickness - of the strips; needed with `after`
 * @returns the printed steps with `tested: true`, or a refusal with its reason and what to do instead
 * @throws StillroomError UNKNOWN_NAME, WRONG_DIMENSION
 *
 * @example
 * ```ts
 * import { jerky } from 'stillroom/drying';
 *
 * jerky({ meat: 'beef', dryerTemperature: '140 degF' }).tested; // => false
 * jerky({ meat: 'beef', heating: 'before', internalTemperature: '160 degF', dryerTemperature: '140 degF' }).tested; // => true
 * ```
 */
export function jerky(input: JerkyInput): Jerky {
  const given = readInput(schema, input);
  const { heating = 'none' } = given;
  if (heating === 'before') return answer(heatedBefore(given));
  if (heating === 'after') return answer(heatedAfter(given));
  return answer(
    refusal(given, 'drying without a heating step leaves dangerous bacteria alive in the meat', heatFirst(given)),
  );
}

type Given = z.output<typeof schema>;
const POULTRIES: readonly string[] = ['poultry', 'chicken', 'turkey', 'duck'];
const isPoultry = ({ meat }: Given): boolean => POULTRIES.includes(meat);
const insideOf = (given: Given): JerkyRow => (isPoultry(given) ? POULTRY : MEAT);
const heatFirst = (given: Given): string =>
  `heat the ${isPoultry(given) ? 'poultry' : 'meat'} to ${printed(insideOf(given)).least} degF inside before it dries`;

const cautions = () => [caution('jerky-heat-first'), caution('jerky-keeps-briefly'), caution('follow-local-guidance')];

function refusal(given: Given, reason: string, instead: string): Refusal {
  return {
    tested: false,
    reason,
    instead,
    basis: [
      basisOf(insideOf(given), 'inside temperature before drying'),
      basisOf(DRYER, 'dryer, meat heated before'),
      basisOf(HOT_DRYER, 'dryer, meat heated afterwards'),
      basisOf(OVEN, 'oven after drying'),
    ],
    cautions: cautions(),
  };
}

/** A dryer that is cooler or hotter than the row prints. */
function wrongDryer(given: Given, row: JerkyRow): Refusal {
  const { least, most } = printed(row);
  const reason =
    valueIn(given.dryerTemperature, 'degF') < least
      ? `a dryer below ${least} degF is too slow to dry before the meat spoils`
      : `no row of these tables dries jerky above ${most} degF: the outside hardens before the middle is dry`;
  return refusal(given, reason, `dry at ${least} to ${most} degF`);
}

const ROOM = step('keep-room');
const REFRIGERATOR = step('keep-refrigerator');
const FREEZER = step('keep-freezer');
const keeping = () => ({
  room: ROOM.keeps as string,
  refrigerator: REFRIGERATOR.keeps as string,
  freezer: FREEZER.keeps as string,
});
const keepingBasis = () => [ROOM, REFRIGERATOR, FREEZER].map((row) => basisOf(row, 'keeping'));
const dryerOf = (row: JerkyRow) => ({ low: degF(printed(row).least), high: degF(printed(row).most) });

function heatedBefore(given: Given): Jerky {
  const inside = insideOf(given);
  const { least } = printed(inside);
  if (!within(given.internalTemperature, inside)) {
    return refusal(given, `the meat must be known to reach ${least} degF inside before it dries`, heatFirst(given));
  }
  if (!within(given.dryerTemperature, DRYER)) return wrongDryer(given, DRYER);
  return {
    tested: true,
    internalTemperature: degF(least),
    dryer: dryerOf(DRYER),
    keeps: keeping(),
    basis: joinBasis(
      [basisOf(inside, 'inside temperature before drying'), basisOf(DRYER, 'temperature of the dryer')],
      keepingBasis(),
    ),
    cautions: cautions(),
  };
}

function heatedAfter(given: Given): Jerky {
  const before = heatFirst(given);
  if (isPoultry(given)) {
    return refusal(given, 'the oven step after drying is for strips of meat here, not for poultry', before);
  }
  if (given.thickness === undefined || valueIn(given.thickness, 'in') > STRIP.value + 1e-9) {
    return refusal(
      given,
      'the oven step after drying is for strips of 1/4 in or less',
      `cut them thinner, or ${before}`,
    );
  }
  if (!within(given.dryerTemperature, HOT_DRYER)) return wrongDryer(given, HOT_DRYER);
  const dryAtLeast = HOT_DRYER.atLeast as Quantity<'time'>;
  const { least } = printed(HOT_DRYER);
  if (!longEnough(given.dryingTime, HOT_DRYER)) {
    return refusal(
      given,
      `before the oven step the strips dry at ${least} degF or above for at least ${dryAtLeast.value} hours`,
      before,
    );
  }
  const ovenTime = OVEN.atLeast as Quantity<'time'>;
  if (!within(given.oven?.temperature, OVEN) || !longEnough(given.oven?.time, OVEN)) {
    return refusal(given, `the oven step is ${ovenTime.value} minutes at ${printed(OVEN).least} degF`, before);
  }
  return {
    tested: true,
    dryer: dryerOf(HOT_DRYER),
    dryAtLeast,
    oven: { temperature: degF(printed(OVEN).least), time: ovenTime },
    thickestStrip: STRIP,
    keeps: keeping(),
    basis: joinBasis(
      [basisOf(HOT_DRYER, 'temperature of the dryer'), basisOf(OVEN, 'oven after drying')],
      keepingBasis(),
    ),
    cautions: cautions(),
  };
}
